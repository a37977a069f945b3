import { accessSync, constants, existsSync } from 'node:fs'
import { dirname } from 'node:path'
import { Refusal } from '../../shared-logic/contract/refusal'

const codeOf = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined

/** 'SQLITE_FULL' and so on; undefined when the error is not SQLite's. */
export const sqliteCode = (error: unknown): string | undefined => {
  const code = codeOf(error)
  return code?.startsWith('SQLITE_') === true ? code : undefined
}

/** Whether SQLite found the file itself broken. */
export const saysDamaged = (error: unknown): boolean => {
  const code = sqliteCode(error)
  return code !== undefined && (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB')
}

const nearestThere = (folder: string): string => (existsSync(folder) || dirname(folder) === folder ? folder : nearestThere(dirname(folder)))

const canWrite = (folder: string): boolean => {
  try {
    accessSync(nearestThere(folder), constants.W_OK)
    return true
  } catch {
    return false
  }
}

/** The refusal code for what a disk or the database on it refused; undefined for a fault of ours. */
const refusalCode = (code: string, folder: string): string | undefined => {
  if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT') return 'disk.full'
  if (code.startsWith('SQLITE_READONLY') || code === 'EROFS' || code === 'EACCES' || code === 'EPERM') return 'disk.read-only'
  // Node answers ENOENT when a folder cannot be made on a read-only disk.
  if (code.startsWith('SQLITE_CANTOPEN') || code === 'ENOENT') return canWrite(folder) ? 'disk.cannot-open' : 'disk.read-only'
  if (code.startsWith('SQLITE_IOERR') || code === 'EIO') return 'disk.failing'
  if (code === 'ENOTDIR' || code === 'EEXIST') return 'disk.not-a-folder'
  return undefined
}

/** Turns an error of the disk or of SQLite into a refusal a person understands; anything else comes back as it was. */
export const asDiskRefusal = (error: unknown, folder: string): unknown => {
  if (error instanceof Refusal) return error
  const code = codeOf(error)
  const named = code === undefined ? undefined : refusalCode(code, folder)
  return named === undefined ? error : new Refusal({ code: named, values: { folder } })
}
