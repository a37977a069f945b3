import Database from 'better-sqlite3'
import { Kysely, SqliteDialect, type Transaction } from 'kysely'
import type { Tables } from './tables'

/** What a query may use: it cannot write. A `WritableDb` serves as well. */
export type ReadableDb = Pick<Kysely<Tables>, 'selectFrom' | 'selectNoFrom'>
/** Handed out only inside one transaction, by `Yard.write`. */
export type WritableDb = Transaction<Tables>

/** "BWYD": says that an SQLite file is a yard. */
export const yardApplicationId = 0x42575944

/** Opens a connection with the settings every connection needs. Throws SQLite's error. */
export const openDatabase = (file: string, mode: 'write' | 'read'): Database.Database => {
  const database = new Database(file, { readonly: mode === 'read', fileMustExist: mode === 'read', timeout: 5_000 })
  try {
    database.pragma('trusted_schema = OFF')
    database.pragma('foreign_keys = ON')
    if (mode === 'write') {
      database.pragma('journal_mode = WAL')
      database.pragma('synchronous = FULL')
    }
    return database
  } catch (error) {
    database.close()
    throw error
  }
}

export const readPragma = (database: Database.Database, name: string): string | number | undefined => {
  const value = database.pragma(name, { simple: true })
  return typeof value === 'string' || typeof value === 'number' ? value : undefined
}

/**
 * Kysely over one connection. Statements are prepared once. A full disk makes SQLite roll back by itself; the
 * rollback that follows would then hide the cause behind 'no transaction is active', so it does nothing.
 */
export const kyselyOver = (database: Database.Database): Kysely<Tables> => {
  const prepared = new Map<string, Database.Statement>()
  const prepare = (sql: string): Database.Statement => {
    if (sql === 'rollback' && !database.inTransaction) return database.prepare('select 1')
    const known = prepared.get(sql)
    if (known) return known
    const statement = database.prepare(sql)
    prepared.set(sql, statement)
    return statement
  }
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: { prepare, close: () => database.close() } }) })
}
