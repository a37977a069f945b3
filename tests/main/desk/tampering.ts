import Database from 'better-sqlite3'
import { createHash } from 'node:crypto'
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { ProblemCode } from '../../../shared-logic/proof/problem'

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

type Value = string | number | Buffer | null
type Row = Record<string, Value>

const pick = <Item>(items: readonly Item[], draw: () => number): Item => {
  const item = items[Math.floor(draw() * items.length)]
  if (item === undefined) throw new Error('there is nothing to pick from')
  return item
}

const sha256 = (text: string | Buffer): string => createHash('sha256').update(text).digest('hex')

/** Some other byte in place of one of these. */
const withOneByteChanged = (bytes: Buffer, draw: () => number): Buffer => {
  const changed = Buffer.from(bytes)
  const at = Math.floor(draw() * bytes.length)
  changed[at] = ((bytes[at] ?? 0) + 1 + Math.floor(draw() * 255)) % 256
  return changed
}

const disarmIn = (database: Database.Database): void => {
  for (const type of ['trigger', 'index'])
    for (const name of database.prepare<[string], string>("SELECT name FROM sqlite_schema WHERE type = ? AND sql IS NOT NULL AND tbl_name IN ('photograph_log', 'photograph_log_ends', 'photographs', 'originals', 'reports')").pluck().all(type))
      database.exec(`DROP ${type} "${name}"`)
}

const rowsOf = (database: Database.Database, table: string): Row[] => database.prepare<[], Row>(`SELECT * FROM ${table}`).all()
const place = (row: Row): number => Number(row['place'])

const entriesOf = ({ database, draw }: Attacked): { surveyId: string; entries: Row[] } => {
  const surveyId = pick([...new Set(rowsOf(database, 'photograph_log').map((row) => String(row['survey_id'])))], draw)
  return { surveyId, entries: database.prepare<[string], Row>('SELECT place, CAST(entry_json AS BLOB) AS entry_json, sha256 FROM photograph_log WHERE survey_id = ? ORDER BY place').all(surveyId) }
}
const writeEntries = ({ database }: Attacked, surveyId: string, entries: readonly Row[]): void => {
  database.prepare('DELETE FROM photograph_log WHERE survey_id = ?').run(surveyId)
  const insert = database.prepare('INSERT INTO photograph_log VALUES (?, ?, CAST(? AS TEXT), ?)')
  entries.forEach(({ entry_json, sha256: hash }, index) => insert.run(surveyId, index + 1, entry_json, hash))
}

const changedValue = (value: Value, draw: () => number): Value => {
  if (value === null) return draw() < 0.5 ? 'x' : '2026-06-15T12:00:00.000Z'
  if (typeof value === 'number') return value + (draw() < 0.5 ? -1 : 1) * (1 + Math.floor(draw() * 3))
  return value.length === 0 ? 'x' : withOneByteChanged(Buffer.from(value), draw)
}

/** Columns that hold numbers or nothing cannot be given text in a STRICT table. */
const numeric = new Set(['latitude', 'longitude', 'print_order'])

const changeColumn = ({ database, draw }: Attacked, table: string, key: string): boolean => {
  const row = pick(rowsOf(database, table), draw)
  const column = pick(Object.keys(row), draw)
  const before = row[column] ?? null
  const after = before === null && numeric.has(column) ? Math.floor(draw() * 9) : changedValue(before, draw)
  const cast = Buffer.isBuffer(after) ? 'CAST(? AS TEXT)' : '?'
  database.prepare(`UPDATE ${table} SET "${column}" = ${cast} WHERE "${key}" = ?`).run(after, row[key])
  return true
}

const originals = (folder: string): string => join(folder, 'photographs', 'originals')
const files = (folder: string): string[] => readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).toSorted()

