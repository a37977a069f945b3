import Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { join } from 'node:path'
import { isGoodBackup, listBackups } from '../../../main/store/backups'
import { checkRising } from '../../../main/store/migrate'
import { migrations } from '../../../main/store/migrations'
import type { Migration } from '../../../main/store/migrations/migration'
import { sha256Of } from '../../../main/store/chained-text'
import { foundEntries, orderToRecord, photographsToRecord, recordEnd } from '../../../main/store/photograph-log'
import { foundInList, listEnd } from '../../../main/store/survey-list'
import { asRecordedReport, reportsToProve } from '../../../main/store/report-log'
import { openYardToRead } from '../../../main/store/yard-to-read'
import { yardFile } from '../../../main/store/yard'
import { compareReports, compareRows } from '../../../shared-logic/proof/compare-rows'
import { RecordReader } from '../../../shared-logic/proof/read-record'
import { SurveyListReader } from '../../../shared-logic/proof/survey-list'
import { newFolder, noon, open, refusalOf } from './a-yard'

const rig = '01900000-0000-7000-8000-000000000001'
const survey = '01900000-0000-7000-8000-000000000002'
const photograph = '01900000-0000-7000-8000-000000000003'
const sha = 'a'.repeat(64)

/** Rows as the program wrote them when each step was the newest. Never adapted to a later schema. */
const rowsAsTheyWere: Readonly<Record<number, string>> = {
  10: `INSERT INTO settings VALUES (1, '{"surveyorName":"Odile Varga"}', '2026-01-01T00:00:00Z')`,
  20: `INSERT INTO rigs VALUES (1, '${rig}', 'Élan', 'elan', 'elan', '{"name":"Élan","trailer":{}}', '2026-01-01T00:00:00Z', NULL)`,
  30: `INSERT INTO surveys VALUES (1, '${survey}', '${rig}', 'Élan', 'elan lisbon', 'yearly', '2026-01-02', 'under way', 'eu', '2026.1', 'UTC', 'Lisbon', NULL, NULL,
       'not seen', '{"pass":0,"advisory":0,"fail":0,"not seen":3,"not applicable":0}', 3, 3, NULL, 0, 0, '2026-01-02T00:00:00Z', NULL)`,
  40: `INSERT INTO answers VALUES ('${survey}', 'hubs.oil-level', 'axle 1 left', '{"values":{}}', '2026-01-02T00:00:00Z')`,
  50: `INSERT INTO originals VALUES ('${sha}', 'jpeg', 10, 4, 3, NULL, NULL, NULL, '2026-01-02T00:00:00Z');
       INSERT INTO photographs VALUES ('${photograph}', '${survey}', '${sha}', NULL, NULL, '', 'a.jpg', '2026-01-02T00:00:00Z', NULL)`,
  60: `INSERT INTO report_numbers VALUES (2026, 1);
       INSERT INTO reports VALUES ('01900000-0000-7000-8000-000000000004', '${survey}', 'BW-2026-0001', 1, '2026-01-03T00:00:00Z', '2026-01-03', 'not seen', '{}', '${sha}', 10)`,
}
const tableOf: Readonly<Record<number, string>> = { 10: 'settings', 20: 'rigs', 30: 'surveys', 40: 'answers', 50: 'photographs', 60: 'reports', 70: 'photographs', 80: 'photograph_log_ends', 90: 'reports' }

/** A yard brought through these steps one by one, with the rows of each written while it was the newest. */
const yardOf = async (steps: readonly Migration[], more = ''): Promise<string> => {
  const folder = newFolder()
  for (const [index, { number }] of steps.entries()) {
    await open(folder, { migrations: steps.slice(0, index + 1), programVersion: '0.0.9' }).close()
    const database = new Database(yardFile(folder))
    database.pragma('foreign_keys = ON')
    database.exec(rowsAsTheyWere[number] ?? '')
    if (index === steps.length - 1) database.exec(more)
    database.close()
  }
  return folder
}

const beforeTheRecord = migrations.filter(({ number }) => number < 80)
const beforeTheList = migrations.filter(({ number }) => number < 100)
const beforeCopiesAndReports = migrations.filter(({ number }) => number < 90)

test('the steps stand in rising order, ten apart', () => {
  expect(() => checkRising(migrations)).not.toThrow()
  expect(migrations.every(({ number }) => number % 10 === 0)).toBe(true)
  expect(() => checkRising([{ number: 20, sql: '' }, { number: 20, sql: '' }])).toThrow('does not rise')
  expect(() => checkRising([{ number: 20, sql: '' }, { number: 10, sql: '' }])).toThrow('does not rise')
})

