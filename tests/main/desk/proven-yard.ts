import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import type { OpenedDesk } from '../../../main/desk/open'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import { ask, newFolder, open, placeWith, signAs, startSurvey, writePlainReport } from './yard-on-disk'

const place = placeWith('choice')
export const checked = { checkId: place.checkId, position: place.position }

/** A photograph with a time and a place from its camera. */
export const pictureFromTheCamera = async (red: number): Promise<Uint8Array> =>
  new Uint8Array(await sharp({ create: { width: 48, height: 32, channels: 3, background: { r: red, g: 90, b: 120 } } })
    .withExif({
      IFD0: { Make: 'invented' }, IFD2: { DateTimeOriginal: '2026:06:14 09:15:27', OffsetTimeOriginal: '+01:00' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '38/1 42/1 2556/100', GPSLongitudeRef: 'W', GPSLongitude: '9/1 8/1 780/100' },
    }).jpeg().toBuffer())

const layer: MarkLayer = { widthPx: 48, heightPx: 32, marks: [{ kind: 'arrow', from: [5, 5], to: [20, 20] }] }

/** Everything that can be done to photographs, once at least; then the report, the survey opened again, and one photograph more. */
const work = async (opened: OpenedDesk): Promise<string> => {
  const { id: surveyId } = await startSurvey(opened)
  const ids: string[] = []
  for (const [index, source] of (['file', 'camera', 'phone', 'phone', 'file'] as const).entries()) {
    const at = index % 2 === 0 ? checked : {}
    ids.push((await ask(opened, 'photographs.add', { surveyId, ...at, fileName: `hub ${index}.jpg`, source }, await pictureFromTheCamera(10 * index))).photograph.id)
  }
  const [first = '', second = '', third = '', fourth = '', fifth = ''] = ids
  await ask(opened, 'photographs.describe', { photographId: first, caption: 'Oil dark; Öl dunkel' })
  await ask(opened, 'photographs.turn', { photographId: second, quarterTurns: 1 })
  await ask(opened, 'photographs.mark', { photographId: third, layer })
  await ask(opened, 'photographs.assign', { photographIds: [second, fourth], place: checked })
  await ask(opened, 'photographs.choose', { photographIds: [fourth], isPrinted: false })
  await ask(opened, 'photographs.remove', { photographId: fifth })
  await ask(opened, 'photographs.order', { surveyId, photographIds: [third, first, fourth, second] })
  await ask(opened, 'photographs.remove', { photographId: first })
  await ask(opened, 'photographs.restore', { photographId: first })
  await ask(opened, 'reports.issue', { surveyId })
  await ask(opened, 'surveys.reopen', { surveyId })
  await ask(opened, 'photographs.add', { surveyId, fileName: 'late.jpg' }, await pictureFromTheCamera(200))
  return surveyId
}

export interface ProvenYard {
  readonly folder: string
  readonly surveyIds: readonly string[]
}

/** A yard of two surveys with photographs, records and reports, closed. The second shares an original with the first. */
export const makeProvenYard = async (): Promise<ProvenYard> => {
  const folder = newFolder()
  const opened = await open(folder, { writeReport: writePlainReport })
  await signAs(opened, 'Odile Varga')
  const first = await work(opened)
  const { id: second } = await startSurvey(opened)
  await ask(opened, 'surveys.answer', { surveyId: second, ...checked, answer: { values: { [place.field.id]: place.field.options[0] ?? '' }, note: 'Öl dunkel' } })
  for (const red of [0, 77]) await ask(opened, 'photographs.add', { surveyId: second, fileName: `strap ${red}.jpg`, source: 'phone' }, await pictureFromTheCamera(red))
  await ask(opened, 'reports.issue', { surveyId: second })
  await opened.close()
  return { folder, surveyIds: [first, second] }
}

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))

/** Remembers a closed yard, to the byte; what it answers brings the yard back to that. */
export const remember = (folder: string): (() => void) => {
  const kept = new Map(filesIn(folder).map((file) => [file, readFileSync(file)]))
  return () => {
    for (const file of filesIn(folder)) if (!kept.has(file)) rmSync(file)
    for (const [file, bytes] of kept) {
      if (existsSync(file) && readFileSync(file).equals(bytes)) continue
      mkdirSync(dirname(file), { recursive: true })
      writeFileSync(file, bytes)
    }
  }
}
