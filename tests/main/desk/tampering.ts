import Database from 'better-sqlite3'
import { join } from 'node:path'
import type { Attack } from './attacks/attack'
import { onCopies } from './attacks/on-copies'
import { onList } from './attacks/on-list'
import { onOriginals } from './attacks/on-originals'
import { onRecord } from './attacks/on-record'
import { onReports } from './attacks/on-reports'
import { onRows } from './attacks/on-rows'
import { onSurveys } from './attacks/on-surveys'

export const attacks: readonly Attack[] = [...onRecord, ...onRows, ...onOriginals, ...onCopies, ...onReports, ...onSurveys, ...onList]

const disarmIn = (database: Database.Database): void => {
  for (const type of ['trigger', 'index'])
    for (const name of database.prepare<[string], string>("SELECT name FROM sqlite_schema WHERE type = ? AND sql IS NOT NULL AND tbl_name IN ('photograph_log', 'photograph_log_ends', 'survey_list', 'survey_list_end', 'photographs', 'originals', 'reports', 'surveys', 'answers', 'frozen_rigs')").pluck().all(type))
      database.exec(`DROP ${type} "${name}"`)
}

const openAsAttacker = (folder: string): Database.Database => {
  const database = new Database(join(folder, 'yard.sqlite'))
  // Flushed to the disk or not is all the same here, and a thousand attacks are quicker without.
  for (const pragma of ['synchronous = OFF', 'foreign_keys = OFF', 'ignore_check_constraints = ON']) database.pragma(pragma)
  return database
}

/** Takes every trigger and index away from a closed yard. */
export const disarm = (folder: string): void => {
  const database = openAsAttacker(folder)
  database.transaction(() => disarmIn(database))()
  database.close()
}

/** What stands in a table's own definition cannot be disarmed: a row like another is refused by the database itself. */
const isRefusedByTable = (error: unknown): boolean => error instanceof Database.SqliteError && ['SQLITE_CONSTRAINT_UNIQUE', 'SQLITE_CONSTRAINT_PRIMARYKEY'].includes(error.code)

/** Opens a closed, disarmed yard as an attacker does, alters one thing and closes it again. False where nothing could be altered so. */
export const tamper = (folder: string, attack: Attack, draws: readonly number[]): boolean => {
  const database = openAsAttacker(folder)
  try {
    let drawn = 0
    return database.transaction(() => attack.alter({ folder, database, draw: () => Math.min(draws[drawn++ % draws.length] ?? 0, 1 - 1e-12) }))()
  } catch (error) {
    if (isRefusedByTable(error)) return false
    throw error
  } finally {
    database.close()
  }
}