describe.each(migrations.slice(1).map((step, index) => ({ number: step.number, before: migrations.slice(0, index + 1) })))('from the version before $number', ({ number, before }) => {
  const oldYard = (): Promise<string> => yardOf(before)

  test('every row is still there, after a backup that can be read', async () => {
    const folder = await oldYard()
    const yard = open(folder)
    for (const step of before) expect(yard.database.prepare(`SELECT count(*) FROM ${tableOf[step.number]}`).pluck().get()).toBe(1)
    expect(yard.database.pragma('user_version', { simple: true })).toBe(migrations.at(-1)?.number)
    expect(yard.database.pragma('foreign_key_check')).toEqual([])
    const [backup] = listBackups(folder)
    expect(backup?.name).toBe(`yard-2026-06-15T12-00-00Z-before-${String(number).padStart(4, '0')}.sqlite`)
    const file = join(folder, 'backups', backup?.name ?? '')
    expect(isGoodBackup(file)).toBe(true)
    const copy = new Database(file, { readonly: true })
    expect(copy.pragma('user_version', { simple: true })).toBe(before.at(-1)?.number)
    for (const step of before) expect(copy.prepare(`SELECT count(*) FROM ${tableOf[step.number]}`).pluck().get()).toBe(1)
    copy.close()
    await yard.close()
  })

  test('a reader asks for the window instead of changing the file', async () => {
    const folder = await oldYard()
    expect((await refusalOf(() => openYardToRead(folder, { programVersion: '0.1.0' }))).code).toBe('yard.older-version')
  })
})

test('photographs taken in before there was a record are entered late, at the step’s instant, as the rows say', async () => {
  const folder = await yardOf(beforeTheRecord, `INSERT INTO photographs VALUES
    ('01900000-0000-7000-8000-000000000005', '${survey}', '${sha}', 'hubs.oil-level', 'axle 1 left', 'dark', 'b.jpg', 'phone', 1, 0, 4, '{"marks":[]}', '2026-01-02T00:01:00Z', '2026-01-02T00:02:00Z')`)
  const yard = open(folder)
  const entries = yard.database.prepare<[], string>('SELECT entry_json FROM photograph_log ORDER BY place').pluck().all().map((text) => JSON.parse(text) as Record<string, unknown>)
  expect(entries).toMatchObject([
    { what: 'opened', surveyId: survey, at: noon.toISOString() },
    { what: 'entered late', photographId: photograph, sha256: sha, byteCount: 10, at: noon.toISOString(), to: { arrivedAt: '2026-01-02T00:00:00Z', fileName: 'a.jpg', source: 'file', removedAt: null } },
    { what: 'entered late', to: { arrivedAt: '2026-01-02T00:01:00Z', fileName: 'b.jpg', source: 'phone', checkId: 'hubs.oil-level', caption: 'dark', quarterTurns: 1, isPrinted: false, removedAt: '2026-01-02T00:02:00Z' } },
    { what: 'order entered late' },
    { what: 'report entered late' },
  ])
  const reader = new RecordReader(survey, sha256Of)
  const [found, end, rows, order] = await yard.read(async (db) => [await foundEntries(db, survey), await recordEnd(db, survey), await photographsToRecord(db, survey), await orderToRecord(db, survey)] as const)
  found.forEach((entry) => reader.take(entry))
  const record = reader.finish(end)
  expect(record.problems).toEqual([])
  expect(compareRows(rows, record.photographs)).toEqual([])
  expect(record.orderSha256).toBe(order)
  expect(record.late).toEqual({ count: 2, at: noon.toISOString() })
  await yard.close()
})

test('reports issued before reports were recorded are entered late, behind what their survey’s record holds or opening it, and nothing is made up of copies', async () => {
  const other = '01900000-0000-7000-8000-000000000006'
  const folder = await yardOf(beforeCopiesAndReports, `
    INSERT INTO surveys SELECT 2, '${other}', rig_id, rig_name, search_text, purpose, survey_date, status, rule_book, catalogue_version, zone, place, NULL, NULL, verdict, tallies_json, asked, open, NULL, 0, 0, started_at, NULL FROM surveys;
    INSERT INTO reports VALUES ('01900000-0000-7000-8000-000000000007', '${other}', 'BW-2026-0002', 1, '2026-01-04T00:00:00Z', '2026-01-04', 'fail', '{"said":"Öl"}', '${'b'.repeat(64)}', 20);
    INSERT INTO reports VALUES ('01900000-0000-7000-8000-000000000008', '${other}', 'BW-2026-0002', 2, '2026-01-05T00:00:00Z', '2026-01-05', 'pass', '{}', '${'c'.repeat(64)}', 30)`)
  const yard = open(folder)
  expect(yard.database.prepare('SELECT large_preview_sha256, small_preview_sha256 FROM originals').all()).toEqual([{ large_preview_sha256: null, small_preview_sha256: null }])
  for (const [surveyId, acts, reports] of [[survey, ['opened', 'entered late', 'report entered late'], 1], [other, ['opened', 'report entered late', 'report entered late'], 2]] as const) {
    const [found, end, rows] = await yard.read(async (db) => [await foundEntries(db, surveyId), await recordEnd(db, surveyId), await reportsToProve(db, surveyId)] as const)
    expect(found.map(({ text }) => (JSON.parse(text ?? '') as { what: string }).what)).toEqual(acts)
    const reader = new RecordReader(surveyId, sha256Of)
    found.forEach((entry) => reader.take(entry))
    const record = reader.finish(end)
    expect(record.problems).toEqual([])
    expect(rows).toHaveLength(reports)
    expect(compareReports(rows.map(asRecordedReport), record.reports)).toEqual([])
    expect(record.lateReports).toEqual({ count: reports, at: noon.toISOString() })
  }
  expect((await yard.read((db) => reportsToProve(db, other)))[1]).toMatchObject({ documentSha256: sha256Of('{"said":"Öl"}'), pdfByteCount: 20, verdict: 'fail' })
  await yard.close()
})

