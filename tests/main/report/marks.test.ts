import { createHash } from 'node:crypto'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { writeReport } from '../../../main/report/write-report'
import type { MarkLayer } from '../../../shared-logic/marking/marks'
import { reportDocumentSchema } from '../../../shared-logic/report/document'
import { pageTexts, readPdf } from './read-pdf'
import { drawnPage, near, type Drawn } from './drawn-page'
import { sampleReport } from './sample-report'
import { sampleHash, sampleSurvey } from './sample-survey'

let folder = ''
/** Violet, its upper left quarter green: nothing else on the page has these colours. */
let picture: Uint8Array
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'marks-'))
  const corner = await sharp({ create: { width: 800, height: 600, channels: 3, background: '#00b060' } }).png().toBuffer()
  picture = await sharp({ create: { width: 1600, height: 1200, channels: 3, background: '#9030c0' } }).composite([{ input: corner, left: 0, top: 0 }]).jpeg({ quality: 95 }).toBuffer()
})
afterAll(() => rm(folder, { recursive: true, force: true }))

const violet = [144, 48, 192] as const
const green = [0, 176, 96] as const
const core = [17, 17, 17] as const
const casing = [240, 228, 66] as const

/** On an original of 4,000 × 3,000 px: a box round its middle, an arrow from lower left, a length of a fifth of the known one. */
const layer: MarkLayer = {
  widthPx: 4000, heightPx: 3000,
  scale: { kind: 'length', from: [500, 2800], to: [3500, 2800], lengthM: 0.3 },
  marks: [
    { kind: 'box', from: [1600, 1200], to: [2400, 1800] },
    { kind: 'arrow', from: [400, 2200], to: [1200, 2200] },
    { kind: 'length', from: [2800, 700], to: [3400, 700] },
    { kind: 'text', at: [2000, 300], text: 'crack at the weld' },
  ],
}

const surveyWith = (quarterTurns: number, marks: MarkLayer | undefined) => {
  const sample = sampleSurvey({ photographs: 1 })
  return { ...sample, photographs: sample.photographs.map((each) => ({ ...each, quarterTurns, ...(marks && { marks }) })) }
}

/** The words of a report, and the page its photograph stands on. */
const pageOf = async (path: string) => {
  const pdf = await readPdf(path)
  const texts = await pageTexts(pdf)
  const figures = (await Promise.all(Array.from({ length: pdf.numPages }, async (_, index) => JSON.stringify(await (await pdf.getPage(index + 1)).getStructTree())))).join('')
  return { text: texts.join(' '), figures, drawn: await drawnPage(pdf, texts.findIndex((text) => text.includes('Photograph 1.')) + 1) }
}

const write = async (name: string, quarterTurns: number, marks: MarkLayer | undefined = layer) => {
  const document = sampleReport({}, { survey: surveyWith(quarterTurns, marks) })
  const path = join(folder, `${name}.pdf`)
  await writeReport(document, () => Promise.resolve(picture), path)
  return { document, path, ...(await pageOf(path)) }
}

/** Where the picture stands on the page: what is violet or green. */
const frameOf = ({ width, height, at }: Drawn) => {
  const found: [number, number][] = []
  for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) if (near(at(x, y), violet, 30) || near(at(x, y), green, 30)) found.push([x, y])
  const [xs, ys] = [found.map(([x]) => x), found.map(([, y]) => y)]
  const [left, top] = [xs.reduce((a, b) => Math.min(a, b)), ys.reduce((a, b) => Math.min(a, b))]
  return { left, top, width: xs.reduce((a, b) => Math.max(a, b)) - left + 1, height: ys.reduce((a, b) => Math.max(a, b)) - top + 1 }
}

/** Whether a colour is seen close to a place of the picture, given in shares of its width and height. */
const hasAt = (drawn: Drawn, [u, v]: readonly [number, number], colour: readonly [number, number, number]): boolean => {
  const frame = frameOf(drawn)
  const [x, y] = [Math.round(frame.left + u * frame.width), Math.round(frame.top + v * frame.height)]
  for (let dy = -4; dy <= 4; dy += 1) for (let dx = -4; dx <= 4; dx += 1) if (near(drawn.at(x + dx, y + dy), colour, 40)) return true
  return false
}

