import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { RecordEnd, SurveyFacts } from '../../shared-logic/proof/entry'
import type { FoundEntry } from '../../shared-logic/proof/read-record'
import type { ReadableDb } from './database'
import { foundEntries, orderToRecord, photographsToRecord, recordEnd } from './photograph-log'
import { reportsToProve, type ReportToProve } from './report-log'
import { surveyToRecord } from './survey-log'

/** Everything of one survey that its record is held to, read at one moment. */
export interface SurveyToProve {
  readonly entries: readonly FoundEntry[]
  readonly end: RecordEnd | undefined
  readonly photographs: readonly RecordedPhotograph[]
  readonly orderSha256: string
  readonly reports: readonly ReportToProve[]
  readonly survey: SurveyFacts
}

export const surveyToProve = async (db: ReadableDb, surveyId: string): Promise<SurveyToProve> => ({
  entries: await foundEntries(db, surveyId),
  end: await recordEnd(db, surveyId),
  photographs: await photographsToRecord(db, surveyId),
  orderSha256: await orderToRecord(db, surveyId),
  reports: await reportsToProve(db, surveyId),
  survey: await surveyToRecord(db, surveyId),
})

/** A survey by what a person knows it by; a row that is gone leaves its id alone. */
export interface NamedSurvey {
  readonly id: string
  readonly rigName: string | undefined
  readonly surveyDate: string | undefined
  readonly reportNumber: string | undefined
}

/** Every survey that has photographs, a record or a report, those put away too; newest first. */
export const surveysToProve = async (db: ReadableDb): Promise<NamedSurvey[]> => {
  const named = db.selectFrom('photographs').select('survey_id')
    .union(db.selectFrom('photograph_log').select('survey_id')).union(db.selectFrom('photograph_log_ends').select('survey_id')).union(db.selectFrom('reports').select('survey_id'))
  const found = await db.selectFrom(named.as('named')).leftJoin('surveys', 'surveys.id', 'named.survey_id')
    .select(['named.survey_id', 'surveys.rig_name', 'surveys.survey_date', 'surveys.report_number']).orderBy('surveys.survey_date', 'desc').orderBy('named.survey_id', 'desc').execute()
  return found.map((row) => ({ id: row.survey_id, rigName: row.rig_name ?? undefined, surveyDate: row.survey_date ?? undefined, reportNumber: row.report_number ?? undefined }))
}

/** Format of every original a row names, and the hashes no photograph of any survey names. */
export const originalsToProve = async (db: ReadableDb): Promise<{ readonly formats: ReadonlyMap<string, string>; readonly withoutPhotograph: readonly string[] }> => {
  const found = await db.selectFrom('originals').leftJoin('photographs', 'photographs.sha256', 'originals.sha256').select(['originals.sha256', 'originals.format', 'photographs.id']).execute()
  return { formats: new Map(found.map(({ sha256, format }) => [sha256, format])), withoutPhotograph: found.filter(({ id }) => id === null).map(({ sha256 }) => sha256) }
}

/** Bytes that proving a whole yard reads: every original once, and every PDF. */
export const bytesToProve = async (db: ReadableDb): Promise<number> => {
  const originals = await db.selectFrom('originals').select((query) => query.fn.sum<number | null>('byte_count').as('total')).executeTakeFirst()
  const pdfs = await db.selectFrom('reports').select((query) => query.fn.sum<number | null>('pdf_byte_count').as('total')).executeTakeFirst()
  return (originals?.total ?? 0) + (pdfs?.total ?? 0)
}
