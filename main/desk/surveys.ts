import { catalogue, catalogueVersion } from '../../shared-logic/checks/catalogue'
import { refuse } from '../../shared-logic/contract/refusal'
import { assess, summarize } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { answersOf } from '../store/answers'
import type { ReadableDb, WritableDb } from '../store/database'
import { photographsOf } from '../store/photographs'
import { reportsOf } from '../store/reports'
import { surveySearchText } from '../store/search-text'
import { enterReopened } from '../store/survey-log'
import { asSurveyRow, summaryColumns, type KeptSurvey } from '../store/survey-row'
import { changeSurvey, discardSurvey, insertSurvey, listSurveys, rigOfSurvey } from '../store/surveys'
import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { localDate } from './local-date'
import type { Parts, Procedures } from './parts'
import { needRig } from './rigs'
import { followRig, needSurvey } from './under-way'

const earliestDate = '1950-01-01'

/** A survey with all that belongs to it. */
export const wholeSurvey = async (db: ReadableDb, kept: KeptSurvey): Promise<Survey> => ({
  ...asSurveyRow(kept),
  ruleBook: kept.rule_book,
  catalogueVersion: kept.catalogue_version,
  zone: kept.zone,
  place: kept.place ?? undefined,
  rig: await rigOfSurvey(db, kept),
  here: kept.here_check_id === null || kept.here_position === null ? undefined : { checkId: kept.here_check_id, position: kept.here_position },
  answers: await answersOf(db, kept.id),
  photographs: await photographsOf(db, kept.id),
  reports: await reportsOf(db, kept.id),
})

const refuseDate = (surveyDate: string, today: string): void => {
  if (surveyDate > today) refuse('survey.date-in-the-future', { today }, 'surveyDate')
  if (surveyDate < earliestDate) refuse('survey.date-too-early', { earliest: earliestDate }, 'surveyDate')
}

const start = async (db: WritableDb, { clock, newId, zone }: Parts, input: ParsedInputOf<'surveys.start'>): Promise<Survey> => {
  const { rig } = await needRig(db, input.rigId)
  const id = newId()
  const summary = summarize(assess(catalogue, { rig, ruleBook: input.ruleBook, purpose: input.purpose, surveyDate: input.surveyDate, answers: new Map() }))
  const place = input.place === '' ? undefined : input.place
  await insertSurvey(db, {
    id, rig_id: input.rigId, rig_name: rig.name, search_text: surveySearchText(rig, { place, surveyDate: input.surveyDate }),
    purpose: input.purpose, survey_date: input.surveyDate, status: 'under way', rule_book: input.ruleBook, catalogue_version: catalogueVersion, zone,
    place: place ?? null, here_check_id: null, here_position: null, ...summaryColumns(summary),
    report_number: null, revision: 0, change_count: 0, started_at: clock().toISOString(), discarded_at: null,
  })
  return wholeSurvey(db, await needSurvey(db, id))
}

const reopen = async (db: WritableDb, surveyId: string, at: string): Promise<Survey> => {
  const survey = await needSurvey(db, surveyId)
  if (survey.status === 'under way') refuse('survey.under-way')
  const { rig } = await needRig(db, survey.rig_id)
  await changeSurvey(db, surveyId, { status: 'under way' })
  await enterReopened(db, surveyId, at)
  await followRig(db, survey, rig)
  return wholeSurvey(db, await needSurvey(db, surveyId))
}

export const surveyProcedures = (parts: Parts): Omit<Procedures<'surveys'>, 'surveys.answer' | 'surveys.clear' | 'surveys.standAt'> => ({
  'surveys.list': (page) => parts.yard.read((db) => listSurveys(db, page)),
  'surveys.start': async (input) => {
    refuseDate(input.surveyDate, localDate(parts.clock(), parts.zone))
    return parts.yard.write((db) => start(db, parts, input))
  },
  'surveys.get': ({ surveyId }) => parts.yard.read(async (db) => wholeSurvey(db, await needSurvey(db, surveyId))),
  'surveys.discard': async ({ surveyId }) => {
    await parts.yard.write(async (db) => {
      const survey = await needSurvey(db, surveyId)
      if (survey.revision > 0) refuse('survey.was-issued', { number: survey.report_number ?? '' })
      await discardSurvey(db, surveyId, parts.clock().toISOString())
    })
    await parts.phoneDoor?.close(surveyId)
    return {}
  },
  'surveys.reopen': ({ surveyId }) => parts.yard.write((db) => reopen(db, surveyId, parts.clock().toISOString())),
})
