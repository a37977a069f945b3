import { canonicalJson } from '../../shared-logic/proof/canonical-json'
import type { SurveyFacts } from '../../shared-logic/proof/entry'
import { sha256Of } from './chained-text'
import type { ReadableDb, WritableDb } from './database'
import { enter } from './photograph-log'

/** All of a survey's row but where the surveyor stood, what serves the search, and the count of changes. The list and its order stay: entries were made by it. */
const headColumns = [
  'rig_id', 'rig_name', 'purpose', 'survey_date', 'status', 'rule_book', 'catalogue_version', 'zone', 'place', 'verdict', 'tallies_json', 'asked', 'open', 'report_number', 'revision', 'started_at', 'discarded_at',
] as const

/** A survey as it stands, by hashes of its rows. */
export const surveyToRecord = async (db: ReadableDb, surveyId: string): Promise<SurveyFacts> => {
  const head = await db.selectFrom('surveys').select(headColumns).where('id', '=', surveyId).executeTakeFirst()
  const rig = await db.selectFrom('frozen_rigs').select('rig_json').where('survey_id', '=', surveyId).executeTakeFirst()
  const answers = await db.selectFrom('answers').select(['check_id', 'position', 'answer_json', 'answered_at']).where('survey_id', '=', surveyId).orderBy('check_id').orderBy('position').execute()
  return {
    headSha256: sha256Of(canonicalJson(headColumns.map((column) => head?.[column] ?? null))),
    rigSha256: sha256Of(canonicalJson(rig?.rig_json ?? null)),
    answersSha256: sha256Of(canonicalJson(answers.map(({ check_id, position, answer_json, answered_at }) => [check_id, position, answer_json, answered_at]))),
  }
}

/** Enters that an issued survey is opened again, in the transaction that does so. `at` is a UTC instant. */
export const enterReopened = (db: WritableDb, surveyId: string, at: string): Promise<void> => enter(db, surveyId, [{ what: 'survey opened again' }], at)
