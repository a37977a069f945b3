import type { Migration } from './migration'

export const answers: Migration = {
  number: 40,
  sql: `
    CREATE TABLE answers (
      survey_id TEXT NOT NULL REFERENCES surveys (id),
      check_id TEXT NOT NULL CHECK (check_id <> ''),
      position TEXT NOT NULL CHECK (position <> ''),
      answer_json TEXT NOT NULL CHECK (json_valid(answer_json)),
      answered_at TEXT NOT NULL,
      PRIMARY KEY (survey_id, check_id, position)
    ) STRICT, WITHOUT ROWID;
  `,
}
