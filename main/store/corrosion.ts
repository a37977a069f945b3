import { corrosionCheckId } from '../../shared-logic/corrosion/check-id'
import { answerSchema, spotsIn } from '../../shared-logic/survey/answer'
import type { CorrosionSurvey } from '../../shared-logic/survey/records'
import type { Spot } from '../../shared-logic/survey/spot'
import type { ReadableDb } from './database'

/** The spots an answer holds; undefined where the place was not looked at, or set aside. */
const spotsOf = (json: string): readonly Spot[] | undefined => {
  const { values, aside } = answerSchema.parse(JSON.parse(json))
  return aside === undefined ? spotsIn(values['spots']) : undefined
}

/** What every survey of a rig recorded of corroded spots, oldest first; surveys that looked nowhere are left out. */
export const corrosionOf = async (db: ReadableDb, rigId: string): Promise<CorrosionSurvey[]> => {
  const rows = await db.selectFrom('surveys').innerJoin('answers', 'answers.survey_id', 'surveys.id')
    .select(['surveys.id', 'surveys.survey_date', 'surveys.status', 'surveys.report_number', 'answers.position', 'answers.answer_json'])
    .where('surveys.rig_id', '=', rigId).where('surveys.discarded_at', 'is', null).where('answers.check_id', '=', corrosionCheckId)
    .orderBy('surveys.survey_date').orderBy('surveys.id').orderBy('answers.position').execute()
  const surveys = new Map<string, CorrosionSurvey>()
  for (const row of rows) {
    const spots = spotsOf(row.answer_json)
    if (spots === undefined) continue
    const known = surveys.get(row.id) ?? { surveyId: row.id, date: row.survey_date, status: row.status, ...(row.report_number !== null && { reportNumber: row.report_number }), places: [] }
    surveys.set(row.id, { ...known, places: [...known.places, { position: row.position, spots: [...spots] }] })
  }
  return [...surveys.values()]
}
