import type Database from 'better-sqlite3'
import type { Kysely } from 'kysely'
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { backUpDaily } from './backups'
import { damagedRefusal } from './damage'
import { kyselyOver, openDatabase, type ReadableDb, type WritableDb } from './database'
import { asDiskRefusal, saysDamaged } from './disk-refusals'
import { examineFile, refuseDamaged, refuseForeign } from './examine'
import { lockYard } from './lock'
import { lookThrough } from './look-through'
import { migrate, refuseNewer } from './migrate'
import type { Migration } from './migrations/migration'
import type { Tables } from './tables'

export interface YardOptions {
  readonly programVersion: string
  readonly clock: () => Date
  /** Other than the program's own, for tests of a step from the version before. */
  readonly migrations?: readonly Migration[]
}

/** What a reader may do: queries over one moment's state. */
export interface ReadableYard {
  readonly folder: string
  /** Runs queries over one moment's state. Use only the `db` handed in: the yard has one connection. */
  readonly read: <T>(query: (db: ReadableDb) => Promise<T>) => Promise<T>
  readonly close: () => Promise<void>
}

/** The yard, opened for work by the one program that holds its lock. */
export interface Yard extends ReadableYard {
  /** Runs one transaction: all of it is kept, flushed to the disk, or nothing. */
  readonly write: <T>(change: (db: WritableDb) => Promise<T>) => Promise<T>
  /** Makes today's backup unless it is there, or the yard holds no rig yet; answers its name. */
  readonly backUp: () => Promise<string | undefined>
  /** Looks through the whole file beside the work; rejects with the refusal that names the newest good backup. */
  readonly lookThrough: () => Promise<void>
  /** Whether the program before this one ended without closing the yard. */
  readonly wasUnclean: boolean
  readonly database: Database.Database
}

export const yardFile = (folder: string): string => join(folder, 'yard.sqlite')
/** There while a program works on the yard; left behind by one that was ended without closing it. */
export const openMarker = (folder: string): string => join(folder, 'yard.open')

/** Passes an error on as the refusal it means; damage found while working names the newest good backup. */
export const asYardRefusal = (error: unknown, folder: string): unknown => (saysDamaged(error) ? damagedRefusal(folder) : asDiskRefusal(error, folder))

const openForWork = (folder: string, options: YardOptions, wasUnclean: boolean): Database.Database => {
  const found = examineFile(yardFile(folder), { ...options, folder })
  const database = openDatabase(yardFile(folder), 'write')
  try {
    if (found === 'there') {
      refuseForeign(database, folder)
      if (wasUnclean) refuseDamaged(database, yardFile(folder), folder)
      refuseNewer(database, { ...options, folder })
    }
    migrate(database, { ...options, folder })
    return database
  } catch (error) {
    database.close()
    throw error
  }
}

const queriesOver = (kysely: Kysely<Tables>, folder: string): Pick<Yard, 'read' | 'write'> => {
  const within = async <T>(work: (db: WritableDb) => Promise<T>): Promise<T> => {
    try {
      return await kysely.transaction().execute(work)
    } catch (error) {
      throw asYardRefusal(error, folder)
    }
  }
  return { read: within, write: within }
}

const holdsRigs = (database: Database.Database): boolean => database.prepare('SELECT 1 FROM rigs LIMIT 1').get() !== undefined

const workOn = (folder: string, database: Database.Database, release: () => void, wasUnclean: boolean, clock: () => Date): Yard => {
  const kysely = kyselyOver(database)
  let backup: Promise<string | undefined> | undefined
  const checkAll = async (): Promise<void> => {
    if (database.open && !(await lookThrough(database))) throw damagedRefusal(folder)
  }
  const backUp = async (): Promise<string | undefined> => {
    if (!holdsRigs(database)) return undefined
    backup = (backup ?? Promise.resolve(undefined)).catch(() => undefined).then(() => backUpDaily(database, folder, clock()))
    return backup
  }
  const close = async (): Promise<void> => {
    await backup?.catch(() => undefined)
    await kysely.destroy()
    if (database.open) database.close()
    rmSync(openMarker(folder), { force: true })
    release()
  }
  return { folder, ...queriesOver(kysely, folder), backUp, lookThrough: checkAll, close, wasUnclean, database }
}

/**
 * Opens the yard in `folder`, making both where they are missing, and brings an older one to this program's schema.
 *
 * Refused, with nothing changed: another copy holds it, a newer program wrote it, it is damaged or gone (the newest
 * good backup is named), it is another program's file, the folder cannot be written, the disk is full.
 */
export const openYard = (folder: string, options: YardOptions): Yard => {
  let release: (() => void) | undefined
  try {
    mkdirSync(folder, { recursive: true })
    release = lockYard(folder).release
    const wasUnclean = existsSync(openMarker(folder))
    const database = openForWork(folder, options, wasUnclean)
    writeFileSync(openMarker(folder), '')
    return workOn(folder, database, release, wasUnclean, options.clock)
  } catch (error) {
    release?.()
    throw asYardRefusal(error, folder)
  }
}
