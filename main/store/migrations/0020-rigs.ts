import type { Migration } from './migration'

export const rigs: Migration = {
  number: 20,
  sql: `
    CREATE TABLE rigs (
      serial INTEGER PRIMARY KEY,
      id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
      name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
      sort_name TEXT NOT NULL,
      search_text TEXT NOT NULL,
      rig_json TEXT NOT NULL CHECK (json_valid(rig_json)),
      saved_at TEXT NOT NULL,
      removed_at TEXT
    ) STRICT;
    CREATE INDEX rigs_by_name ON rigs (sort_name, id, removed_at) WHERE removed_at IS NULL;

    CREATE VIRTUAL TABLE rigs_search USING fts5 (search_text, content = 'rigs', content_rowid = 'serial', tokenize = 'trigram');
    CREATE TRIGGER rigs_search_insert AFTER INSERT ON rigs BEGIN
      INSERT INTO rigs_search (rowid, search_text) VALUES (new.serial, new.search_text);
    END;
    CREATE TRIGGER rigs_search_update AFTER UPDATE OF search_text ON rigs WHEN old.search_text <> new.search_text BEGIN
      INSERT INTO rigs_search (rigs_search, rowid, search_text) VALUES ('delete', old.serial, old.search_text);
      INSERT INTO rigs_search (rowid, search_text) VALUES (new.serial, new.search_text);
    END;
  `,
}
