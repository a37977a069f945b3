import { renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { contract, procedureNames } from '../../../shared-logic/contract/contract'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import type { Verified } from '../../../shared-logic/proof/problem'
import type { Photograph } from '../../../shared-logic/survey/records'
import type { OpenedDesk } from '../../../main/desk/open'
import { openDeskToRead } from '../../../main/desk/open-to-read'
import { en } from '../../../shared-logic/words/en'
import { sayToDo } from '../../../shared-logic/words/say-proof'
import { pictureFromTheCamera } from './proven-yard'
import { ask, newFolder, open, placeWith, refusalOf, sha256, signAs, startSurvey, writePlainReport } from './yard-on-disk'

const folder = newFolder()
let opened: OpenedDesk
let now = new Date('2026-06-15T12:00:00Z')
beforeAll(async () => {
  opened = await open(folder, { writeReport: writePlainReport, clock: () => now })
  await signAs(opened, 'Odile Varga')
})
afterAll(() => opened.close())

const verify = (surveyId: string): Promise<Verified> => ask(opened, 'proof.verify', { surveyId })
const entriesOf = (surveyId: string): Record<string, unknown>[] => {
  const database = new Database(join(folder, 'yard.sqlite'), { readonly: true })
  const texts = database.prepare<[string], string>('SELECT entry_json FROM photograph_log WHERE survey_id = ? ORDER BY place').pluck().all(surveyId)
  database.close()
  return texts.map((text) => JSON.parse(text) as Record<string, unknown>)
}
const actsOf = (surveyId: string): unknown[] => entriesOf(surveyId).map(({ what }) => what)
/** A picture of its own for every number. */
const picture = async (number: number): Promise<Uint8Array> =>
  new Uint8Array(await sharp({ create: { width: 48, height: 32, channels: 3, background: { r: number, g: 90, b: 120 } } }).png().toBuffer())
const choice = placeWith('choice')
const checked = { checkId: choice.checkId, position: choice.position }
const add = async (surveyId: string, red: number, more: object = {}): Promise<Photograph> => (await ask(opened, 'photographs.add', { surveyId, fileName: `${red}.jpg`, ...more }, await picture(red))).photograph
const layer: MarkLayer = { widthPx: 48, heightPx: 32, marks: [{ kind: 'box', from: [2, 2], to: [9, 9] }] }

describe('every act on photographs', () => {
  /** By procedure, so that one that is added to the contract and forgets the record is missed here. */
  const acts: Readonly<Record<string, (surveyId: string, photographId: string) => Promise<unknown>>> = {
    'photographs.add': (surveyId) => add(surveyId, 201),
    'photographs.describe': (_, photographId) => ask(opened, 'photographs.describe', { photographId, caption: 'worn' }),
    'photographs.turn': (_, photographId) => ask(opened, 'photographs.turn', { photographId, quarterTurns: 2 }),
    'photographs.mark': (_, photographId) => ask(opened, 'photographs.mark', { photographId, layer }),
    'photographs.assign': (_, photographId) => ask(opened, 'photographs.assign', { photographIds: [photographId], place: checked }),
    'photographs.choose': (_, photographId) => ask(opened, 'photographs.choose', { photographIds: [photographId], isPrinted: false }),
    'photographs.order': (surveyId, photographId) => ask(opened, 'photographs.order', { surveyId, photographIds: [photographId] }),
    'photographs.remove': (_, photographId) => ask(opened, 'photographs.remove', { photographId }),
    'photographs.restore': (_, photographId) => ask(opened, 'photographs.restore', { photographId }),
    'photographs.turnAll': (_, photographId) => ask(opened, 'photographs.turnAll', { turns: [{ photographId, quarterTurns: 3 }] }),
    'photographs.removeAll': (_, photographId) => ask(opened, 'photographs.removeAll', { photographIds: [photographId] }),
    'photographs.restoreAll': (_, photographId) => ask(opened, 'photographs.restoreAll', { photographIds: [photographId] }),
  }

  it('is entered in the record in the same stroke, and the record stays as the rows are', async () => {
    expect(Object.keys(acts).toSorted()).toEqual(procedureNames.filter((name) => name.startsWith('photographs.') && contract[name].writes).toSorted())
    const { id: surveyId } = await startSurvey(opened)
    const { id } = await add(surveyId, 200, { source: 'camera' })
    let entries = (await verify(surveyId)).end?.entryCount ?? 0
    expect(entries).toBe(2)
    for (const [name, act] of Object.entries(acts)) {
      now = new Date(now.getTime() + 60_000)
      await act(surveyId, id)
      const verified = await verify(surveyId)
      expect(verified.problems, name).toEqual([])
      expect(verified.end?.entryCount, name).toBe(entries + 1)
      expect(entriesOf(surveyId).at(-1)).toMatchObject({ at: now.toISOString(), place: entries + 1 })
      entries += 1
    }
    expect(actsOf(surveyId)).toEqual(['opened', 'added', 'added', 'captioned', 'turned', 'marked', 'assigned', 'left out of print', 'put in order', 'removed', 'restored', 'turned', 'removed', 'restored'])
  })

  it('that changes nothing, is refused, or finds the picture there already leaves no entry', async () => {
    const { id: surveyId } = await startSurvey(opened)
    const { id: photographId } = await add(surveyId, 210)
    const before = entriesOf(surveyId)
    await add(surveyId, 210)
    await ask(opened, 'photographs.describe', { photographId, caption: '' })
    expect((await refusalOf(opened, 'photographs.turn', { photographId, quarterTurns: 5 })).code).toMatch(/^field/)
    expect(entriesOf(surveyId)).toEqual(before)
    await ask(opened, 'reports.issue', { surveyId })
    expect(entriesOf(surveyId).slice(before.length).map(({ what }) => what)).toEqual(['report issued'])
    expect((await refusalOf(opened, 'photographs.remove', { photographId })).code).toBe('survey.issued')
    expect(entriesOf(surveyId)).toHaveLength(before.length + 1)
  })

  it('tells of two that trade places as of two that were moved, and of nothing between', async () => {
    const { id: surveyId } = await startSurvey(opened)
    const at = await add(surveyId, 220, checked)
    const loose = await add(surveyId, 220)
    await ask(opened, 'photographs.remove', { photographId: at.id })
    await ask(opened, 'photographs.assign', { photographIds: [loose.id], place: checked })
    expect(entriesOf(surveyId).slice(4)).toMatchObject([{ what: 'assigned', photographId: at.id, to: { checkId: null, position: null } }, { what: 'assigned', photographId: loose.id, to: checked }])
    expect((await verify(surveyId)).problems).toEqual([])
  })

  it('of a picture taken out and brought again is a return, with the caption it then has', async () => {
    const { id: surveyId } = await startSurvey(opened)
    const { id: photographId } = await add(surveyId, 230, { caption: 'first' })
    await ask(opened, 'photographs.remove', { photographId })
    await add(surveyId, 230, { caption: 'second' })
    expect(entriesOf(surveyId).at(-1)).toMatchObject({ what: 'restored', photographId, to: { removedAt: null, caption: 'second' } })
    expect(await verify(surveyId)).toMatchObject({ photographCount: 1, removedCount: 0, problems: [] })
  })
})

describe('verifying a survey', () => {
  it('counts what stands and what was removed, and says where the record ends and what each report prints of it', async () => {
    const { id: surveyId } = await startSurvey(opened)
    expect(await verify(surveyId)).toEqual({ photographCount: 0, removedCount: 0, byteCount: 0, reports: [], problems: [] })
    await ask(opened, 'reports.issue', { surveyId })
    await ask(opened, 'surveys.reopen', { surveyId })
    await add(surveyId, 1)
    const { id: photographId } = await add(surveyId, 2)
    await ask(opened, 'photographs.remove', { photographId })
    const { end } = await verify(surveyId)
    // Opened, the first report, the survey opened again, two photographs, one of them removed.
    expect(end?.entryCount).toBe(6)
    await ask(opened, 'reports.issue', { surveyId })
    await ask(opened, 'surveys.reopen', { surveyId })
    await add(surveyId, 3)
    const verified = await verify(surveyId)
    expect(verified).toMatchObject({ photographCount: 2, removedCount: 1, problems: [] })
    expect(verified.reports).toMatchObject([{ revision: 2, end }, { revision: 1 }])
    expect(verified.reports[1]?.end).toBeUndefined()
    expect(verified.end?.entryCount).toBe(9)
  })

  it('of nobody is refused', async () => {
    expect((await refusalOf(opened, 'proof.verify', { surveyId: '01900000-0000-7000-8000-00000000dead' })).code).toBe('survey.not-found')
  })

  it('of a survey whose files were tampered with names each, in the survey alone', async () => {
    const { id: surveyId } = await startSurvey(opened)
    const { id: other } = await startSurvey(opened)
    const changed = await add(surveyId, 41)
    const gone = await add(surveyId, 42)
    await add(other, 43)
    const fileOf = ({ sha256: hash }: Photograph): string => join(folder, 'photographs', 'originals', hash.slice(0, 2), `${hash}.png`)
    writeFileSync(fileOf(changed), Buffer.alloc(changed.byteCount))
    renameSync(fileOf(gone), `${fileOf(gone)}.away`)
    expect((await verify(surveyId)).problems.map(({ code, values }) => [code, values['name']])).toEqual([['file-changed', '41.jpg'], ['file-missing', '42.jpg']])
    expect((await verify(other)).problems).toEqual([])
    // As the sentence of what to do promises.
    expect(sayToDo(en, (await verify(surveyId)).problems)).toContain('add it again: its original is right then')
    await add(surveyId, 41)
    await add(surveyId, 42)
    expect((await verify(surveyId)).problems).toEqual([])
  })
})

describe('verifying much', { timeout: 120_000 }, () => {
  /** A picture with as much behind its end as a file may have; readers leave that alone. */
  const heavy = async (red: number): Promise<Uint8Array> => new Uint8Array(Buffer.concat([await pictureFromTheCamera(red), Buffer.alloc(95_000_000, red)]))

  it('leaves the window answered, is done once for two who ask, and can be stopped', async () => {
    const { id: surveyId } = await startSurvey(opened)
    for (const red of [1, 2, 3]) await ask(opened, 'photographs.add', { surveyId, fileName: `heavy ${red}.jpg` }, await heavy(red))
    let isDone = false
    const verifying = Promise.all([verify(surveyId), verify(surveyId)]).finally(() => (isDone = true))
    const took: number[] = []
    while (!isDone) {
      const began = performance.now()
      await ask(opened, 'surveys.get', { surveyId })
      took.push(performance.now() - began)
      await new Promise((resolve) => setTimeout(resolve, 5))
    }
    const [one, two] = await verifying
    expect(two).toEqual(one)
    expect(one.problems).toEqual([])
    expect(one.byteCount).toBeGreaterThan(285_000_000)
    expect(took.length).toBeGreaterThan(5)
    // The slowest of a machine at other work left out.
    expect(took.toSorted((a, b) => a - b)[Math.floor(took.length * 0.9)]).toBeLessThan(100)
    const stopped = refusalOf(opened, 'proof.verify', { surveyId })
    await new Promise((resolve) => setTimeout(resolve, 20))
    await ask(opened, 'proof.stop', { surveyId })
    expect((await stopped).code).toBe('proof.stopped')
    await ask(opened, 'proof.stop', { surveyId })
    expect((await verify(surveyId)).problems).toEqual([])
  })
})

describe('verifying a whole yard beside a program at work', () => {
  it('takes nothing that is just coming in for a stranger', async () => {
    const busy = newFolder()
    const atWork = await open(busy, { writeReport: writePlainReport })
    const { id: surveyId } = await startSurvey(atWork)
    let isDone = false
    const working = (async () => {
      for (let red = 0; red < 40; red += 1) await ask(atWork, 'photographs.add', { surveyId, fileName: `${red}.jpg` }, await picture(red))
    })().finally(() => (isDone = true))
    let looks = 0
    while (!isDone) {
      const reader = openDeskToRead(busy)
      const { surveys, problems } = await reader.verifyYard({ underWayMs: 1_000 })
      await reader.close()
      expect([...surveys.flatMap(({ verified }) => verified.problems), ...problems]).toEqual([])
      looks += 1
    }
    await working
    expect(looks).toBeGreaterThan(0)
    const reader = openDeskToRead(busy)
    expect((await reader.verifyYard()).surveys[0]?.verified.photographCount).toBe(40)
    await reader.close()
    await atWork.close()
  }, 60_000)
})

it('the hash a report prints is that of the record’s last entry before its own, worked out apart', async () => {
  const { id: surveyId } = await startSurvey(opened)
  await add(surveyId, 90)
  const { report } = await ask(opened, 'reports.issue', { surveyId })
  const database = new Database(join(folder, 'yard.sqlite'), { readonly: true })
  const { entry_json, document_json } = database.prepare<[string, string], { entry_json: string; document_json: string }>(
    'SELECT entry_json, document_json FROM photograph_log, reports WHERE photograph_log.survey_id = ? AND reports.id = ? AND place = 2').get(surveyId, report.id) ?? { entry_json: '', document_json: '' }
  database.close()
  const { photographRecord } = JSON.parse(document_json) as { photographRecord: { entryCount: number; lastSha256: string; sentence: string } }
  expect(photographRecord).toMatchObject({ entryCount: 2, lastSha256: sha256(entry_json) })
  expect(photographRecord.sentence).toContain(`2 entries`)
  expect(photographRecord.sentence).toContain(sha256(entry_json))
})
