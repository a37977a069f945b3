import type Database from 'better-sqlite3'
import { hash } from 'node:crypto'
import { canonicalJson, type Json } from '../../../shared-logic/proof/canonical-json'
import { writeEntry, type RecordEnd } from '../../../shared-logic/proof/entry'
import type { Migration } from './migration'

interface Row {
  readonly survey_id: string
  readonly number: string
  readonly revision: number
  readonly issued_at: string
  readonly date: string
  readonly verdict: string
  readonly document: Uint8Array
  readonly pdf_sha256: string
  readonly pdf_byte_count: number
}

const hashOf = (text: string): string => hash('sha256', text)

/** Whichever reaches further, as an entry of the record always follows. */
const endToFollow = (database: Database.Database, surveyId: string): RecordEnd | undefined =>
  database.prepare<[string, string], RecordEnd>(`
    SELECT place AS entryCount, sha256 AS lastSha256 FROM photograph_log WHERE survey_id = ?
    UNION ALL SELECT entry_count, last_sha256 FROM photograph_log_ends WHERE survey_id = ? ORDER BY 1 DESC LIMIT 1`).get(surveyId, surveyId)

const headColumns = [
  'rig_id', 'rig_name', 'purpose', 'survey_date', 'status', 'rule_book', 'catalogue_version', 'zone', 'place', 'verdict', 'tallies_json', 'asked', 'open', 'report_number', 'revision', 'started_at', 'discarded_at',
]

const hashOfJson = (value: Json): string => hashOf(canonicalJson(value))

/** A survey as it stands, where it is issued by this revision and was not opened again. */
const surveyAsIssued = (database: Database.Database, surveyId: string, revision: number): Record<string, Json> => {
  const head = database.prepare<[string, number], Json[]>(`SELECT ${headColumns.join(', ')} FROM surveys WHERE id = ? AND status = 'issued' AND revision = ?`).raw().get(surveyId, revision)
  if (head === undefined) return {}
  const rig = database.prepare<[string], string>('SELECT rig_json FROM frozen_rigs WHERE survey_id = ?').pluck().get(surveyId)
  const answers = database.prepare<[string], Json[]>('SELECT check_id, position, answer_json, answered_at FROM answers WHERE survey_id = ? ORDER BY check_id, position').raw().all(surveyId)
  return { survey: { headSha256: hashOfJson(head), rigSha256: hashOfJson(rig ?? null), answersSha256: hashOfJson(answers) } }
}

/** Enters the reports that were issued before reports were recorded, each marked so, at the time of this step. */
const enterReportsLate = (database: Database.Database, at: string): void => {
  const ids = database.prepare<[], string>('SELECT id FROM reports ORDER BY survey_id, revision').pluck().all()
  const find = database.prepare<[string], Row>('SELECT survey_id, number, revision, issued_at, date, verdict, CAST(document_json AS BLOB) AS document, pdf_sha256, pdf_byte_count FROM reports WHERE id = ?')
  const insert = database.prepare('INSERT INTO photograph_log (survey_id, place, entry_json, sha256) VALUES (?, ?, ?, ?)')
  for (const reportId of ids) {
    const row = find.get(reportId)
    if (row === undefined) continue
    const { survey_id: surveyId, number, revision, date, verdict } = row
    const report = {
      number, revision, issuedAt: row.issued_at, date, verdict,
      documentSha256: hash('sha256', row.document), pdfSha256: row.pdf_sha256, pdfByteCount: row.pdf_byte_count,
    }
    const end = endToFollow(database, surveyId)
    const opening = end === undefined ? [{ what: 'opened', record: 'bunkwright photographs', version: 1, surveyId }] : []
    let last = end
    for (const content of [...opening, { what: 'report entered late', reportId, report, ...surveyAsIssued(database, surveyId, revision) }]) {
      const { place, text, sha256 } = writeEntry(last, content, at, hashOf)
      insert.run(surveyId, place, text, sha256)
      last = { entryCount: place, lastSha256: sha256 }
    }
  }
}

/**
 * The hashes of the two copies of an original that are shown and printed: none until a program that records them makes
 * them, since what lies on the disk today may have been changed already. And every report has its entry in the record.
 */
export const copiesAndReportsRecorded: Migration = {
  number: 90,
  sql: `
    ALTER TABLE originals ADD COLUMN large_preview_sha256 TEXT CHECK (large_preview_sha256 IS NULL OR length(large_preview_sha256) = 64);
    ALTER TABLE originals ADD COLUMN small_preview_sha256 TEXT CHECK (small_preview_sha256 IS NULL OR length(small_preview_sha256) = 64);
  `,
  afterwards: enterReportsLate,
}
