import type Database from 'better-sqlite3'

/** One step of the yard's schema. Numbers stand ten apart and rise; a step that has landed is never edited. */
export interface Migration {
  readonly number: number
  readonly sql: string
  /**
   * What SQL cannot do, after it and in the same transaction; `at` is the step's instant, UTC. It is frozen like the SQL:
   * it names its columns itself and uses nothing of the program that may change.
   */
  readonly afterwards?: (database: Database.Database, at: string) => void
}
