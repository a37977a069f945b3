import type { BreakCode } from './chain'
import type { Problem } from './problem'
import type { ListedSurvey, ReadList } from './survey-list'

/** What the yard's row says of a survey. */
export interface SurveyState {
  readonly isDiscarded: boolean
}

const endCodes: Partial<Record<BreakCode, 'list-end-missing' | 'list-cut-off'>> = { 'record-end-missing': 'list-end-missing', 'record-cut-off': 'list-cut-off' }

/** What is wrong with the list itself; a yard that has surveys has one. */
export const faultsOfList = ({ end, broken }: ReadList, surveyCount: number): Problem[] => {
  if (end === undefined && (surveyCount > 0 || broken !== undefined)) return [{ code: 'list-missing', values: { count: surveyCount } }]
  return broken === undefined ? [] : [{ code: endCodes[broken.code] ?? 'list-altered', values: { ...broken.values, from: broken.from } }]
}

const compareOne = (row: SurveyState | undefined, listed: ListedSurvey | undefined): Problem[] => {
  if (row === undefined) return [listed === undefined ? { code: 'survey-unknown', values: {} } : { code: 'survey-gone', values: { begunAt: listed.at } }]
  if (listed === undefined) return [{ code: 'survey-unlisted', values: {} }]
  if (row.isDiscarded === listed.isDiscarded) return []
  return [{ code: row.isDiscarded ? 'survey-put-away' : 'survey-brought-back', values: {} }]
}

/** Whether the yard has each survey that list or record know, and whether the list knows each that the yard has. By id, those alone with which something is wrong. */
export const compareList = (surveys: ReadonlyMap<string, SurveyState>, recordedIds: readonly string[], list: ReadList): Map<string, Problem[]> => {
  const ids = new Set([...surveys.keys(), ...recordedIds, ...list.surveys.keys()])
  // A list that is gone is said once, and not once again for each survey.
  const isKnown = (id: string): boolean => list.end !== undefined || !surveys.has(id)
  return new Map([...ids].filter(isKnown).map((id) => [id, compareOne(surveys.get(id), list.surveys.get(id))] as const).filter(([, problems]) => problems.length > 0))
}
