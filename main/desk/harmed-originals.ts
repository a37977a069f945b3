import { join } from 'node:path'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { Harm, HarmedOriginal } from '../../shared-logic/proof/originals'
import { measuredOn } from '../../shared-logic/photographs/measured-on'
import type { Survey } from '../../shared-logic/survey/records'
import { lookAtOriginal, type OriginalFound } from '../photos/shelf-files'
import { readPicture, type PictureParts, type RecordedCopies } from './read-picture'

/** What was found of originals already, by their hash. */
export type OriginalsFound = Map<string, OriginalFound>

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

/** Of harmed originals that the report prints, the hashes of those whose copy cannot be used either. */
export const withoutPicture = async (parts: PictureParts, survey: Pick<Survey, 'answers' | 'photographs'>, harmed: readonly HarmedOriginal[], copies: RecordedCopies): Promise<Set<string>> => {
  const printed = new Set([...survey.photographs.filter(({ isPrinted }) => isPrinted).map(({ sha256 }) => sha256), ...measuredOn(survey)])
  const found = new Set<string>()
  for (const { sha256 } of harmed) {
    if (printed.has(sha256) && (await readPicture(parts, sha256, 'large', copies).catch(() => undefined)) === undefined) found.add(sha256)
  }
  return found
}
