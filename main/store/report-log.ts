import { hash } from 'node:crypto'
import { sql } from 'kysely'
import { issuedAct, type RecordedReport } from '../../shared-logic/proof/acts'
import type { ReportRow } from '../../shared-logic/survey/records'
import type { ReadableDb, WritableDb } from './database'
import { enter, recordEnd } from './photograph-log'
import { enterInList } from './survey-list'
import { surveyToRecord } from './survey-log'
import { asReportRow, reportColumns } from './reports'

/** An issued report as it is to be proven: its row, and what its frozen document says of the record, as JSON. */
export interface ReportToProve extends ReportRow {
  /** Of the document's bytes as they lie in the file. */
  readonly documentSha256: string
  readonly isReadable: boolean
  readonly photographRecord: string | null
}

const isReadable = sql<number>`json_valid(document_json)`
const document = sql<Uint8Array>`CAST(document_json AS BLOB)`

/** Revisions of one survey, newest first. A document that is no JSON any more is said to be so, and stops nothing. */
export const reportsToProve = async (db: ReadableDb, surveyId: string): Promise<ReportToProve[]> => {
  const rows = await db.selectFrom('reports').select(reportColumns)
    .select([document.as('document'), isReadable.as('is_readable'), sql<string | null>`CASE WHEN ${isReadable} THEN document_json -> '$.photographRecord' END`.as('photograph_record')])
    .where('survey_id', '=', surveyId).orderBy('revision', 'desc').execute()
  return rows.map((row) => ({ ...asReportRow(row), documentSha256: hash('sha256', row.document), isReadable: row.is_readable === 1, photographRecord: row.photograph_record }))
}

/** Those of these reports that the record of some other survey has. */
export const reportsOfOthers = async (db: ReadableDb, surveyId: string, ids: readonly string[]): Promise<Set<string>> => {
  if (ids.length === 0) return new Set()
  const reportId = sql<string | null>`CASE WHEN json_valid(entry_json) THEN entry_json ->> '$.reportId' END`
  const found = await db.selectFrom('photograph_log').select(reportId.as('id')).where('survey_id', '<>', surveyId).where(reportId, 'in', ids).execute()
  return new Set(found.flatMap(({ id }) => id ?? []))
}

export const asRecordedReport = ({ id, number, revision, issuedAt, date, verdict, documentSha256, pdfSha256, pdfByteCount }: Omit<ReportToProve, 'isReadable' | 'photographRecord'>): RecordedReport => ({
  reportId: id,
  facts: { number, revision, issuedAt, date, verdict, documentSha256, pdfSha256, pdfByteCount },
})

/** Enters a report that has just been issued and its survey as it then stands, in the transaction that keeps them. `at` is a UTC instant. */
export const enterIssued = async (db: WritableDb, reportId: string, at: string): Promise<void> => {
  const row = await db.selectFrom('reports').select(reportColumns).select(document.as('document')).where('id', '=', reportId).executeTakeFirstOrThrow()
  const report = asRecordedReport({ ...asReportRow(row), documentSha256: hash('sha256', row.document) })
  await enter(db, row.survey_id, [issuedAct(report, await surveyToRecord(db, row.survey_id))], at)
  const end = await recordEnd(db, row.survey_id)
  if (end !== undefined) await enterInList(db, { what: 'report issued', surveyId: row.survey_id, end, number: row.number }, at)
}
