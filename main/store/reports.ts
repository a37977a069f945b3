import { sql, type Insertable, type Selectable } from 'kysely'
import type { ReportRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import type { Page } from './rigs'
import type { ReportTable } from './tables'

const rowColumns = ['id', 'survey_id', 'number', 'revision', 'issued_at', 'date', 'verdict', 'pdf_sha256', 'pdf_byte_count'] as const

const asReportRow = (row: Omit<Selectable<ReportTable>, 'document_json'>): ReportRow => ({
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
  (await db.selectFrom('reports').select(rowColumns).where('survey_id', '=', surveyId).orderBy('revision', 'desc').execute()).map(asReportRow)

/** Every report, newest first. */
export const pageOfReports = (db: ReadableDb, { offset, limit }: Page) =>
  db.selectFrom('reports').select(rowColumns).orderBy('issued_at', 'desc').orderBy('id', 'desc').limit(limit).offset(offset)

export const listReports = async (db: ReadableDb, page: Page): Promise<ReportRow[]> => (await pageOfReports(db, page).execute()).map(asReportRow)

export const findReport = async (db: ReadableDb, id: string): Promise<ReportRow | undefined> => {
  const row = await db.selectFrom('reports').select(rowColumns).where('id', '=', id).executeTakeFirst()
  return row && asReportRow(row)
}

export const insertReport = async (db: WritableDb, report: Insertable<ReportTable>): Promise<ReportRow> => {
  await db.insertInto('reports').values(report).execute()
  return asReportRow(report)
}

/** An issued report as it is to be proven: its PDF's size and hash, and what its frozen document says of the record of photographs, as JSON. */
export interface ReportToProve extends ReportRow {
  readonly isReadable: boolean
  readonly photographRecord: string | null
}

/** Revisions of one survey, newest first. A document that is no JSON any more is said to be so, and stops nothing. */
export const reportsToProve = async (db: ReadableDb, surveyId: string): Promise<ReportToProve[]> => {
  const isReadable = sql<number>`json_valid(document_json)`
  const rows = await db.selectFrom('reports').select(rowColumns)
    .select([isReadable.as('is_readable'), sql<string | null>`CASE WHEN ${isReadable} THEN document_json -> '$.photographRecord' END`.as('photograph_record')])
    .where('survey_id', '=', surveyId).orderBy('revision', 'desc').execute()
  return rows.map((row) => ({ ...asReportRow(row), isReadable: row.is_readable === 1, photographRecord: row.photograph_record }))
}

export const recordedPdfs = async (db: ReadableDb): Promise<Set<string>> =>
  new Set((await db.selectFrom('reports').select('pdf_sha256').execute()).map((row) => row.pdf_sha256))

/** The last number given out in a year; 0 for none. */
export const lastNumber = async (db: ReadableDb, year: number): Promise<number> =>
  (await db.selectFrom('report_numbers').select('last').where('year', '=', year).executeTakeFirst())?.last ?? 0

export const takeNumber = async (db: WritableDb, year: number, number: number): Promise<void> => {
  await db.insertInto('report_numbers').values({ year, last: number }).onConflict((conflict) => conflict.column('year').doUpdateSet({ last: number })).execute()
}
