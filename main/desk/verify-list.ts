import type { RecordEnd } from '../../shared-logic/proof/entry'
import { compareList, faultsOfList } from '../../shared-logic/proof/compare-list'
import type { Problem } from '../../shared-logic/proof/problem'
import { readList } from '../../shared-logic/proof/survey-list'
import { sha256Of } from '../store/chained-text'
import type { ReadableDb } from '../store/database'
import { listToProve, surveysToProve, type NamedSurvey } from '../store/to-prove'

/** The yard's surveys held to its list of them. */
export interface VerifiedList {
  /** Every survey the yard, its records or the list know; newest first, those gone without a trace last. */
  readonly named: readonly NamedSurvey[]
  /** What is wrong with the list itself. */
  readonly problems: readonly Problem[]
  readonly problemsOf: (surveyId: string) => readonly Problem[]
  /** Ends the list says a survey's record had. */
  readonly endsOf: (surveyId: string) => readonly RecordEnd[]
  readonly end: RecordEnd | undefined
}

export const verifyList = async (db: ReadableDb): Promise<VerifiedList> => {
  const named = await surveysToProve(db)
  const { entries, end, surveys } = await listToProve(db)
  const list = readList(entries, end, sha256Of)
  const found = compareList(surveys, named.map(({ id }) => id), list)
  const known = new Set(named.map(({ id }) => id))
  const onlyListed = [...list.surveys.keys()].filter((id) => !known.has(id)).map((id) => ({ id, rigName: undefined, surveyDate: undefined, reportNumbers: [], hasEvidence: false }))
  return {
    named: [...named, ...onlyListed], problems: faultsOfList(list, surveys.size), end: list.end,
    problemsOf: (surveyId) => found.get(surveyId) ?? [], endsOf: (surveyId) => list.surveys.get(surveyId)?.ends ?? [],
  }
}
