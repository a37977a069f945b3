import type { Migration } from './migration'

/**
 * HEIC is taken, and photographs carry how they came, how they are turned, whether and in which order they print, and
 * their layer of marks. Both tables are made anew: SQLite changes no CHECK in place. The child goes first, so that no
 * reference is ever broken.
 */
export const photographsFromTheWalkRound: Migration = {
  number: 70,
  sql: `
    CREATE TABLE originals_next (
      sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
      format TEXT NOT NULL CHECK (format IN ('jpeg', 'png', 'webp', 'tiff', 'avif', 'heic')),
      byte_count INTEGER NOT NULL CHECK (byte_count > 0),
      width_px INTEGER NOT NULL CHECK (width_px > 0),
      height_px INTEGER NOT NULL CHECK (height_px > 0),
      taken_at TEXT,
      latitude REAL CHECK (latitude BETWEEN -90 AND 90),
      longitude REAL CHECK (longitude BETWEEN -180 AND 180),
      quality_json TEXT CHECK (quality_json IS NULL OR json_valid(quality_json)),
      look_hash TEXT CHECK (look_hash IS NULL OR length(look_hash) = 16),
      added_at TEXT NOT NULL
    ) STRICT;
    INSERT INTO originals_next (sha256, format, byte_count, width_px, height_px, taken_at, latitude, longitude, added_at)
      SELECT sha256, format, byte_count, width_px, height_px, taken_at, latitude, longitude, added_at FROM originals;

    CREATE TABLE photographs_next (
      id TEXT PRIMARY KEY CHECK (length(id) = 36),
      survey_id TEXT NOT NULL REFERENCES surveys (id),
      sha256 TEXT NOT NULL REFERENCES originals_next (sha256),
      check_id TEXT,
      position TEXT,
      caption TEXT NOT NULL,
      file_name TEXT NOT NULL,
      source TEXT NOT NULL CHECK (source IN ('file', 'camera', 'phone')),
      quarter_turns INTEGER NOT NULL CHECK (quarter_turns BETWEEN 0 AND 3),
      is_printed INTEGER NOT NULL CHECK (is_printed IN (0, 1)),
      print_order INTEGER,
      marks_json TEXT CHECK (marks_json IS NULL OR json_valid(marks_json)),
      added_at TEXT NOT NULL,
      removed_at TEXT,
      CHECK ((check_id IS NULL) = (position IS NULL))
    ) STRICT;
    INSERT INTO photographs_next (id, survey_id, sha256, check_id, position, caption, file_name, source, quarter_turns, is_printed, added_at, removed_at)
      SELECT id, survey_id, sha256, check_id, position, caption, file_name, 'file', 0, 1, added_at, removed_at FROM photographs;

    DROP TABLE photographs;
    DROP TABLE originals;
    ALTER TABLE originals_next RENAME TO originals;
    ALTER TABLE photographs_next RENAME TO photographs;

    CREATE UNIQUE INDEX photographs_once ON photographs (survey_id, sha256, ifnull(check_id, ''), ifnull(position, ''));
    CREATE INDEX photographs_by_original ON photographs (sha256, added_at, file_name);
    CREATE INDEX photographs_by_survey ON photographs (survey_id, added_at, id) WHERE removed_at IS NULL;
  `,
}