const recordCodes: readonly ProblemCode[] = ['entry-changed', 'entry-unreadable', 'entry-out-of-turn', 'entry-missing', 'entry-twice', 'record-cut-off', 'record-runs-on', 'record-missing', 'record-end-missing']
const rowCodes: readonly ProblemCode[] = ['photograph-changed', 'photograph-gone', 'photograph-other', 'photograph-unrecorded', 'order-changed', 'original-without-photograph']

export const attacks: readonly Attack[] = [
  {
    name: 'a byte of an entry',
    found: ['entry-changed'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const entry = pick(entries, yard.draw)
      yard.database.prepare('UPDATE photograph_log SET entry_json = CAST(? AS TEXT) WHERE survey_id = ? AND place = ?').run(withOneByteChanged(entry['entry_json'] as Buffer, yard.draw), surveyId, place(entry))
      return true
    },
  },
  {
    name: 'a byte of an entry’s hash',
    found: ['entry-changed'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const entry = pick(entries, yard.draw)
      yard.database.prepare('UPDATE photograph_log SET sha256 = CAST(? AS TEXT) WHERE survey_id = ? AND place = ?').run(withOneByteChanged(Buffer.from(String(entry['sha256'])), yard.draw), surveyId, place(entry))
      return true
    },
  },
  {
    name: 'an entry written anew, its own hash made to fit',
    found: ['entry-out-of-turn', 'record-runs-on', 'photograph-changed'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const entry = pick(entries, yard.draw)
      const content = JSON.parse(String(entry['entry_json'])) as Record<string, unknown>
      const text = JSON.stringify(Object.fromEntries(Object.entries({ ...content, at: '2026-06-14T08:00:00.000Z' }).toSorted(([a], [b]) => (a < b ? -1 : 1))))
      yard.database.prepare('UPDATE photograph_log SET entry_json = ?, sha256 = ? WHERE survey_id = ? AND place = ?').run(text, sha256(text), surveyId, place(entry))
      return true
    },
  },
  {
    name: 'an entry taken out, those after it moved up',
    found: recordCodes,
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const out = pick(entries, yard.draw)
      writeEntries(yard, surveyId, entries.filter((entry) => entry !== out))
      return true
    },
  },
  {
    name: 'an entry deleted where it stood',
    found: recordCodes,
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      yard.database.prepare('DELETE FROM photograph_log WHERE survey_id = ? AND place = ?').run(surveyId, place(pick(entries, yard.draw)))
      return true
    },
  },
  {
    name: 'the end cut off',
    found: ['record-cut-off'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      yard.database.prepare('DELETE FROM photograph_log WHERE survey_id = ? AND place > ?').run(surveyId, Math.floor(yard.draw() * entries.length))
      return true
    },
  },
  {
    name: 'an entry doubled somewhere',
    found: recordCodes,
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      writeEntries(yard, surveyId, entries.toSpliced(Math.floor(yard.draw() * (entries.length + 1)), 0, pick(entries, yard.draw)))
      return true
    },
  },
  {
    name: 'an entry forged and put in, linked to the one before',
    found: recordCodes,
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const at = 1 + Math.floor(yard.draw() * entries.length)
      const before = entries[at - 1]
      const model = JSON.parse(String(pick(entries, yard.draw)['entry_json'])) as Record<string, unknown>
      const text = JSON.stringify(Object.fromEntries(Object.entries({ ...model, place: at + 1, previous: before?.['sha256'] }).toSorted(([a], [b]) => (a < b ? -1 : 1))))
      writeEntries(yard, surveyId, entries.toSpliced(at, 0, { entry_json: Buffer.from(text), sha256: sha256(text) }))
      return true
    },
  },
  {
    name: 'two entries exchanged',
    found: ['entry-out-of-turn'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const [one, two] = [Math.floor(yard.draw() * entries.length), Math.floor(yard.draw() * entries.length)]
      const swapped = [...entries]
      swapped[one] = entries[two] ?? {}
      swapped[two] = entries[one] ?? {}
      writeEntries(yard, surveyId, swapped)
      return one !== two
    },
  },
  {
    name: 'the records of two surveys exchanged',
    found: ['record-of-another-survey'],
    alter: ({ database }) => {
      for (const table of ['photograph_log', 'photograph_log_ends']) {
        const [one, two] = [...new Set(rowsOf(database, table).map((row) => String(row['survey_id'])))]
        database.prepare(`UPDATE ${table} SET survey_id = 'between' WHERE survey_id = ?`).run(one)
        database.prepare(`UPDATE ${table} SET survey_id = ? WHERE survey_id = ?`).run(one, two)
        database.prepare(`UPDATE ${table} SET survey_id = ? WHERE survey_id = 'between'`).run(two)
      }
      return true
    },
  },
  {
    name: 'where a record ends',
    found: [...recordCodes],
    alter: (yard) => changeColumn(yard, 'photograph_log_ends', 'survey_id'),
  },
  {
    name: 'the row of a record’s end deleted',
    found: ['record-end-missing'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM photograph_log_ends WHERE survey_id = ?').run(pick(rowsOf(database, 'photograph_log_ends'), draw)['survey_id'])
      return true
    },
  },
  {
    name: 'a whole record deleted, its end too',
    found: ['record-missing'],
    alter: (yard) => {
      const { surveyId } = entriesOf(yard)
      for (const table of ['photograph_log', 'photograph_log_ends']) yard.database.prepare(`DELETE FROM ${table} WHERE survey_id = ?`).run(surveyId)
      return true
    },
  },
  { name: 'a column of a photograph', found: rowCodes, alter: (yard) => changeColumn(yard, 'photographs', 'id') },
  { name: 'a column of an original', found: rowCodes, alter: (yard) => changeColumn(yard, 'originals', 'sha256') },
  {
    name: 'a photograph deleted',
    found: ['photograph-gone'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM photographs WHERE id = ?').run(pick(rowsOf(database, 'photographs'), draw)['id'])
      return true
    },
  },
  {
    name: 'a photograph doubled',
    found: ['photograph-unrecorded'],
    alter: ({ database, draw }) => {
      const row = pick(rowsOf(database, 'photographs'), draw)
      const values = Object.entries(row).map(([column, value]) => (column === 'id' ? `01900000-0000-7000-8000-${String(Math.floor(draw() * 1e12)).padStart(12, '0')}` : value))
      database.prepare(`INSERT INTO photographs VALUES (${values.map(() => '?').join(', ')})`).run(...values)
      return true
    },
  },
  {
    name: 'two photographs exchanged',
    found: rowCodes,
    alter: ({ database, draw }) => {
      const [one, two] = [pick(rowsOf(database, 'photographs'), draw), pick(rowsOf(database, 'photographs'), draw)]
      database.prepare('UPDATE photographs SET sha256 = ? WHERE id = ?').run(two['sha256'], one['id'])
      database.prepare('UPDATE photographs SET sha256 = ? WHERE id = ?').run(one['sha256'], two['id'])
      return one['sha256'] !== two['sha256']
    },
  },
  {
    name: 'an original’s row deleted',
    found: ['photograph-gone'],
    alter: ({ database, draw }) => {
      database.prepare('DELETE FROM originals WHERE sha256 = ?').run(pick(rowsOf(database, 'originals'), draw)['sha256'])
      return true
    },
  },
  {
    name: 'an original’s row added',
    found: ['original-without-photograph'],
    alter: ({ database, draw }) => {
      const values = Object.entries(pick(rowsOf(database, 'originals'), draw)).map(([column, value]) => (column === 'sha256' ? sha256(String(draw())) : value))
      database.prepare(`INSERT INTO originals VALUES (${values.map(() => '?').join(', ')})`).run(...values)
      return true
    },
  },
  {
    name: 'a byte of an original',
    found: ['file-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      writeFileSync(file, withOneByteChanged(readFileSync(file), draw))
      return true
    },
  },
  {
    name: 'an original cut short',
    found: ['file-resized'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      truncateSync(file, Math.floor(draw() * readFileSync(file).length))
      return true
    },
  },
  {
    name: 'an original lengthened',
    found: ['file-resized'],
    alter: ({ folder, draw }) => {
      appendFileSync(pick(files(originals(folder)), draw), Buffer.alloc(1 + Math.floor(draw() * 9), Math.floor(draw() * 256)))
      return true
    },
  },
  {
    name: 'an original deleted',
    found: ['file-missing'],
    alter: ({ folder, draw }) => {
      rmSync(pick(files(originals(folder)), draw))
      return true
    },
  },
  {
    name: 'two originals exchanged',
    found: ['file-changed', 'file-resized'],
    alter: ({ folder, draw }) => {
      const [one, two] = [pick(files(originals(folder)), draw), pick(files(originals(folder)), draw)]
      if (one === two) return false
      renameSync(one, `${one}.between`)
      renameSync(two, one)
      renameSync(`${one}.between`, two)
      return true
    },
  },
  {
    name: 'an original set aside',
    found: ['file-set-aside'],
    alter: ({ folder, draw }) => {
      const file = pick(files(originals(folder)), draw)
      const aside = join(folder, 'photographs', 'unrecorded')
      if (!existsSync(aside)) mkdirSync(aside)
      renameSync(file, join(aside, file.split('/').at(-1) ?? ''))
      return true
    },
  },
  {
    name: 'a file added among the originals',
    found: ['file-added'],
    alter: ({ folder, draw }) => {
      const bytes = Buffer.from(String(draw()))
      const name = draw() < 0.5 ? `${sha256(bytes)}.jpg` : 'holiday.jpg'
      mkdirSync(join(originals(folder), name.slice(0, 2)), { recursive: true })
      writeFileSync(join(originals(folder), name.slice(0, 2), name), bytes)
      return true
    },
  },
  {
    name: 'a byte of a report',
    found: ['report-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(join(folder, 'reports')), draw)
      writeFileSync(file, withOneByteChanged(readFileSync(file), draw))
      return true
    },
  },
  {
    name: 'a report deleted',
    found: ['report-missing'],
    alter: ({ folder, draw }) => {
      rmSync(pick(files(join(folder, 'reports')), draw))
      return true
    },
  },
  {
    name: 'a report added',
    found: ['report-added'],
    alter: ({ folder, draw }) => {
      writeFileSync(join(folder, 'reports', `${sha256(String(draw()))}.pdf`), '%PDF-')
      return true
    },
  },
  {
    name: 'where a frozen report says the record stood',
    found: ['report-tells-otherwise', 'report-unreadable'],
    alter: ({ database, draw }) => {
      const row = pick(rowsOf(database, 'reports'), draw)
      const document = JSON.parse(String(row['document_json'])) as { photographRecord: { entryCount: number; lastSha256: string } }
      const { entryCount, lastSha256 } = document.photographRecord
      const photographRecord = draw() < 0.5 ? { entryCount: entryCount + (draw() < 0.5 ? -1 : 1), lastSha256 } : { entryCount, lastSha256: sha256(String(draw())) }
      database.prepare('UPDATE reports SET document_json = ? WHERE id = ?').run(JSON.stringify({ ...document, photographRecord: { ...document.photographRecord, ...photographRecord } }), row['id'])
      return true
    },
  },
]

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

/** Opens a closed, disarmed yard as an attacker does, alters one thing and closes it again. */
export const tamper = (folder: string, attack: Attack, draws: readonly number[]): boolean => {
  const database = openAsAttacker(folder)
  try {
    let drawn = 0
    return database.transaction(() => attack.alter({ folder, database, draw: () => Math.min(draws[drawn++ % draws.length] ?? 0, 1 - 1e-12) }))()
  } finally {
    database.close()
  }
}
