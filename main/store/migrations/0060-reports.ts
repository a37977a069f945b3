import type { Migration } from './migration'

export const reports: Migration = {
  number: 60,
  sql: `
    CREATE TABLE report_numbers (
      year INTEGER PRIMARY KEY CHECK (year BETWEEN 1950 AND 9999),
      last INTEGER NOT NULL CHECK (last > 0)
    ) STRICT;

    CREATE TABLE reports (
      id TEXT PRIMARY KEY CHECK (length(id) = 36),
      survey_id TEXT NOT NULL REFERENCES surveys (id),
      number TEXT NOT NULL,
      revision INTEGER NOT NULL CHECK (revision > 0),
      issued_at TEXT NOT NULL,
      date TEXT NOT NULL,
      verdict TEXT NOT NULL CHECK (verdict IN ('pass', 'advisory', 'fail', 'not seen', 'not applicable')),
      document_json TEXT NOT NULL CHECK (json_valid(document_json)),
      pdf_sha256 TEXT NOT NULL CHECK (length(pdf_sha256) = 64),
      pdf_byte_count INTEGER NOT NULL CHECK (pdf_byte_count > 0),
      UNIQUE (number, revision),
      UNIQUE (survey_id, revision)
    ) STRICT;
    CREATE INDEX reports_by_issue ON reports (issued_at DESC, id DESC);
    CREATE TRIGGER reports_are_frozen BEFORE UPDATE ON reports BEGIN
      SELECT raise(ABORT, 'an issued report is never changed');
    END;
    CREATE TRIGGER reports_are_kept BEFORE DELETE ON reports BEGIN
      SELECT raise(ABORT, 'an issued report is never deleted');
    END;
  `,
}
