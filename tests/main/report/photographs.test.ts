import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { writeReport } from '../../../main/report/write-report'
import { drawnPage, near, type Drawn } from './drawn-page'
import { pageTexts, readPdf } from './read-pdf'
import { sampleReport } from './sample-report'
import { sampleSurvey } from './sample-survey'

let folder = ''
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'photographs-')) })
afterAll(() => rm(folder, { recursive: true, force: true }))

const plain = (background: string): Promise<Uint8Array> => sharp({ create: { width: 1600, height: 1200, channels: 3, background } }).jpeg({ quality: 95 }).toBuffer()

/** A report whose photographs belong to no check and have no caption, all of one colour; its words and the page they stand on. */
const report = async (name: string, count: number, background: string) => {
  const sample = sampleSurvey({ photographs: count })
  const document = sampleReport({}, { survey: { ...sample, photographs: sample.photographs.map((each) => ({ ...each, checkId: undefined, position: undefined, caption: '' })) } })
  const picture = await plain(background)
  const path = join(folder, `${name}.pdf`)
  await writeReport(document, () => Promise.resolve(picture), path)
  const pdf = await readPdf(path)
  const texts = await pageTexts(pdf)
  const page = texts.findIndex((text) => text.includes('Other photographs')) + 1
  return { text: texts.join(' '), drawn: await drawnPage(pdf, page) }
}

type Colour = Parameters<typeof near>[0]

/** Rows of a page where a colour stands unbroken over so many px, and where it begins there. */
const runsOf = ({ width, height, at }: Drawn, colour: Colour, least: number): { readonly x: number; readonly y: number; readonly long: number }[] => {
  const runs: { x: number; y: number; long: number }[] = []
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const from = x
      while (x < width && near(at(x, y), colour, 24)) x += 1
      if (x - from >= least) runs.push({ x: from, y, long: x - from })
    }
  return runs
}

const violet = [144, 48, 192] as const
/** The hairline as `colours.ts` has it, half a point wide: it fills the pixel it stands on. */
const hairline = [180, 188, 194] as const

describe('photographs in a report', { timeout: 60_000 }, () => {
  it('have an edge, so that a white one is seen on white paper', async () => {
    const { drawn } = await report('white', 1, '#ffffff')
    const lines = runsOf(drawn, hairline, 300)
    // The picture is 4 : 3: two lines of one length so far apart, and lines between their ends.
    const isEdge = (x: number, y: number): boolean => [-1, 0, 1].some((by) => near(drawn.at(x + by, y), hairline, 40))
    const framed = lines.flatMap((top) => lines.filter((foot) => foot.x === top.x && foot.long === top.long && Math.abs(top.long / (foot.y - top.y) - 4 / 3) < 0.02).map((foot) => ({ top, foot })))
      .filter(({ top, foot }) => [0.2, 0.5, 0.8].every((share) => {
        const y = Math.round(top.y + share * (foot.y - top.y))
        return isEdge(top.x, y) && isEdge(top.x + top.long - 1, y)
      }))
    expect(framed.length).toBeGreaterThan(0)
  })

  it('stand at the left, the one that is left over as those before it', async () => {
    const { drawn } = await report('three', 3, '#9030c0')
    const begins = [...new Set(runsOf(drawn, violet, 100).map(({ x }) => x))].toSorted((a, b) => a - b)
    const first = begins[0] ?? 0
    // Two columns: what begins neither at the left nor at the second of a row is indented.
    const second = begins.at(-1) ?? 0
    expect(second - first).toBeGreaterThan(300)
    expect(begins.filter((x) => x > first + 3 && x < second - 3)).toEqual([])
    const alone = await report('one', 1, '#9030c0')
    expect(Math.abs((runsOf(alone.drawn, violet, 100)[0]?.x ?? 0) - first)).toBeLessThanOrEqual(3)
  })

  it('of any shape stand in two columns of one width, each in the middle of its own', async () => {
    const shapes = [[1600, 1200], [1200, 1600], [1600, 900], [1200, 1200]] as const
    const sample = sampleSurvey({ photographs: shapes.length })
    const document = sampleReport({}, { survey: { ...sample, photographs: sample.photographs.map((each) => ({ ...each, checkId: undefined, position: undefined, caption: '' })) } })
    const numberOf = (sha256: string): number => sample.photographs.findIndex((each) => each.sha256 === sha256)
    const path = join(folder, 'shapes.pdf')
    await writeReport(document, async (sha256) => {
      const [width, height] = shapes[numberOf(sha256)] ?? shapes[0]
      return sharp({ create: { width, height, channels: 3, background: '#9030c0' } }).jpeg({ quality: 95 }).toBuffer()
    }, path)
    const pdf = await readPdf(path)
    const drawn = await drawnPage(pdf, (await pageTexts(pdf)).findIndex((text) => text.includes('Other photographs')) + 1)
    const pictures = runsOf(drawn, violet, 300)
    const widest = Math.max(...pictures.map(({ long }) => long))
    const columns = [...new Set(pictures.filter(({ long }) => long > widest - 4).map(({ x }) => x))].toSorted((a, b) => a - b)
    const left = columns[0] ?? 0
    const middles = pictures.map(({ x, long }) => x + long / 2)
    const first = left + widest / 2
    const second = Math.max(...middles)
    expect(second - first).toBeGreaterThan(widest)
    expect(middles.filter((middle) => Math.abs(middle - first) > 3 && Math.abs(middle - second) > 3)).toEqual([])
    // The ground behind each is as wide as the widest picture: its upper and lower edge are lines of that length.
    const edges = runsOf(drawn, hairline, 300).filter(({ long }) => Math.abs(long - widest) < 6)
    expect(new Set(edges.map(({ x }) => Math.round((x - left) / 12))).size).toBe(2)
    expect(edges.length).toBeGreaterThanOrEqual(2 * shapes.length)
  })

  it('of no check say so in the register instead of nothing', async () => {
    const { text } = await report('words', 1, '#9030c0')
    expect(text).toContain('Of no check, without a caption')
  })
})
