import type Database from 'better-sqlite3'
import { refuse } from '../../shared-logic/contract/refusal'
import { backUpBeforeMigration } from './backups'
import { readPragma, yardApplicationId } from './database'
import { migrations as allMigrations } from './migrations'
import type { Migration } from './migrations/migration'

export interface MigrateOptions {
  readonly folder: string
  readonly programVersion: string
  readonly clock: () => Date
  readonly migrations?: readonly Migration[]
}

/** Throws when numbers do not rise: two steps that landed at once would otherwise both claim a place. */
export const checkRising = (list: readonly Migration[]): void => {
  list.forEach(({ number }, index) => {
    const before = list[index - 1]?.number ?? 0
    if (!Number.isInteger(number) || number <= before) throw new Error(`migration ${number} does not rise above ${before}`)
  })
}

export const newestMigration = (list: readonly Migration[] = allMigrations): number => list.at(-1)?.number ?? 0

const writtenBy = (database: Database.Database): string => {
  const row: unknown = database.prepare('SELECT program_version FROM migrations ORDER BY number DESC LIMIT 1').pluck().get()
  return typeof row === 'string' ? row : '?'
}

/** Refused when a newer program has brought this file further than this one can read. Reads only. */
export const refuseNewer = (database: Database.Database, { folder, programVersion, migrations = allMigrations }: Omit<MigrateOptions, 'clock'>): void => {
  const at = Number(readPragma(database, 'user_version') ?? 0)
  if (at > newestMigration(migrations)) refuse('yard.newer-version', { folder, theirs: writtenBy(database), ours: programVersion })
}

/** Brings the file to this program's schema, each step in its own transaction, after a checked backup when it held anything. */
export const migrate = (database: Database.Database, options: MigrateOptions): void => {
  const { folder, programVersion, clock, migrations = allMigrations } = options
  checkRising(migrations)
  const at = Number(readPragma(database, 'user_version') ?? 0)
  const due = migrations.filter(({ number }) => number > at)
  const first = due[0]
  if (!first) return
  if (at > 0) backUpBeforeMigration(database, folder, clock(), first.number)
  for (const { number, sql, afterwards } of due) {
    database.transaction(() => {
      const appliedAt = clock().toISOString()
      database.exec(sql)
      afterwards?.(database, appliedAt)
      database.prepare('INSERT INTO migrations (number, program_version, applied_at) VALUES (?, ?, ?)').run(number, programVersion, appliedAt)
      database.pragma(`application_id = ${yardApplicationId}`)
      database.pragma(`user_version = ${number}`)
    }).immediate()
  }
}
