import type Database from 'better-sqlite3'
import { setImmediate } from 'node:timers/promises'
import { readPragma } from './database'
import { saysDamaged } from './disk-refusals'

/** Every table but the answers, which are many times the rest. */
const smallTables = ['migrations', 'settings', 'rigs', 'surveys', 'frozen_rigs', 'originals', 'photographs', 'report_numbers', 'reports'] as const

const tablesThere = (database: Database.Database): string[] => {
  const there = database.prepare<[], { name: string }>("SELECT name FROM sqlite_schema WHERE type = 'table'").all().map(({ name }) => name)
  return smallTables.filter((table) => there.includes(table))
}

const isTableGood = (database: Database.Database, table: string): boolean => readPragma(database, `quick_check('${table}')`) === 'ok'

/** Looks through all but the answers: some tens of milliseconds at 10,000 surveys, where the whole file takes seconds. */
export const areRecordsGood = (database: Database.Database): boolean => tablesThere(database).every((table) => isTableGood(database, table))

const surveysAtATime = 50

const sliceEnd = (database: Database.Database, after: string): string | undefined => {
  const ids = database.prepare<[string, number], { id: string }>('SELECT id FROM surveys WHERE id > ? ORDER BY id LIMIT ?').all(after, surveysAtATime)
  return ids.at(-1)?.id
}

/** Reads every answer, a few surveys at a time; SQLite reports a page that does not fit. */
const readAnswers = async (database: Database.Database): Promise<void> => {
  const read = database.prepare('SELECT count(*), sum(length(answer_json)), max(answered_at) FROM answers WHERE survey_id > ? AND survey_id <= ?')
  for (let after = '', end = sliceEnd(database, after); end !== undefined; end = sliceEnd(database, after)) {
    read.get(after, end)
    after = end
    await setImmediate()
  }
}

/** Looks through the whole file in slices of a few milliseconds, so that work goes on meanwhile. */
export const lookThrough = async (database: Database.Database): Promise<boolean> => {
  try {
    for (const table of tablesThere(database)) {
      if (!isTableGood(database, table)) return false
      await setImmediate()
    }
    await readAnswers(database)
    return true
  } catch (error) {
    if (saysDamaged(error)) return false
    throw error
  }
}