test('surveys from before there was a list of them are entered late, with where their records then stand and whether they were discarded', async () => {
  const other = '01900000-0000-7000-8000-000000000006'
  const folder = await yardOf(beforeTheList, `INSERT INTO surveys SELECT 2, '${other}', rig_id, rig_name, search_text, purpose, survey_date, status, rule_book, catalogue_version, zone, place, NULL, NULL, verdict, tallies_json, asked, open, NULL, 0, 0, started_at, '2026-01-05T00:00:00Z' FROM surveys;
    UPDATE surveys SET report_number = 'BW-2026-0001', revision = 1 WHERE serial = 1`)
  const yard = open(folder)
  const { found, listed, recorded } = await yard.read(async (db) => ({ found: await foundInList(db), listed: await listEnd(db), recorded: await recordEnd(db, survey) }))
  expect(found.map(({ text }) => JSON.parse(text ?? '') as unknown)).toMatchObject([
    { what: 'opened', place: 1 },
    { what: 'survey entered late', surveyId: survey, isDiscarded: false, number: 'BW-2026-0001', end: recorded, at: noon.toISOString() },
    { what: 'survey entered late', surveyId: other, isDiscarded: true },
  ])
  const reader = new SurveyListReader(sha256Of)
  found.forEach((entry) => reader.take(entry))
  const list = reader.finish(listed)
  expect([list.broken, list.surveys.get(survey)?.ends, list.surveys.get(other)]).toEqual([undefined, [recorded], { at: noon.toISOString(), isDiscarded: true, number: undefined, ends: [] }])
  for (const sql of ["UPDATE survey_list SET entry_json = '{}'", 'UPDATE survey_list SET place = place + 5']) expect(() => yard.database.exec(sql)).toThrow('never changed')
  for (const sql of ['DELETE FROM survey_list', 'DELETE FROM survey_list_end']) expect(() => yard.database.exec(sql)).toThrow('never deleted')
  for (const place of [1, 3, 5]) expect(() => yard.database.exec(`INSERT OR REPLACE INTO survey_list VALUES (${place}, '{}', '${'0'.repeat(64)}')`)).toThrow('follows the last')
  expect(() => yard.database.exec('UPDATE survey_list_end SET entry_count = 1')).toThrow('never grows shorter')
  await yard.close()
})

test('a yard without photographs comes to no record', async () => {
  const yard = open(newFolder())
  expect(yard.database.prepare('SELECT count(*) FROM photograph_log').pluck().get()).toBe(0)
  await yard.close()
})

test('an entry of the record can neither be changed, deleted, replaced nor put in, nor its end drawn back', async () => {
  const { database, close } = open(await yardOf(beforeTheRecord))
  const zeros = '0'.repeat(64)
  for (const sql of ["UPDATE photograph_log SET entry_json = '{}'", 'UPDATE photograph_log SET place = place + 5']) expect(() => database.exec(sql)).toThrow('never changed')
  for (const sql of ['DELETE FROM photograph_log', 'DELETE FROM photograph_log_ends']) expect(() => database.exec(sql)).toThrow('never deleted')
  for (const place of [1, 2, 3, 5]) expect(() => database.exec(`INSERT OR REPLACE INTO photograph_log VALUES ('${survey}', ${place}, '{}', '${zeros}')`)).toThrow('follows the last')
  for (const sql of ['UPDATE photograph_log_ends SET entry_count = 1', `UPDATE photograph_log_ends SET last_sha256 = '${zeros}'`]) expect(() => database.exec(sql)).toThrow('never grows shorter')
  await close()
})

test('a step that fails leaves the version before, whole', async () => {
  const folder = newFolder()
  await open(folder).close()
  const broken = [...migrations, { number: 9990, sql: 'CREATE TABLE begun (a INTEGER) STRICT; SELECT broken FROM nowhere' }]
  expect(() => open(folder, { migrations: broken })).toThrow('nowhere')
  const yard = open(folder)
  expect(yard.database.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'begun'").pluck().get()).toBe(0)
  await yard.close()
})

test('a new yard has nothing to back up before its first step', async () => {
  const folder = newFolder()
  await open(folder).close()
  expect(listBackups(folder)).toEqual([])
})
