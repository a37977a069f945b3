import Database from 'better-sqlite3'
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import type { Json } from '../../../shared-logic/proof/canonical-json'
import { writeEntry, type RecordEnd } from '../../../shared-logic/proof/entry'

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')
type Content = Record<string, Json> & { readonly what: string; readonly at: string; readonly to?: Readonly<Record<string, Json>> }

/** An entry as it was written before copies and reports were recorded; none for what was not recorded at all. */
const asItWas = ({ previous: _previous, place: _place, ...content }: Content): Content[] => {
  if (['report issued', 'survey opened again', 'copies made'].includes(content.what)) return []
  if (content.to === undefined) return [content as Content]
  const { largePreviewSha256: _large, smallPreviewSha256: _small, ...to } = content.to
  return [{ ...content, to } as Content]
}

type Step = (database: Database.Database) => void

/** Does this with the triggers of these tables out of the way. */
const withoutTriggers = (database: Database.Database, tables: readonly string[], step: Step): void => {
  const triggers = database.prepare<[string], { name: string; sql: string }>("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' AND tbl_name IN (SELECT value FROM json_each(?))").all(JSON.stringify(tables))
  for (const { name } of triggers) database.exec(`DROP TRIGGER ${name}`)
  step(database)
  for (const { sql } of triggers) database.exec(sql)
}

/** Writes the record anew without what was not recorded; answers where it then stands, by the hash of the entry that stood there. */
const rewriteRecord = (database: Database.Database): Map<string, RecordEnd> => {
  const found = database.prepare<[], { survey_id: string; entry_json: string; sha256: string }>('SELECT survey_id, entry_json, sha256 FROM photograph_log ORDER BY survey_id, place').all()
  const ends = new Map<string, RecordEnd>()
  const standing = new Map<string, RecordEnd>()
  withoutTriggers(database, ['photograph_log', 'photograph_log_ends'], () => database.exec('DELETE FROM photograph_log; DELETE FROM photograph_log_ends'))
  for (const { survey_id, entry_json, sha256: before } of found) {
    for (const { at, ...content } of asItWas(JSON.parse(entry_json) as Content)) {
      const entry = writeEntry(ends.get(survey_id), content, at, sha256)
      database.prepare('INSERT INTO photograph_log VALUES (?, ?, ?, ?)').run(survey_id, entry.place, entry.text, entry.sha256)
      ends.set(survey_id, { entryCount: entry.place, lastSha256: entry.sha256 })
    }
    const end = ends.get(survey_id)
    if (end !== undefined) standing.set(before, end)
  }
  return standing
}

const rewriteReports = (database: Database.Database, standing: ReadonlyMap<string, RecordEnd>): void => {
  for (const { id, document_json } of database.prepare<[], { id: string; document_json: string }>('SELECT id, document_json FROM reports').all()) {
    const document = JSON.parse(document_json) as { photographRecord?: RecordEnd }
    const photographRecord = { ...document.photographRecord, ...standing.get(document.photographRecord?.lastSha256 ?? '') }
    database.prepare('UPDATE reports SET document_json = ? WHERE id = ?').run(JSON.stringify({ ...document, photographRecord }), id)
  }
}

/** Brings a closed yard back to what the program before step 90 would have made of the same work: schema, rows and record. */
export const asBeforeCopies = (folder: string): void => {
  const database = new Database(join(folder, 'yard.sqlite'))
  const standing = rewriteRecord(database)
  withoutTriggers(database, ['reports'], () => rewriteReports(database, standing))
  database.exec('ALTER TABLE originals DROP COLUMN large_preview_sha256; ALTER TABLE originals DROP COLUMN small_preview_sha256; DROP TABLE survey_list; DROP TABLE survey_list_end; DELETE FROM migrations WHERE number >= 90; PRAGMA user_version = 80')
  database.close()
}
