import type { Migration } from './migration'

export const photographs: Migration = {
  number: 50,
  sql: `
    CREATE TABLE originals (
      sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
      format TEXT NOT NULL CHECK (format IN ('jpeg', 'png', 'webp', 'tiff', 'avif')),
      byte_count INTEGER NOT NULL CHECK (byte_count > 0),
      width_px INTEGER NOT NULL CHECK (width_px > 0),
      height_px INTEGER NOT NULL CHECK (height_px > 0),
      taken_at TEXT,
      latitude REAL CHECK (latitude BETWEEN -90 AND 90),
      longitude REAL CHECK (longitude BETWEEN -180 AND 180),
      added_at TEXT NOT NULL
    ) STRICT;

    CREATE TABLE photographs (
      id TEXT PRIMARY KEY CHECK (length(id) = 36),
      survey_id TEXT NOT NULL REFERENCES surveys (id),
      sha256 TEXT NOT NULL REFERENCES originals (sha256),
      check_id TEXT,
      position TEXT,
      caption TEXT NOT NULL,
      file_name TEXT NOT NULL,
      added_at TEXT NOT NULL,
      removed_at TEXT,
      CHECK ((check_id IS NULL) = (position IS NULL))
    ) STRICT;
    CREATE UNIQUE INDEX photographs_once ON photographs (survey_id, sha256, ifnull(check_id, ''), ifnull(position, ''));
    CREATE INDEX photographs_by_original ON photographs (sha256, added_at, file_name);
    CREATE INDEX photographs_by_survey ON photographs (survey_id, added_at, id) WHERE removed_at IS NULL;
  `,
}
