import type Database from 'better-sqlite3'
import { statSync } from 'node:fs'
import { refuse } from '../../shared-logic/contract/refusal'
import { listBackups } from './backups'
import { damagedRefusal } from './damage'
import { openDatabase, readPragma, yardApplicationId } from './database'
import { readFileHeader } from './file-header'
import { areRecordsGood } from './look-through'
import { newestMigration, refuseNewer, type MigrateOptions } from './migrate'

const refuseNewerUntouched = (file: string, options: Omit<MigrateOptions, 'clock'>): void => {
  const database = openDatabase(file, 'read')
  try {
    refuseNewer(database, options)
  } finally {
    database.close()
  }
}

/**
 * Looks at the yard's file before it is opened for writing, and refuses what must not be touched: a file that is no
 * database, another program's database, a newer program's yard, a file that is gone while its backups are still there.
 */
export const examineFile = (file: string, options: Omit<MigrateOptions, 'clock'>): 'new' | 'there' => {
  const { folder } = options
  const header = readFileHeader(file)
  if (header.kind === 'not a database') throw damagedRefusal(folder)
  if (header.kind === 'database') {
    if (header.userVersion > newestMigration(options.migrations)) refuseNewerUntouched(file, options)
    return 'there'
  }
  if (listBackups(folder).length > 0) throw damagedRefusal(folder, header.kind === 'missing' ? 'yard.missing' : 'yard.damaged')
  return 'new'
}

/** Refused when the database is not a yard: another program's file under this name is left alone. */
export const refuseForeign = (database: Database.Database, folder: string): void => {
  if (readPragma(database, 'application_id') === yardApplicationId) return
  const tables: unknown = database.prepare('SELECT count(*) FROM sqlite_schema').pluck().get()
  if (tables !== 0) refuse('yard.not-a-yard', { folder })
}

/** Above this the whole file is not looked through before the first answer: the answers follow beside the work. */
const wholeCheckBytes = 16_000_000

/** Refused when SQLite finds pages or indices that do not fit together. */
export const refuseDamaged = (database: Database.Database, file: string, folder: string): void => {
  const isGood = statSync(file).size > wholeCheckBytes ? areRecordsGood(database) : readPragma(database, 'quick_check(1)') === 'ok'
  if (!isGood) throw damagedRefusal(folder)
}
