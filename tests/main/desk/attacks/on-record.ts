import { canonicalJson, type Json } from '../../../../shared-logic/proof/canonical-json'
import type { ProblemCode } from '../../../../shared-logic/proof/problem'
import { changeColumn, pick, rowsOf, sha256, withOneByteChanged, type Attack, type Attacked, type Row } from './attack'

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

/** Makes these all of a record, and has it end with the last of them. */
const makeEndFit = (yard: Attacked, surveyId: string, entries: readonly Row[]): boolean => {
  writeEntries(yard, surveyId, entries)
  yard.database.prepare('UPDATE photograph_log_ends SET entry_count = ?, last_sha256 = ? WHERE survey_id = ?').run(entries.length, entries.at(-1)?.['sha256'], surveyId)
  return true
}

/** The same entries with another time in one of them, and each after it linked anew. */
const writtenAnew = (entries: readonly Row[], from: number): Row[] => {
  let previous = String(entries[from - 1]?.['sha256'] ?? '0'.repeat(64))
  return entries.map((entry, index) => {
    if (index < from) return entry
    const content = { ...(JSON.parse(String(entry['entry_json'])) as Record<string, unknown>), previous, ...(index === from && { at: '2026-06-14T08:00:00.000Z' }) }
    const text = canonicalJson(content as Json)
    previous = sha256(text)
    return { ...entry, entry_json: Buffer.from(text), sha256: previous }
  })
}

const recordCodes: readonly ProblemCode[] = ['entry-impossible', 'entry-changed', 'entry-unreadable', 'entry-out-of-turn', 'entry-missing', 'entry-twice', 'record-cut-off', 'record-runs-on', 'record-missing', 'record-end-missing']

/** On the entries of a record and on where it ends. */
export const onRecord: readonly Attack[] = [
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
    found: ['entry-out-of-turn', 'record-runs-on'],
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
  {
    name: 'the end cut off, where it ends made to fit, before a report was issued',
    found: ['record-shorter-than-report'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const printed = entries.findIndex(({ entry_json }) => String(entry_json).includes('"what":"report issued"'))
      return makeEndFit(yard, surveyId, entries.slice(0, 1 + Math.floor(yard.draw() * (printed - 1))))
    },
  },
  {
    name: 'the entry of an issued report cut off and all after it, where the record ends made to fit',
    found: ['record-shorter-than-list'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      return makeEndFit(yard, surveyId, entries.slice(0, entries.findIndex(({ entry_json }) => String(entry_json).includes('"what":"report issued"'))))
    },
  },
  {
    name: 'a whole record written anew from some entry on, all of it made to fit',
    found: ['record-other-than-report', 'record-other-than-list'],
    alter: (yard) => {
      const { surveyId, entries } = entriesOf(yard)
      const printed = entries.findIndex(({ entry_json }) => String(entry_json).includes('"what":"report issued"'))
      return makeEndFit(yard, surveyId, writtenAnew(entries, Math.floor(yard.draw() * printed)))
    },
  },
]
