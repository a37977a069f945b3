import Database from 'better-sqlite3'
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { backupName, readBackupName, type BackupName } from './backup-name'
import { openDatabase, readPragma, yardApplicationId } from './database'
import { lookThrough } from './look-through'

const keptDaily = 10
const keptBeforeMigration = 5

export const backupFolder = (folder: string): string => join(folder, 'backups')

/** Backups by name, newest first. */
export const listBackups = (folder: string): BackupName[] =>
  existsSync(backupFolder(folder))
    ? readdirSync(backupFolder(folder)).map(readBackupName).filter((name) => name !== undefined).toSorted((a, b) => (a.name < b.name ? 1 : -1))
    : []

/** Whether a file opens as a yard and is whole. */
export const isGoodBackup = (file: string): boolean => {
  try {
    const database = openDatabase(file, 'read')
    try {
      return readPragma(database, 'application_id') === yardApplicationId && readPragma(database, 'quick_check(1)') === 'ok'
    } finally {
      database.close()
    }
  } catch {
    return false
  }
}

/** The newest backup that opens and is whole; each candidate is read to find out. */
export const newestGoodBackup = (folder: string): BackupName | undefined =>
  listBackups(folder).find(({ name }) => isGoodBackup(join(backupFolder(folder), name)))

const flush = (path: string): void => {
  const descriptor = openSync(path, 'r')
  try {
    fsyncSync(descriptor)
  } finally {
    closeSync(descriptor)
  }
}

/** Gives the copy its own name when it was found whole; throws when it was not. */
const settle = (folder: string, part: string, name: string, isGood: boolean): string => {
  if (!isGood) refuse('backup.failed', { name })
  flush(part)
  renameSync(part, join(backupFolder(folder), name))
  if (process.platform !== 'win32') flush(backupFolder(folder))
  return name
}

const begin = (folder: string, name: string): string => {
  mkdirSync(backupFolder(folder), { recursive: true })
  const part = join(backupFolder(folder), `${name}.part`)
  rmSync(part, { force: true })
  return part
}

/** The copy is kept in WAL like its model; out of WAL it is one file that can be carried off. */
const standAlone = (part: string): void => {
  const copy = new Database(part)
  copy.pragma('journal_mode = DELETE')
  copy.close()
}

/** A checked backup made at once, before a migration. Throws when it cannot be made: then nothing is migrated. */
export const backUpBeforeMigration = (database: Database.Database, folder: string, at: Date, migration: number): string => {
  const name = backupName(at, migration)
  const part = begin(folder, name)
  database.prepare('VACUUM INTO ?').run(part)
  const kept = settle(folder, part, name, isGoodBackup(part))
  prune(folder)
  return kept
}

/** Looks through the copy without holding up the work. */
const isGoodBeside = async (part: string): Promise<boolean> => {
  const copy = openDatabase(part, 'read')
  try {
    return readPragma(copy, 'application_id') === yardApplicationId && (await lookThrough(copy))
  } finally {
    copy.close()
  }
}

/** A checked backup made beside the work going on; at most one a day. Answers its name, undefined when today's is there. */
export const backUpDaily = async (database: Database.Database, folder: string, at: Date): Promise<string | undefined> => {
  const name = backupName(at)
  const today = readBackupName(name)?.date
  if (listBackups(folder).some((each) => !each.beforeMigration && each.date === today)) return undefined
  const part = begin(folder, name)
  await database.backup(part, { progress: () => 500 })
  standAlone(part)
  const kept = settle(folder, part, name, await isGoodBeside(part))
  prune(folder)
  return kept
}

/** Keeps the newest ten daily backups and the newest five made before migrations. */
const prune = (folder: string): void => {
  const all = listBackups(folder)
  const surplus = [...all.filter((each) => !each.beforeMigration).slice(keptDaily), ...all.filter((each) => each.beforeMigration).slice(keptBeforeMigration)]
  for (const { name } of surplus) rmSync(join(backupFolder(folder), name), { force: true })
}
