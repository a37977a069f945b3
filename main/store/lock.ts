import Database from 'better-sqlite3'
import { join } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { sqliteCode } from './disk-refusals'

/**
 * Holds the yard for one program at a time, by an exclusive transaction in a small file of its own that stays open.
 * The system frees it when the program ends in whatever way. Refused while another copy holds it.
 */
export const lockYard = (folder: string): { readonly release: () => void } => {
  const lock = new Database(join(folder, 'yard.lock'), { timeout: 0 })
  try {
    lock.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    if (sqliteCode(error)?.startsWith('SQLITE_BUSY') === true) refuse('yard.open-elsewhere', { folder })
    throw error
  }
  return { release: () => lock.close() }
}
