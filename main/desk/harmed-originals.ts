import { join } from 'node:path'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { Harm, HarmedOriginal } from '../../shared-logic/proof/originals'
import type { Survey } from '../../shared-logic/survey/records'
import { lookAtOriginal, type OriginalFound } from '../photos/shelf-files'

/** What was found of originals already, by their hash. */
export type OriginalsFound = Map<string, OriginalFound>

/** Hashes of the pictures that spots were measured on: they are printed whatever became of the photograph. */
const measuredOn = ({ answers }: Pick<Survey, 'answers'>): Set<string> =>
  new Set(answers.flatMap(({ answer }) => Object.values(answer.values).flatMap((value) => (Array.isArray(value) ? value.flatMap(({ measurement }) => measurement?.sha256 ?? []) : []))))

/** The originals that a report of the survey rests on, printed or kept with it, each once. */
export const originalsNamed = (survey: Pick<Survey, 'answers'>, recorded: readonly RecordedPhotograph[]): RecordedPhotograph[] => {
  const measured = measuredOn(survey)
  const named = recorded.filter(({ sha256, facts }) => facts.removedAt === null || measured.has(sha256))
  return [...new Map(named.map((each) => [each.sha256, each])).values()]
}

const harmOf = ({ is }: OriginalFound): Harm | undefined => {
  switch (is) {
    case 'as recorded': return undefined
    case 'missing': case 'set aside': return 'missing'
    case 'resized': case 'changed': return 'changed'
    case 'unreadable': return 'unreadable'
  }
}

/** Reads every original from end to end, a piece at a time, and answers those that are not as they came in. What is in `found` is not read again, and what is read is put there. */
export const harmedOriginals = async (folder: string, originals: readonly RecordedPhotograph[], found: OriginalsFound): Promise<HarmedOriginal[]> => {
  const harmed: HarmedOriginal[] = []
  for (const { sha256, byteCount, facts } of originals) {
    const one = found.get(sha256) ?? (await lookAtOriginal(join(folder, 'photographs'), { sha256, byteCount, format: facts.format ?? '' }))
    found.set(sha256, one)
    const harm = harmOf(one)
    if (harm !== undefined) harmed.push({ sha256, fileName: facts.fileName ?? '', harm })
  }
  return harmed
}