describe('marks in a report', () => {
  it('lie over the picture as lines: core and casing where they were drawn, the picture as it was elsewhere', async () => {
    const { drawn } = await write('upright', 0)
    const frame = frameOf(drawn)
    expect(frame.width / frame.height).toBeCloseTo(4 / 3, 1)
    for (const place of [[0.4, 0.5], [0.6, 0.5], [0.5, 0.4], [0.5, 0.6], [0.2, 2200 / 3000], [0.775, 700 / 3000]] as const) {
      expect([place, hasAt(drawn, place, core), hasAt(drawn, place, casing)]).toEqual([place, true, true])
    }
    for (const place of [[0.5, 0.5], [0.4, 0.8], [0.9, 0.6]] as const) expect([place, hasAt(drawn, place, casing)]).toEqual([place, false])
    expect(hasAt(drawn, [0.3, 0.3], green)).toBe(true)
    expect(hasAt(drawn, [0.7, 0.6], violet)).toBe(true)
  })

  it.each([
    // Where the upper left quarter, and the middle of the measured length, come to lie; worked out by hand: clockwise, (u, v) goes to (1 − v, u).
    { turns: 1, corner: [0.75, 0.25], length: [1 - 700 / 3000, 0.775] },
    { turns: 2, corner: [0.75, 0.75], length: [0.225, 1 - 700 / 3000] },
    { turns: 3, corner: [0.25, 0.75], length: [700 / 3000, 0.225] },
  ] as const)('turn with the picture: $turns quarter turns, and words stay upright', async ({ turns, corner, length }) => {
    const { drawn, text } = await write(`turned ${turns}`, turns)
    const frame = frameOf(drawn)
    expect(frame.width / frame.height).toBeCloseTo(turns === 2 ? 4 / 3 : 3 / 4, 1)
    expect(hasAt(drawn, corner, green)).toBe(true)
    expect(hasAt(drawn, [1 - corner[0], corner[1]], violet)).toBe(true)
    expect([hasAt(drawn, length, core), hasAt(drawn, length, casing)]).toEqual([true, true])
    // A reader gets letters in a row only where they stand upright in a row.
    expect(text).toContain('crack at the weld')
  })

  it('are told to those who do not see them, with the length in the reader’s units', async () => {
    const { document, text, figures } = await write('told', 0)
    const [line] = document.photographs
    // 600 of 3,000 px on 0.3 m are 60 mm: 2.362 in (60 / 25.4).
    expect(line?.alternative).toMatch(/; marked: box, arrow, 2\.362 in ± 0\.0\d+ in, “crack at the weld”, known: 11\.8 in$/)
    expect(figures).toContain(`"alt":${JSON.stringify(line?.alternative)}`)
    expect(text).toContain('2.362 in ±')
    expect(text).toContain('known: 11.8 in')
  })

  it('without a known length say that the length is not known, and give no figure', async () => {
    const { document, text } = await write('unknown', 0, { ...layer, scale: undefined })
    expect(document.photographs[0]?.alternative).toMatch(/; marked: box, arrow, length not known, “crack at the weld”$/)
    expect(text).toContain('length not known')
  })

  it('are frozen with the document: its JSON alone, without survey or words, draws the same page', async () => {
    const { document, drawn } = await write('first', 1)
    const path = join(folder, 'again.pdf')
    await writeReport(reportDocumentSchema.parse(JSON.parse(JSON.stringify(document))), () => Promise.resolve(picture), path)
    const again = await pageOf(path)
    const differing = Array.from({ length: drawn.width * drawn.height }, (_, index) => [index % drawn.width, Math.floor(index / drawn.width)] as const).filter(([x, y]) => !near(drawn.at(x, y), again.drawn.at(x, y), 0))
    expect(differing).toEqual([])
  })

  it('leave the picture as it was: it is embedded byte for byte, found again by its hash', async () => {
    const { path } = await write('embedded', 3)
    const bytes = await readFile(path)
    const from = bytes.indexOf(Buffer.from(picture))
    expect(from).toBeGreaterThan(0)
    const sha256 = (data: Uint8Array): string => createHash('sha256').update(data).digest('hex')
    expect(sha256(bytes.subarray(from, from + picture.length))).toBe(sha256(picture))
  })

  it('a report from before marks is read as unturned and unmarked', () => {
    const document = sampleReport({}, { survey: surveyWith(0, undefined) })
    const before = JSON.parse(JSON.stringify(document)) as { photographs: Record<string, unknown>[] }
    for (const line of before.photographs) delete line['quarterTurns']
    expect(reportDocumentSchema.parse(before).photographs[0]).toMatchObject({ sha256: sampleHash(0), quarterTurns: 0 })
    expect(reportDocumentSchema.parse(before).photographs[0]?.marks).toBeUndefined()
  })
})
