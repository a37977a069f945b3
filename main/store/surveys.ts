import type { Insertable, Updateable } from 'kysely'
import type { Rig } from '../../shared-logic/rig/rig'
import type { SurveyRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import { foundBy } from './find'
import { parseRig, yardRig, type Page } from './rigs'
import { enterInList } from './survey-list'
import { asSurveyRow, type KeptSurvey } from './survey-row'
import type { SurveyTable } from './tables'

interface SurveySearch {
  readonly rigId?: string | undefined
  readonly search?: string | undefined
}

/** Surveys that were not discarded, of one rig or of all, found by rig, owner, numbers, place or report number. */
export const surveysFound = (db: ReadableDb, { rigId, search }: SurveySearch) => {
  const listed = db.selectFrom('surveys').where('surveys.discarded_at', 'is', null)
  const ofRig = rigId === undefined ? listed : listed.where('surveys.rig_id', '=', rigId)
  return foundBy('surveys', search).reduce((query, condition) => query.where(condition), ofRig)
}

/** Newest first. */
export const pageOfSurveys = (db: ReadableDb, { offset, limit, ...sought }: SurveySearch & Page) =>
  surveysFound(db, sought).selectAll().orderBy('surveys.survey_date', 'desc').orderBy('surveys.id', 'desc').limit(limit).offset(offset)

export const countOfSurveys = (db: ReadableDb, sought: SurveySearch) =>
  surveysFound(db, sought).select((query) => query.fn.countAll<number>().as('total'))

export const listSurveys = async (db: ReadableDb, page: SurveySearch & Page): Promise<{ surveys: SurveyRow[]; total: number }> => {
  const { total } = await countOfSurveys(db, page).executeTakeFirstOrThrow()
  return { surveys: (await pageOfSurveys(db, page).execute()).map(asSurveyRow), total }
}

export const findSurvey = (db: ReadableDb, id: string): Promise<KeptSurvey | undefined> =>
  db.selectFrom('surveys').selectAll().where('id', '=', id).where('discarded_at', 'is', null).executeTakeFirst()

export const underWayOfRig = (db: ReadableDb, rigId: string): Promise<KeptSurvey[]> =>
  db.selectFrom('surveys').selectAll().where('rig_id', '=', rigId).where('discarded_at', 'is', null).where('status', '=', 'under way').execute()

/** The rig a survey speaks of: the yard's while under way, that day's once issued. */
export const rigOfSurvey = async (db: ReadableDb, survey: KeptSurvey): Promise<Rig> => {
  const frozen = survey.status === 'issued' ? await db.selectFrom('frozen_rigs').select('rig_json').where('survey_id', '=', survey.id).executeTakeFirst() : undefined
  return frozen === undefined ? yardRig(db, survey.rig_id) : parseRig(frozen.rig_json)
}

export const freezeRig = async (db: WritableDb, surveyId: string, rig: Rig): Promise<void> => {
  const kept = { rig_json: JSON.stringify(rig) }
  await db.insertInto('frozen_rigs').values({ survey_id: surveyId, ...kept }).onConflict((conflict) => conflict.column('survey_id').doUpdateSet(kept)).execute()
}

/** Begins a survey, and enters that in the yard's list. */
export const insertSurvey = async (db: WritableDb, survey: Insertable<SurveyTable>): Promise<void> => {
  await db.insertInto('surveys').values(survey).execute()
  await enterInList(db, { what: 'survey begun', surveyId: survey.id }, survey.started_at)
}

/** Changes a survey and counts the change. */
export const changeSurvey = async (db: WritableDb, id: string, change: Omit<Updateable<SurveyTable>, 'id' | 'serial' | 'change_count'>): Promise<void> => {
  await db.updateTable('surveys').set(change).set((column) => ({ change_count: column('change_count', '+', 1) })).where('id', '=', id).execute()
}

/** Puts a survey away, and enters that in the yard's list. `at` is a UTC instant. */
export const discardSurvey = async (db: WritableDb, id: string, at: string): Promise<void> => {
  await changeSurvey(db, id, { discarded_at: at })
  await enterInList(db, { what: 'survey discarded', surveyId: id }, at)
}

/** Where the surveyor stands says nothing about the rig: it is kept without counting as a change. */
export const keepPlace = async (db: WritableDb, id: string, checkId: string, position: string): Promise<void> => {
  await db.updateTable('surveys').set({ here_check_id: checkId, here_position: position }).where('id', '=', id).execute()
}

export const countYard = async (db: ReadableDb): Promise<{ rigCount: number; surveyCount: number }> => {
  const rigs = await db.selectFrom('rigs').select((query) => query.fn.countAll<number>().as('count')).where('removed_at', 'is', null).executeTakeFirstOrThrow()
  const surveys = await db.selectFrom('surveys').select((query) => query.fn.countAll<number>().as('count')).where('discarded_at', 'is', null).executeTakeFirstOrThrow()
  return { rigCount: rigs.count, surveyCount: surveys.count }
}
