import Database from 'better-sqlite3'
import { existsSync, readFileSync } from 'node:fs'
import { refuse } from '../../shared-logic/contract/refusal'
import { kyselyOver, openDatabase, readPragma } from './database'
import { sqliteCode } from './disk-refusals'
import { examineFile, refuseForeign } from './examine'
import { newestMigration, refuseNewer } from './migrate'
import { asYardRefusal, yardFile, type ReadableYard } from './yard'

/** A closed yard on read-only ground: SQLite wants to write beside a file kept in WAL, so its bytes are opened instead. */
const openBytes = (file: string): Database.Database => {
  const bytes = readFileSync(file)
  // Bytes 18 and 19 of the header say WAL by 2; 1 says that the file stands alone.
  bytes.fill(1, 18, 20)
  return new Database(bytes, { readonly: true })
}

const openToRead = (file: string): Database.Database => {
  try {
    const database = openDatabase(file, 'read')
    try {
      database.prepare('SELECT 1 FROM sqlite_schema').get()
      return database
    } catch (error) {
      database.close()
      throw error
    }
  } catch (error) {
    const code = sqliteCode(error) ?? ''
    if ((code.startsWith('SQLITE_CANTOPEN') || code.startsWith('SQLITE_READONLY')) && !existsSync(`${file}-wal`)) return openBytes(file)
    throw error
  }
}

/**
 * Opens a yard without its lock, to read beside a running program or from read-only ground; for the command line.
 * Refused when there is none, or when its version is another than this program's.
 */
export const openYardToRead = (folder: string, { programVersion }: { readonly programVersion: string }): ReadableYard => {
  try {
    if (examineFile(yardFile(folder), { folder, programVersion }) === 'new') refuse('yard.none-here', { folder })
    const database = openToRead(yardFile(folder))
    try {
      refuseForeign(database, folder)
      refuseNewer(database, { folder, programVersion })
      if (Number(readPragma(database, 'user_version')) < newestMigration()) refuse('yard.older-version', { folder })
    } catch (error) {
      database.close()
      throw error
    }
    const kysely = kyselyOver(database)
    return {
      folder,
      read: async (query) => {
        try {
          return await kysely.transaction().execute(query)
        } catch (error) {
          throw asYardRefusal(error, folder)
        }
      },
      close: async () => {
        await kysely.destroy()
        if (database.open) database.close()
      },
    }
  } catch (error) {
    throw asYardRefusal(error, folder)
  }
}
