import type Database from 'better-sqlite3'
import { hash } from 'node:crypto'
import type { Json } from '../../../shared-logic/proof/canonical-json'
import { writeEntry, type RecordEnd } from '../../../shared-logic/proof/entry'
import type { Migration } from './migration'

interface Row {
  readonly id: string
  readonly discarded_at: string | null
  readonly report_number: string | null
  readonly entry_count: number | null
  readonly last_sha256: string | null
}

const hashOf = (text: string): string => hash('sha256', text)

const lateEntry = ({ id, discarded_at, report_number, entry_count, last_sha256 }: Row): Record<string, Json> => ({
  what: 'survey entered late', surveyId: id, isDiscarded: discarded_at !== null,
  ...(report_number !== null && { number: report_number }),
  ...(entry_count !== null && last_sha256 !== null && { end: { entryCount: entry_count, lastSha256: last_sha256 } }),
})

/** Enters the surveys that were there before the list was, as the yard has them at the time of this step. */
const enterLate = (database: Database.Database, at: string): void => {
  const rows = database.prepare<[], Row>('SELECT id, discarded_at, report_number, entry_count, last_sha256 FROM surveys LEFT JOIN photograph_log_ends ON survey_id = id ORDER BY serial').all()
  if (rows.length === 0) return
  const insert = database.prepare('INSERT INTO survey_list (place, entry_json, sha256) VALUES (?, ?, ?)')
  let end: RecordEnd | undefined
  for (const content of [{ what: 'opened', record: 'bunkwright surveys', version: 1 }, ...rows.map(lateEntry)]) {
    const { place, text, sha256 } = writeEntry(end, content, at, hashOf)
    insert.run(place, text, sha256)
    end = { entryCount: place, lastSha256: sha256 }
  }
}

/** The yard's list of its surveys, chained and added to as a record of photographs is, so that a survey taken out whole is missed. */
export const surveyList: Migration = {
  number: 100,
  sql: `
    CREATE TABLE survey_list (
      place INTEGER PRIMARY KEY CHECK (place > 0),
      entry_json TEXT NOT NULL CHECK (json_valid(entry_json)),
      sha256 TEXT NOT NULL CHECK (length(sha256) = 64)
    ) STRICT;

    CREATE TABLE survey_list_end (
      only INTEGER PRIMARY KEY CHECK (only = 1),
      entry_count INTEGER NOT NULL CHECK (entry_count > 0),
      last_sha256 TEXT NOT NULL CHECK (length(last_sha256) = 64)
    ) STRICT;

    CREATE TRIGGER survey_list_is_added_to BEFORE INSERT ON survey_list
      WHEN new.place <> 1 + max(ifnull((SELECT entry_count FROM survey_list_end), 0), ifnull((SELECT max(place) FROM survey_list), 0)) BEGIN
      SELECT raise(ABORT, 'an entry of the record follows the last');
    END;
    CREATE TRIGGER survey_list_grows AFTER INSERT ON survey_list BEGIN
      INSERT INTO survey_list_end (only, entry_count, last_sha256) VALUES (1, new.place, new.sha256)
        ON CONFLICT (only) DO UPDATE SET entry_count = new.place, last_sha256 = new.sha256;
    END;
    CREATE TRIGGER survey_list_is_frozen BEFORE UPDATE ON survey_list BEGIN
      SELECT raise(ABORT, 'an entry of the record is never changed');
    END;
    CREATE TRIGGER survey_list_is_kept BEFORE DELETE ON survey_list BEGIN
      SELECT raise(ABORT, 'an entry of the record is never deleted');
    END;
    CREATE TRIGGER survey_list_end_grows BEFORE UPDATE ON survey_list_end WHEN new.entry_count <= old.entry_count BEGIN
      SELECT raise(ABORT, 'a record never grows shorter');
    END;
    CREATE TRIGGER survey_list_end_is_kept BEFORE DELETE ON survey_list_end BEGIN
      SELECT raise(ABORT, 'an entry of the record is never deleted');
    END;
  `,
  afterwards: enterLate,
}
