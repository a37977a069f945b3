import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { clearAnswer, keepAnswer } from '../store/answers'
import type { WritableDb } from '../store/database'
import { yardRig } from '../store/rigs'
import { readSettings } from '../store/settings'
import { keepPlace } from '../store/surveys'
import type { Summary } from '../../shared-logic/survey/assess'
import { refuseProblems } from './answer-problems'
import type { Parts, Procedures } from './parts'
import { keepSummary, needAsked, needUnderWay } from './under-way'

const answer = async (db: WritableDb, { surveyId, checkId, position, answer: given }: ParsedInputOf<'surveys.answer'>, answeredAt: string): Promise<{ summary: Summary }> => {
  const survey = await needUnderWay(db, surveyId)
  const rig = await yardRig(db, survey.rig_id)
  const check = needAsked(rig, survey, checkId, position)
  const { settings } = await readSettings(db)
  refuseProblems(check, given.values, survey.survey_date, settings.units)
  await keepAnswer(db, surveyId, { checkId, position, answer: given, answeredAt })
  return { summary: await keepSummary(db, survey, rig) }
}

/** Answering, taking an answer back, and where the surveyor stands. Each is one transaction, the summary with it. */
export const answerProcedures = ({ yard, clock }: Parts): Pick<Procedures<'surveys'>, 'surveys.answer' | 'surveys.clear' | 'surveys.standAt'> => ({
  'surveys.answer': (input) => yard.write((db) => answer(db, input, clock().toISOString())),
  'surveys.clear': ({ surveyId, checkId, position }) =>
    yard.write(async (db) => {
      const survey = await needUnderWay(db, surveyId)
      await clearAnswer(db, surveyId, checkId, position)
      return { summary: await keepSummary(db, survey, await yardRig(db, survey.rig_id)) }
    }),
  'surveys.standAt': ({ surveyId, here }) =>
    yard.write(async (db) => {
      const survey = await needUnderWay(db, surveyId)
      needAsked(await yardRig(db, survey.rig_id), survey, here.checkId, here.position)
      await keepPlace(db, surveyId, here.checkId, here.position)
      return {}
    }),
})
