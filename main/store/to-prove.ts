import { sql } from 'kysely'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { FoundEntry } from '../../shared-logic/proof/chain'
import type { SurveyState } from '../../shared-logic/proof/compare-list'
import type { RecordEnd, SurveyFacts } from '../../shared-logic/proof/entry'
import type { ReadableDb } from './database'
import { foundEntries, orderToRecord, photographsToRecord, recordEnd } from './photograph-log'
import { reportsToProve, type ReportToProve } from './report-log'
import { foundInList, listEnd } from './survey-list'
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

/** The yard's list of surveys and what it is held to, read at one moment. */
export interface ListToProve {
  readonly entries: readonly FoundEntry[]
  readonly end: RecordEnd | undefined
  /** Every survey the yard has, those put away too. */
  readonly surveys: ReadonlyMap<string, SurveyState>
}

export const listToProve = async (db: ReadableDb): Promise<ListToProve> => ({
  entries: await foundInList(db),
  end: await listEnd(db),
  surveys: new Map((await db.selectFrom('surveys').select(['id', 'discarded_at']).execute()).map(({ id, discarded_at }) => [id, { isDiscarded: discarded_at !== null }])),
})

/** A survey by what a person knows it by; a row that is gone leaves its id, and the numbers its reports had. */
export interface NamedSurvey {
  readonly id: string
  readonly rigName: string | undefined
  readonly surveyDate: string | undefined
  /** Report numbers by its row, its reports and its record: one, unless somebody altered them. */
  readonly reportNumbers: readonly string[]
  /** Whether it has photographs, a record or a report. */
  readonly hasEvidence: boolean
}

const numbersTold = sql<string | null>`CASE WHEN json_valid(entry_json) THEN entry_json ->> '$.report.number' END`

/** Every survey of which row, photographs, record or report is there, those put away too; newest first. */
export const surveysToProve = async (db: ReadableDb): Promise<NamedSurvey[]> => {
  const evidence = db.selectFrom('photographs').select('survey_id')
    .union(db.selectFrom('photograph_log').select('survey_id')).union(db.selectFrom('photograph_log_ends').select('survey_id')).union(db.selectFrom('reports').select('survey_id'))
  const withEvidence = new Set((await evidence.execute()).map(({ survey_id }) => survey_id))
  const numbers = await db.selectFrom('surveys').select(['id', 'report_number as number'])
    .union(db.selectFrom('reports').select(['survey_id as id', 'number']))
    .union(db.selectFrom('photograph_log').select(['survey_id as id', numbersTold.as('number')])).execute()
  const numbersOf = Map.groupBy(numbers.flatMap(({ id, number }) => (number === null ? [] : [{ id, number }])), ({ id }) => id)
  const rows = new Map((await db.selectFrom('surveys').select(['id', 'rig_name', 'survey_date']).orderBy('survey_date', 'desc').orderBy('id', 'desc').execute()).map((row) => [row.id, row]))
  return [...new Set([...rows.keys(), ...withEvidence])].map((id) => ({
    id, rigName: rows.get(id)?.rig_name, surveyDate: rows.get(id)?.survey_date, reportNumbers: (numbersOf.get(id) ?? []).map(({ number }) => number), hasEvidence: withEvidence.has(id),
  }))
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
