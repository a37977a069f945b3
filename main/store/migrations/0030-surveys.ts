import type { Migration } from './migration'

export const surveys: Migration = {
  number: 30,
  sql: `
    CREATE TABLE surveys (
      serial INTEGER PRIMARY KEY,
      id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
      rig_id TEXT NOT NULL REFERENCES rigs (id),
      rig_name TEXT NOT NULL,
      search_text TEXT NOT NULL,
      purpose TEXT NOT NULL CHECK (purpose IN ('purchase', 'hire out', 'hire in', 'sale', 'yearly', 'before tow')),
      survey_date TEXT NOT NULL CHECK (survey_date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
      status TEXT NOT NULL CHECK (status IN ('under way', 'issued')),
      rule_book TEXT NOT NULL CHECK (rule_book IN ('us', 'eu')),
      catalogue_version TEXT NOT NULL,
      zone TEXT NOT NULL,
      place TEXT,
      here_check_id TEXT,
      here_position TEXT,
      verdict TEXT NOT NULL CHECK (verdict IN ('pass', 'advisory', 'fail', 'not seen', 'not applicable')),
      tallies_json TEXT NOT NULL CHECK (json_valid(tallies_json)),
      asked INTEGER NOT NULL CHECK (asked >= 0),
      open INTEGER NOT NULL CHECK (open BETWEEN 0 AND asked),
      report_number TEXT UNIQUE,
      revision INTEGER NOT NULL CHECK (revision >= 0),
      change_count INTEGER NOT NULL CHECK (change_count >= 0),
      started_at TEXT NOT NULL,
      discarded_at TEXT,
      CHECK ((here_check_id IS NULL) = (here_position IS NULL)),
      CHECK ((report_number IS NULL) = (revision = 0)),
      CHECK (status = 'under way' OR revision > 0),
      CHECK (discarded_at IS NULL OR revision = 0)
    ) STRICT;
    CREATE INDEX surveys_by_date ON surveys (survey_date DESC, id DESC, discarded_at) WHERE discarded_at IS NULL;
    CREATE INDEX surveys_by_rig ON surveys (rig_id, survey_date DESC, id DESC, discarded_at) WHERE discarded_at IS NULL;

    CREATE TABLE frozen_rigs (
      survey_id TEXT PRIMARY KEY REFERENCES surveys (id),
      rig_json TEXT NOT NULL CHECK (json_valid(rig_json))
    ) STRICT;

    CREATE VIRTUAL TABLE surveys_search USING fts5 (search_text, content = 'surveys', content_rowid = 'serial', tokenize = 'trigram');
    CREATE TRIGGER surveys_search_insert AFTER INSERT ON surveys BEGIN
      INSERT INTO surveys_search (rowid, search_text) VALUES (new.serial, new.search_text);
    END;
    CREATE TRIGGER surveys_search_update AFTER UPDATE OF search_text ON surveys WHEN old.search_text <> new.search_text BEGIN
      INSERT INTO surveys_search (surveys_search, rowid, search_text) VALUES ('delete', old.serial, old.search_text);
      INSERT INTO surveys_search (rowid, search_text) VALUES (new.serial, new.search_text);
    END;
  `,
}
