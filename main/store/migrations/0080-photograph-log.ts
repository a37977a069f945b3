import type Database from 'better-sqlite3'
import { hash } from 'node:crypto'
import type { Json } from '../../../shared-logic/proof/canonical-json'
import { writeEntry, type RecordEnd } from '../../../shared-logic/proof/entry'
import type { Migration } from './migration'

interface Row {
  readonly id: string
  readonly survey_id: string
  readonly sha256: string
  readonly byte_count: number
  readonly print_order: number | null
  readonly quality_json: string | null
  readonly marks_json: string | null
  readonly is_printed: number
  readonly [column: string]: string | number | null
}

const hashOf = (text: string): string => hash('sha256', text)
const hashOrNone = (text: string | null): string | null => (text === null ? null : hashOf(text))

/** What the rows say today, and no more: that it was so when the photograph came in is not proven. */
const lateEntry = (row: Row): Record<string, Json> => ({
  what: 'entered late', photographId: row.id, sha256: row.sha256, byteCount: row.byte_count,
  to: {
    format: row['format'] ?? null, widthPx: row['width_px'] ?? null, heightPx: row['height_px'] ?? null, takenAt: row['taken_at'] ?? null,
    latitude: row['latitude'] ?? null, longitude: row['longitude'] ?? null, qualitySha256: hashOrNone(row.quality_json), lookHash: row['look_hash'] ?? null,
    firstArrivedAt: row['first_arrived_at'] ?? null, arrivedAt: row['added_at'] ?? null, source: row['source'] ?? null, fileName: row['file_name'] ?? null,
    checkId: row['check_id'] ?? null, position: row['position'] ?? null, caption: row['caption'] ?? null, quarterTurns: row['quarter_turns'] ?? null,
    isPrinted: row.is_printed === 1, marksSha256: hashOrNone(row.marks_json), removedAt: row['removed_at'] ?? null,
  },
})

const lateEntries = (surveyId: string, rows: readonly Row[]): Record<string, Json>[] => {
  const ordered = rows.filter(({ print_order }) => print_order !== null).map(({ id, print_order }) => [id, print_order] as const).toSorted(([a], [b]) => (a < b ? -1 : 1))
  return [
    { what: 'opened', record: 'bunkwright photographs', version: 1, surveyId },
    ...rows.map(lateEntry),
    ...(ordered.length === 0 ? [] : [{ what: 'order entered late', orderSha256: hashOf(`[${ordered.map(([id, place]) => `["${id}",${place}]`).join(',')}]`) }]),
  ]
}

/** Enters the photographs that were there before the record was, each marked so, at the time of this step. */
const enterLate = (database: Database.Database, at: string): void => {
  const rows = database.prepare<[], Row>(`
    SELECT photographs.*, originals.format, originals.byte_count, originals.width_px, originals.height_px, originals.taken_at, originals.latitude, originals.longitude,
      originals.quality_json, originals.look_hash, originals.added_at AS first_arrived_at
    FROM photographs JOIN originals ON originals.sha256 = photographs.sha256 ORDER BY photographs.survey_id, photographs.added_at, photographs.id`).all()
  const insert = database.prepare('INSERT INTO photograph_log (survey_id, place, entry_json, sha256) VALUES (?, ?, ?, ?)')
  for (const surveyId of new Set(rows.map(({ survey_id }) => survey_id))) {
    let end: RecordEnd | undefined
    for (const content of lateEntries(surveyId, rows.filter(({ survey_id }) => survey_id === surveyId))) {
      const { place, text, sha256 } = writeEntry(end, content, at, hashOf)
      insert.run(surveyId, place, text, sha256)
      end = { entryCount: place, lastSha256: sha256 }
    }
  }
}

/**
 * The record of photographs: entries that are only ever added, and beside them where each record ends, so that a cut-off
 * end is noticed. The end is kept by the database itself. An entry follows whichever reaches further, entries or end:
 * where one was tampered with, work goes on and the gap stays to be found.
 */
export const photographLog: Migration = {
  number: 80,
  sql: `
    CREATE TABLE photograph_log (
      survey_id TEXT NOT NULL REFERENCES surveys (id),
      place INTEGER NOT NULL CHECK (place > 0),
      entry_json TEXT NOT NULL CHECK (json_valid(entry_json)),
      sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
      PRIMARY KEY (survey_id, place)
    ) STRICT, WITHOUT ROWID;

    CREATE TABLE photograph_log_ends (
      survey_id TEXT PRIMARY KEY REFERENCES surveys (id),
      entry_count INTEGER NOT NULL CHECK (entry_count > 0),
      last_sha256 TEXT NOT NULL CHECK (length(last_sha256) = 64)
    ) STRICT, WITHOUT ROWID;

    CREATE TRIGGER photograph_log_is_added_to BEFORE INSERT ON photograph_log
      WHEN new.place <> 1 + max(
        ifnull((SELECT entry_count FROM photograph_log_ends WHERE survey_id = new.survey_id), 0),
        ifnull((SELECT max(place) FROM photograph_log WHERE survey_id = new.survey_id), 0)) BEGIN
      SELECT raise(ABORT, 'an entry of the record follows the last');
    END;
    CREATE TRIGGER photograph_log_end AFTER INSERT ON photograph_log BEGIN
      INSERT INTO photograph_log_ends (survey_id, entry_count, last_sha256) VALUES (new.survey_id, new.place, new.sha256)
        ON CONFLICT (survey_id) DO UPDATE SET entry_count = new.place, last_sha256 = new.sha256;
    END;
    CREATE TRIGGER photograph_log_is_frozen BEFORE UPDATE ON photograph_log BEGIN
      SELECT raise(ABORT, 'an entry of the record is never changed');
    END;
    CREATE TRIGGER photograph_log_is_kept BEFORE DELETE ON photograph_log BEGIN
      SELECT raise(ABORT, 'an entry of the record is never deleted');
    END;
    CREATE TRIGGER photograph_log_ends_grow BEFORE UPDATE ON photograph_log_ends
      WHEN new.survey_id <> old.survey_id OR new.entry_count <= old.entry_count BEGIN
      SELECT raise(ABORT, 'a record never grows shorter');
    END;
    CREATE TRIGGER photograph_log_ends_are_kept BEFORE DELETE ON photograph_log_ends BEGIN
      SELECT raise(ABORT, 'an entry of the record is never deleted');
    END;
  `,
  afterwards: enterLate,
}
