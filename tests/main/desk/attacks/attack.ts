import type Database from 'better-sqlite3'
import { createHash } from 'node:crypto'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { ProblemCode } from '../../../../shared-logic/proof/problem'

/**
 * Ways to tamper with a yard, by somebody who has its files and knows how they are kept: every trigger, check and
 * reference of the database is put out of force first. Each alters one thing, and says what must be found of it.
 */
export interface Attack {
  readonly name: string
  /** Any of these counts as found. */
  readonly found: readonly ProblemCode[]
  /** Answers false where nothing was altered: what was drawn came to what was there. */
  readonly alter: (yard: Attacked) => boolean
}

export interface Attacked {
  readonly folder: string
  readonly database: Database.Database
  /** The next number drawn, from 0 up to and without 1. */
  readonly draw: () => number
}

export type Value = string | number | Buffer | null
export type Row = Record<string, Value>

export const pick = <Item>(items: readonly Item[], draw: () => number): Item => {
  const item = items[Math.floor(draw() * items.length)]
  if (item === undefined) throw new Error('there is nothing to pick from')
  return item
}

export const sha256 = (text: string | Buffer): string => createHash('sha256').update(text).digest('hex')

/** Some other byte in place of one of these. */
export const withOneByteChanged = (bytes: Buffer, draw: () => number): Buffer => {
  const changed = Buffer.from(bytes)
  const at = Math.floor(draw() * bytes.length)
  changed[at] = ((bytes[at] ?? 0) + 1 + Math.floor(draw() * 255)) % 256
  return changed
}

export const files = (folder: string): string[] => readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).toSorted()

export const rowsOf = (database: Database.Database, table: string): Row[] => database.prepare<[], Row>(`SELECT * FROM ${table}`).all()

const changedValue = (value: Value, draw: () => number): Value => {
  if (value === null) return draw() < 0.5 ? 'x' : '2026-06-15T12:00:00.000Z'
  if (typeof value === 'number') return value + (draw() < 0.5 ? -1 : 1) * (1 + Math.floor(draw() * 3))
  return value.length === 0 ? 'x' : withOneByteChanged(Buffer.from(value), draw)
}

/** Columns that hold numbers or nothing cannot be given text in a STRICT table. */
const numeric = new Set(['latitude', 'longitude', 'print_order'])

/** Changes one value: of a row and column that are drawn, unless they are given. */
export const changeColumn = ({ database, draw }: Attacked, table: string, key: string, given?: { readonly row: Row; readonly column: string }): boolean => {
  const row = given?.row ?? pick(rowsOf(database, table), draw)
  const column = given?.column ?? pick(Object.keys(row), draw)
  const before = row[column] ?? null
  const after = before === null && numeric.has(column) ? Math.floor(draw() * 9) : changedValue(before, draw)
  const cast = Buffer.isBuffer(after) ? 'CAST(? AS TEXT)' : '?'
  database.prepare(`UPDATE ${table} SET "${column}" = ${cast} WHERE "${key}" = ?`).run(after, row[key])
  return true
}
