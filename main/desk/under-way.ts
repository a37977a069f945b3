import { catalogue, catalogueVersion } from '../../shared-logic/checks/catalogue'
import type { Check } from '../../shared-logic/checks/check'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Rig } from '../../shared-logic/rig/rig'
import { answerableChecks, assess, summarize, type Summary } from '../../shared-logic/survey/assess'
import { placeKey } from '../../shared-logic/survey/keys'
import { answersOf } from '../store/answers'
import type { ReadableDb, WritableDb } from '../store/database'
import { surveySearchText } from '../store/search-text'
import { summaryColumns, type KeptSurvey } from '../store/survey-row'
import { changeSurvey, findSurvey } from '../store/surveys'

export const needSurvey = async (db: ReadableDb, surveyId: string): Promise<KeptSurvey> =>
  (await findSurvey(db, surveyId)) ?? refuse('survey.not-found')

/** The survey, refused when its report is issued: then it is frozen until it is opened again. */
export const needUnderWay = async (db: ReadableDb, surveyId: string): Promise<KeptSurvey> => {
  const survey = await needSurvey(db, surveyId)
  if (survey.status === 'issued') refuse('survey.issued', { number: survey.report_number ?? '' })
  return survey
}

/** The check, refused when this rig is not asked it at that position. */
export const needAsked = (rig: Rig, survey: KeptSurvey, checkId: string, position: string): Check =>
  answerableChecks(catalogue, { rig, ruleBook: survey.rule_book, purpose: survey.purpose }).find((asked) => asked.check.id === checkId && asked.position === position)?.check
  ?? refuse('answer.not-asked', { check: checkId, position })

const sumUp = async (db: ReadableDb, survey: KeptSurvey, rig: Rig): Promise<Summary> => {
  const answers = new Map((await answersOf(db, survey.id)).map((each) => [placeKey(each.checkId, each.position), each.answer]))
  return summarize(assess(catalogue, { rig, ruleBook: survey.rule_book, purpose: survey.purpose, surveyDate: survey.survey_date, answers }))
}

/** Sums up again what the survey comes to, and keeps that beside it in the same transaction. */
export const keepSummary = async (db: WritableDb, survey: KeptSurvey, rig: Rig): Promise<Summary> => {
  const summary = await sumUp(db, survey, rig)
  await changeSurvey(db, survey.id, { catalogue_version: catalogueVersion, ...summaryColumns(summary) })
  return summary
}

/** Brings a survey under way to the rig as the yard knows it now. */
export const followRig = async (db: WritableDb, survey: KeptSurvey, rig: Rig): Promise<void> => {
  const found = { place: survey.place ?? undefined, reportNumber: survey.report_number ?? undefined, surveyDate: survey.survey_date }
  const summary = await sumUp(db, survey, rig)
  await changeSurvey(db, survey.id, { rig_name: rig.name, search_text: surveySearchText(rig, found), catalogue_version: catalogueVersion, ...summaryColumns(summary) })
}
