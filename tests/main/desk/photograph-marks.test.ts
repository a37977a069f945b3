import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { OpenedDesk } from '../../../main/desk/open'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import type { Photograph, Survey } from '../../../shared-logic/survey/records'
import { ask, newFolder, open, refusalOf, sha256, signAs, startSurvey, writePlainReport } from './yard-on-disk'

const folder = newFolder()
let opened: OpenedDesk
let survey: Survey
let photograph: Photograph
let bytes: Uint8Array
beforeAll(async () => {
  opened = await open(folder, { writeReport: writePlainReport })
  survey = await startSurvey(opened)
  // Kept lying by the camera: upright it is 30 wide and 40 high.
  bytes = new Uint8Array(await sharp({ create: { width: 40, height: 30, channels: 3, background: '#806040' } }).withMetadata({ orientation: 6 }).jpeg().toBuffer())
  photograph = (await ask(opened, 'photographs.add', { surveyId: survey.id, fileName: 'hub.jpg' }, bytes)).photograph
})
afterAll(() => opened.close())

const layer: MarkLayer = { widthPx: 30, heightPx: 40, scale: { kind: 'length', from: [2, 38], to: [28, 38], lengthM: 0.05 }, marks: [{ kind: 'arrow', from: [1, 1], to: [29, 39] }, { kind: 'text', at: [15, 20], text: '  weeping seal ' }] }
const mark = (change: Partial<MarkLayer>) => ({ photographId: photograph.id, layer: { ...layer, ...change } })
const kept = async (): Promise<Photograph | undefined> => (await ask(opened, 'surveys.get', { surveyId: survey.id })).photographs[0]

/** Every file of the yard that is exactly these bytes. */
const filesOf = (wanted: Uint8Array): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).filter((path) => sha256(readFileSync(path)) === sha256(wanted))

it('a layer is kept whole with its photograph, on the upright original, and the original stays byte for byte', async () => {
  expect([photograph.widthPx, photograph.heightPx]).toEqual([30, 40])
  const before = filesOf(bytes)
  expect(before).toHaveLength(1)
  const { photograph: marked } = await ask(opened, 'photographs.mark', mark({}))
  expect(marked.marks).toEqual({ ...layer, marks: [layer.marks[0], { kind: 'text', at: [15, 20], text: 'weeping seal' }] })
  expect(await kept()).toEqual(marked)
  expect(marked.sha256).toBe(sha256(bytes))
  expect(filesOf(bytes)).toEqual(before)
})

it('a layer is replaced by the next and taken away by an empty one', async () => {
  await ask(opened, 'photographs.mark', mark({ marks: layer.marks.slice(0, 1) }))
  expect((await kept())?.marks?.marks).toHaveLength(1)
  await ask(opened, 'photographs.mark', { photographId: photograph.id, layer: { widthPx: 30, heightPx: 40, marks: [] } })
  expect((await kept())?.marks).toBeUndefined()
})

it('a layer that does not lie on the picture is refused in a sentence, and what was kept is kept', async () => {
  await ask(opened, 'photographs.mark', mark({}))
  const before = await kept()
  const wrong: [Partial<MarkLayer>, string][] = [
    [{ widthPx: 40, heightPx: 30 }, 'photograph.marks-of-another'],
    [{ marks: [{ kind: 'box', from: [0, 0], to: [30.5, 10] }] }, 'photograph.mark-outside'],
    [{ marks: [{ kind: 'length', from: [3, 3], to: [3, 3] }] }, 'photograph.mark-without-size'],
    [{ scale: { kind: 'length', from: [2, 2], to: [12, 2], lengthM: 0.05 } }, 'measure.scale-too-short'],
    [{ scale: { kind: 'length', from: [2, 2], to: [31, 2], lengthM: 0.05 } }, 'measure.scale-outside-picture'],
  ]
  for (const [change, code] of wrong) expect((await refusalOf(opened, 'photographs.mark', mark(change))).code).toBe(code)
  expect((await refusalOf(opened, 'photographs.mark', mark({ marks: [{ kind: 'text', at: [5, 5], text: 'x'.repeat(121) }] }))).sentence).not.toBe('')
  expect(await kept()).toEqual(before)
})

it('in an issued survey nothing is marked any more, and the report has the layer frozen in it', async () => {
  await ask(opened, 'photographs.mark', mark({}))
  await signAs(opened, 'Odile Varga')
  await ask(opened, 'reports.issue', { surveyId: survey.id })
  const refused = await refusalOf(opened, 'photographs.mark', mark({ marks: [] }))
  expect(refused.code).toMatch(/^survey\./)
  expect((await kept())?.marks?.marks).toHaveLength(2)
})
