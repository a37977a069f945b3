import { setImmediate as seeToOthers } from 'node:timers/promises'
import { compareList, faultsOfList } from '../../shared-logic/proof/compare-list'
import type { RecordEnd } from '../../shared-logic/proof/entry'
import type { Problem } from '../../shared-logic/proof/problem'
import { SurveyListReader, type ReadList } from '../../shared-logic/proof/survey-list'
import { sha256Of } from '../store/chained-text'
import { listToProve, surveysToProve, type ListToProve, type NamedSurvey } from '../store/to-prove'
import type { ReadableYard } from '../store/yard'

/** The yard's list of surveys, with what it says of each survey and what is wrong there. */
export interface VerifiedList {
  /** What is wrong with the list itself. */
  readonly problems: readonly Problem[]
  readonly problemsOf: (surveyId: string) => readonly Problem[]
  /** Ends the list says a survey's record had, oldest first. */
  readonly endsOf: (surveyId: string) => readonly RecordEnd[]
  readonly end: RecordEnd | undefined
}

/** So many entries are read in a few milliseconds; then whoever waits has their turn. */
const entriesAtOnce = 100

const readList = async ({ entries, end }: ListToProve, signal: AbortSignal | undefined): Promise<ReadList> => {
  const reader = new SurveyListReader(sha256Of)
  for (const [index, entry] of entries.entries()) {
    if (index % entriesAtOnce === entriesAtOnce - 1) await seeToOthers(undefined, { signal })
    reader.take(entry)
  }
  return reader.finish(end)
}

const held = (list: ReadList, { surveys }: ListToProve, recordedIds: readonly string[]): VerifiedList => {
  const found = compareList(surveys, recordedIds, list)
  return { problems: faultsOfList(list, surveys.size), end: list.end, problemsOf: (surveyId) => found.get(surveyId) ?? [], endsOf: (surveyId) => list.surveys.get(surveyId)?.ends ?? [] }
}

type Reads = Pick<ReadableYard, 'read'>

/** The list, as far as it tells of one survey. */
export const verifyListOf = async ({ read }: Reads, surveyId: string, signal?: AbortSignal): Promise<VerifiedList> => {
  const found = await read(listToProve)
  return held(await readList(found, signal), found, [surveyId])
}

/** The list, and every survey that it, the yard or a record knows: newest first, those gone without a trace last. */
export const verifyList = async ({ read }: Reads, signal?: AbortSignal): Promise<{ readonly list: VerifiedList; readonly named: readonly NamedSurvey[] }> => {
  const { found, known } = await read(async (db) => ({ found: await listToProve(db), known: await surveysToProve(db) }))
  const list = await readList(found, signal)
  const ids = new Set(known.map(({ id }) => id))
  const onlyListed = [...list.surveys].filter(([id]) => !ids.has(id)).map(([id, { number }]) => ({ id, rigName: undefined, surveyDate: undefined, reportNumbers: number === undefined ? [] : [number], hasEvidence: false }))
  return { list: held(list, found, [...ids]), named: [...known, ...onlyListed] }
}
