import { sql, type Insertable, type Selectable } from 'kysely'
import type { ReportRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import type { Page } from './rigs'
import type { ReportTable } from './tables'

export const reportColumns = ['id', 'survey_id', 'number', 'revision', 'issued_at', 'date', 'verdict', 'pdf_sha256', 'pdf_byte_count'] as const

export const asReportRow = (row: Omit<Selectable<ReportTable>, 'document_json'>): ReportRow => ({
  id: row.id,
  surveyId: row.survey_id,
  number: row.number,
  revision: row.revision,
  issuedAt: row.issued_at,
  date: row.date,
  verdict: row.verdict,
  pdfSha256: row.pdf_sha256,
  pdfByteCount: row.pdf_byte_count,
})

/** Revisions of one survey, newest first. */
export const reportsOf = async (db: ReadableDb, surveyId: string): Promise<ReportRow[]> =>
  (await db.selectFrom('reports').select(reportColumns).where('survey_id', '=', surveyId).orderBy('revision', 'desc').execute()).map(asReportRow)

/** A document that was tampered with may be no JSON any more. Reports from before the first page told of it say it at length. */
const harmSaid = sql<unknown>`case when json_valid(document_json) then coalesce(json_extract(document_json, '$.harmInShort'), json_extract(document_json, '$.originalsHarmed')) end`

/** The same, with what each says of originals that were not as they came in. */
export const reportsWithHarm = async (db: ReadableDb, surveyId: string): Promise<ReportRow[]> => {
  const rows = await db.selectFrom('reports').select(reportColumns).select(harmSaid.as('harm')).where('survey_id', '=', surveyId).orderBy('revision', 'desc').execute()
  return rows.map((row) => ({ ...asReportRow(row), ...(typeof row.harm === 'string' && { harmSaid: row.harm }) }))
}

/** Every report, newest first. */
export const pageOfReports = (db: ReadableDb, { offset, limit }: Page) =>
  db.selectFrom('reports').select(reportColumns).orderBy('issued_at', 'desc').orderBy('id', 'desc').limit(limit).offset(offset)

export const listReports = async (db: ReadableDb, page: Page): Promise<ReportRow[]> => (await pageOfReports(db, page).execute()).map(asReportRow)

export const findReport = async (db: ReadableDb, id: string): Promise<ReportRow | undefined> => {
  const row = await db.selectFrom('reports').select(reportColumns).where('id', '=', id).executeTakeFirst()
  return row && asReportRow(row)
}

export const insertReport = async (db: WritableDb, report: Insertable<ReportTable>): Promise<ReportRow> => {
  await db.insertInto('reports').values(report).execute()
  return asReportRow(report)
}

export const recordedPdfs = async (db: ReadableDb): Promise<Set<string>> =>
  new Set((await db.selectFrom('reports').select('pdf_sha256').execute()).map((row) => row.pdf_sha256))

/** The last number given out in a year; 0 for none. */
export const lastNumber = async (db: ReadableDb, year: number): Promise<number> =>
  (await db.selectFrom('report_numbers').select('last').where('year', '=', year).executeTakeFirst())?.last ?? 0

export const takeNumber = async (db: WritableDb, year: number, number: number): Promise<void> => {
  await db.insertInto('report_numbers').values({ year, last: number }).onConflict((conflict) => conflict.column('year').doUpdateSet({ last: number })).execute()
}
