import type { Migration } from './migration'

export const settings: Migration = {
  number: 10,
  sql: `
    CREATE TABLE migrations (
      number INTEGER PRIMARY KEY CHECK (number > 0),
      program_version TEXT NOT NULL,
      applied_at TEXT NOT NULL
    ) STRICT;

    CREATE TABLE settings (
      only INTEGER PRIMARY KEY CHECK (only = 1),
      settings_json TEXT NOT NULL CHECK (json_valid(settings_json)),
      saved_at TEXT NOT NULL
    ) STRICT;
  `,
}
