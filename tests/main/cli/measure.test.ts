import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { measurementSchema, type PixelPoint, type Scale } from '../../../shared-logic/measuring/measurement'
import type { Pixels } from '../../../shared-logic/measuring/pixels'
import { renderScene } from '../../corrosion/scenes/render-scene'
import { openWorkplace, type Workplace } from './command-line'

const side = 800
/** A grey plate with a brown square of 200 px; 0.5 mm a px, so 100 cm². */
const plate = (): Promise<Buffer> =>
  sharp({ create: { width: side, height: side, channels: 3, background: '#969696' } })
    .composite([{ input: { create: { width: 200, height: 200, channels: 3, background: '#8c4218' } }, left: 300, top: 300 }])
    .jpeg({ quality: 92 }).toBuffer()

const asJpeg = ({ data, width, height }: Pixels): Promise<Buffer> => sharp(Buffer.from(data), { raw: { width, height, channels: 4 } }).removeAlpha().jpeg({ quality: 92 }).toBuffer()
const written = (points: readonly PixelPoint[]): string => points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')
const scaleWritten = (scale: Scale): string =>
  scale.kind === 'length' ? `${written([scale.from, scale.to])} ${scale.lengthM * 1000} mm` : `${written(scale.corners)} ${scale.widthM * 1000} mm x ${scale.heightM * 1000} mm`

let at: Workplace
beforeAll(async () => {
  at = await openWorkplace()
  await at.put('plate.jpg', await plate())
  await at.put('grey.jpg', await sharp(await plate()).greyscale().jpeg().toBuffer())
  await at.put('note.jpg', 'not a picture')
})
afterAll(() => at.clear())

const known = '100,700 500,700 200 mm'
const square = '300,300 500,300 500,500 300,500'
const answerSchema = z.object({ measurement: measurementSchema, rings: z.array(z.array(z.tuple([z.number(), z.number()]))) })

const measure = async (...options: string[]) => {
  const ran = await at.run('measure', 'plate.jpg', ...options, '--json')
  return { ...ran, answer: ran.code === 0 ? answerSchema.parse(JSON.parse(ran.out)) : undefined }
}

describe('measure', () => {
  it('gives the area of an outline, its uncertainty, and every parameter it was measured with', async () => {
    const { answer } = await measure('--scale', known, '--outline', square)
    expect(answer?.measurement.result.areaM2).toBeCloseTo(0.01, 9)
    expect(answer?.measurement.result.uncertaintyM2).toBeGreaterThan(0)
    expect(answer?.measurement).toMatchObject({ widthPx: side, heightPx: side, scale: { kind: 'length', lengthM: 0.2 }, outline: { by: 'polygon' } })
  })
  it('gives the share of the face', async () => {
    const { answer } = await measure('--scale', known, '--outline', square, '--face', '200,200 600,200 600,600 200,600')
    expect(answer?.measurement.result.share).toBeCloseTo(0.25, 9)
  })
  it('takes four corners and two sides as a scale', async () => {
    const { answer } = await measure('--scale', '100,100 700,100 700,700 100,700 300 mm x 300mm', '--outline', square)
    expect(answer?.measurement.result.areaM2).toBeCloseTo(0.01, 9)
  })
  it('finds the rust of a rendered photograph by itself', async () => {
    const scene = await renderScene(3, { ground: 'zinc weathered', light: 'overcast', rust: 'spot', decoys: [], wet: false, shadow: false })
    await at.put('scene.jpg', await asJpeg(scene.pixels))
    const { code, out } = await at.run('measure', 'scene.jpg', '--scale', scaleWritten(scene.scale), '--face', written(scene.face), '--find-rust', '--json')
    const { measurement, rings } = answerSchema.parse(JSON.parse(out))
    expect([code, rings.length > 0]).toEqual([0, true])
    expect(Math.abs(measurement.result.areaM2 / scene.rustAreaM2 - 1)).toBeLessThan(0.2)
  })
  it('says the same to a person, and what tilt would do', async () => {
    const { out } = await at.run('measure', 'plate.jpg', '--scale', known, '--outline', square)
    expect(out).toMatch(/plate\.jpg: 100 cm², give or take [\d.]+ cm²/)
    expect(out).toContain('tilt')
  })
  it('writes a copy with outline and scale bar, and leaves the photograph as it was', async () => {
    const before = await readFile(join(at.folder, 'plate.jpg'))
    const { code } = await at.run('measure', 'plate.jpg', '--scale', known, '--outline', square, '-o', 'marked.jpg')
    expect(code).toBe(0)
    expect((await readFile(join(at.folder, 'plate.jpg'))).equals(before)).toBe(true)
    const marked = await sharp(join(at.folder, 'marked.jpg')).greyscale().raw().toBuffer()
    const acrossTheOutline = Array.from({ length: 12 }, (_, index) => marked[400 + (294 + index) * side] ?? 0)
    expect(Math.max(...acrossTheOutline) - Math.min(...acrossTheOutline)).toBeGreaterThan(120)
  })
})

describe('what cannot be measured is refused in a sentence', () => {
  it.each<[string, string[], RegExp]>([
    ['a crossed outline', ['--scale', known, '--outline', '300,300 500,500 500,300 300,500'], /crosses itself/],
    ['an outline outside the picture', ['--scale', known, '--outline', '300,300 900,300 900,900'], /leaves the picture/],
    ['a scale of no length', ['--scale', '100,100 100,100 10 mm', '--outline', square], /same point/],
    ['a known length of nothing', ['--scale', '100,700 500,700 0 mm', '--outline', square], /between 1 mm/],
    ['a known length below nothing', ['--scale', '100,700 500,700 -200 mm', '--outline', square], /between 1 mm/],
    ['a known length of a hundredth of a millimetre', ['--scale', '100,700 500,700 0.01 mm', '--outline', square], /between 1 mm/],
    ['a rectangle that is none', ['--scale', '100,100 400,100 700,100 100,700 30 cm x 30 cm', '--outline', square], /one line/],
    ['a spot larger than its face', ['--scale', known, '--outline', square, '--face', '400,400 450,400 450,450'], /leaves the face|larger than the face/],
  ])('%s', async (_, options, sentence) => {
    const { code, error } = await measure(...options)
    expect(code).toBe(1)
    expect(error).toMatch(sentence)
  })
  it('a photograph without colour, for finding rust', async () => {
    const { code, error } = await at.run('measure', 'grey.jpg', '--scale', known, '--find-rust')
    expect([code, /outline it by hand/i.test(error)]).toEqual([1, true])
  })
  it('a file that is no photograph', async () => {
    expect((await at.run('measure', 'note.jpg', '--scale', known, '--outline', square)).code).toBe(1)
  })
  it.each<[string, string[]]>([
    ['neither outline nor --find-rust', ['--scale', known]],
    ['both of them', ['--scale', known, '--outline', square, '--find-rust']],
    ['no scale', ['--outline', square]],
    ['a scale without a unit', ['--scale', '100,700 500,700 200', '--outline', square]],
    ['two points for an outline', ['--scale', known, '--outline', '1,1 2,2']],
    ['a sensitivity beside an outline', ['--scale', known, '--outline', '100,100 400,100 400,300', '--sensitivity', '0.4']],
    ['a sensitivity of 3', ['--scale', known, '--find-rust', '--sensitivity', '3']],
  ])('wrong usage: %s', async (_, options) => {
    expect((await measure(...options)).code).toBe(2)
  })
})
