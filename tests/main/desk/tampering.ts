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

const copies = (folder: string): string => join(folder, 'photographs', 'previews')
const originals = (folder: string): string => join(folder, 'photographs', 'originals')
const files = (folder: string): string[] => readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).toSorted()

const recordCodes: readonly ProblemCode[] = ['entry-changed', 'entry-unreadable', 'entry-out-of-turn', 'entry-missing', 'entry-twice', 'record-cut-off', 'record-runs-on', 'record-missing', 'record-end-missing']
const rowCodes: readonly ProblemCode[] = ['photograph-changed', 'photograph-gone', 'photograph-other', 'photograph-unrecorded', 'order-changed', 'original-without-photograph']
const reportCodes: readonly ProblemCode[] = ['report-row-changed', 'report-unrecorded', 'report-gone', 'record-missing']

type FrozenDocument = Record<string, unknown> & { readonly photographRecord: { readonly entryCount: number; readonly lastSha256: string } }
const rewriteDocument = ({ database, draw }: Attacked, change: (document: FrozenDocument) => unknown): boolean => {
  const row = pick(rowsOf(database, 'reports'), draw)
  database.prepare('UPDATE reports SET document_json = ? WHERE id = ?').run(JSON.stringify(change(JSON.parse(String(row['document_json'])) as FrozenDocument)), row['id'])
  return true
}

/** A PDF in the stead of a report's, the row made to fit it. */
const forgeReport = ({ folder, database, draw }: Attacked): boolean => {
  const row = pick(rowsOf(database, 'reports'), draw)
  const pdf = Buffer.from(`%PDF-${draw()}`)
  rmSync(join(folder, 'reports', `${String(row['pdf_sha256'])}.pdf`))
  writeFileSync(join(folder, 'reports', `${sha256(pdf)}.pdf`), pdf)
  database.prepare('UPDATE reports SET pdf_sha256 = ?, pdf_byte_count = ? WHERE id = ?').run(sha256(pdf), pdf.length, row['id'])
  return true
}

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
    name: 'a byte of a copy that is shown and printed',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(copies(folder)), draw)
      writeFileSync(file, withOneByteChanged(readFileSync(file), draw))
      return true
    },
  },
  {
    name: 'a copy cut short or lengthened',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const file = pick(files(copies(folder)), draw)
      if (draw() < 0.5) truncateSync(file, Math.floor(draw() * readFileSync(file).length))
      else appendFileSync(file, Buffer.alloc(1 + Math.floor(draw() * 9), Math.floor(draw() * 256)))
      return true
    },
  },
  {
    name: 'a copy deleted',
    found: ['copy-missing'],
    alter: ({ folder, draw }) => {
      rmSync(pick(files(copies(folder)), draw))
      return true
    },
  },
  {
    name: 'two copies exchanged',
    found: ['copy-changed'],
    alter: ({ folder, draw }) => {
      const [one, two] = [pick(files(copies(folder)), draw), pick(files(copies(folder)), draw)]
      if (one === two) return false
      const [first, second] = [readFileSync(one), readFileSync(two)]
      writeFileSync(one, second)
      writeFileSync(two, first)
      return true
    },
  },
  {
    name: 'a copy forged, and the row of its original made to fit',
    found: ['photograph-changed'],
    alter: ({ folder, database, draw }) => {
      const row = pick(rowsOf(database, 'originals'), draw)
      const size = draw() < 0.5 ? 'large' : 'small'
      const hash = String(row['sha256'])
      const bytes = Buffer.from(String(draw()))
      writeFileSync(join(copies(folder), size, hash.slice(0, 2), `${hash}.jpg`), bytes)
      database.prepare(`UPDATE originals SET ${size}_preview_sha256 = ? WHERE sha256 = ?`).run(sha256(bytes), hash)
      return true
    },
  },
  {
    name: 'what is known of the copies of an original taken out',
    found: ['photograph-changed'],
    alter: ({ database, draw }) => {
      database.prepare('UPDATE originals SET large_preview_sha256 = NULL, small_preview_sha256 = NULL WHERE sha256 = ?').run(pick(rowsOf(database, 'originals'), draw)['sha256'])
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
    alter: (yard) => rewriteDocument(yard, (document) => {
      const { entryCount, lastSha256 } = document.photographRecord
      const photographRecord = yard.draw() < 0.5 ? { entryCount: entryCount + (yard.draw() < 0.5 ? -1 : 1), lastSha256 } : { entryCount, lastSha256: sha256(String(yard.draw())) }
      return { ...document, photographRecord: { ...document.photographRecord, ...photographRecord } }
    }),
  },
  {
    name: 'where the record stood taken out of a frozen report',
    found: ['report-row-changed'],
    alter: (yard) => rewriteDocument(yard, ({ photographRecord: _, ...document }) => document),
  },
  {
    name: 'a part of what a frozen report says taken out',
    found: ['report-row-changed'],
    alter: (yard) => rewriteDocument(yard, (document) => {
      const out = pick(Object.keys(document), yard.draw)
      return Object.fromEntries(Object.entries(document).filter(([name]) => name !== out))
    }),
  },
  { name: 'a column of a report', found: reportCodes, alter: (yard) => changeColumn(yard, 'reports', 'id') },
  { name: 'a report forged, and its row made to fit', found: ['report-row-changed'], alter: forgeReport },
  {
    name: 'a report’s row deleted, its PDF too',
    found: ['report-gone'],
    alter: ({ folder, database, draw }) => {
      const row = pick(rowsOf(database, 'reports'), draw)
      database.prepare('DELETE FROM reports WHERE id = ?').run(row['id'])
      rmSync(join(folder, 'reports', `${String(row['pdf_sha256'])}.pdf`))
      return true
    },
  },
  {
    name: 'a report’s row added',
    found: ['report-unrecorded'],
    alter: ({ database, draw }) => {
      const row = { ...pick(rowsOf(database, 'reports'), draw), id: `01900000-0000-7000-8000-${String(Math.floor(draw() * 1e12)).padStart(12, '0')}`, number: 'BW-2026-0099', revision: 9 }
      const values = Object.values(row)
      database.prepare(`INSERT INTO reports VALUES (${values.map(() => '?').join(', ')})`).run(...values)
      return true
    },
  },
  {
    name: 'two reports exchanged between their surveys',
    found: ['report-unrecorded'],
    alter: ({ database }) => {
      const [one, two] = rowsOf(database, 'reports')
      if (one === undefined || two === undefined) return false
      database.prepare("UPDATE reports SET survey_id = 'between' WHERE id = ?").run(one['id'])
      database.prepare('UPDATE reports SET survey_id = ? WHERE id = ?').run(one['survey_id'], two['id'])
      database.prepare('UPDATE reports SET survey_id = ? WHERE id = ?').run(two['survey_id'], one['id'])
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
