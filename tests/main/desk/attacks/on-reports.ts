import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { ProblemCode } from '../../../../shared-logic/proof/problem'
import { changeColumn, files, pick, rowsOf, sha256, withOneByteChanged, type Attack, type Attacked } from './attack'

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

/** On issued reports: their PDFs, their rows, what they say. */
export const onReports: readonly Attack[] = [
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
    alter: (yard) => rewriteDocument(yard, ({ photographRecord: _photographRecord, ...document }) => document),
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
