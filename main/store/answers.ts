import { answerSchema, type Answer } from '../../shared-logic/survey/answer'
import type { ReadableDb, WritableDb } from './database'

export interface Answered {
  readonly checkId: string
  readonly position: string
  readonly answer: Answer
  readonly answeredAt: string
}

/** Every answer of a survey, also of checks that its rig no longer asks for. */
export const answersOf = async (db: ReadableDb, surveyId: string): Promise<Answered[]> => {
  const rows = await db.selectFrom('answers').select(['check_id', 'position', 'answer_json', 'answered_at']).where('survey_id', '=', surveyId)
    .orderBy('check_id').orderBy('position').execute()
  return rows.map((row) => ({ checkId: row.check_id, position: row.position, answer: answerSchema.parse(JSON.parse(row.answer_json)), answeredAt: row.answered_at }))
}

export const keepAnswer = async (db: WritableDb, surveyId: string, { checkId, position, answer, answeredAt }: Answered): Promise<void> => {
  const kept = { answer_json: JSON.stringify(answer), answered_at: answeredAt }
  await db.insertInto('answers').values({ survey_id: surveyId, check_id: checkId, position, ...kept })
    .onConflict((conflict) => conflict.columns(['survey_id', 'check_id', 'position']).doUpdateSet(kept)).execute()
}

export const clearAnswer = async (db: WritableDb, surveyId: string, checkId: string, position: string): Promise<void> => {
  await db.deleteFrom('answers').where('survey_id', '=', surveyId).where('check_id', '=', checkId).where('position', '=', position).execute()
}
