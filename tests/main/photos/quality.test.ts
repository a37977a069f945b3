import { readFile, stat, utimes } from 'node:fs/promises'
import { join } from 'node:path'
import sharp, { type Sharp } from 'sharp'
import { describe, expect, onTestFinished, test } from 'vitest'
import { lookBitsOf, lookDistance } from '../../../shared-logic/photographs/look-hash'
import { qualitySchema } from '../../../shared-logic/photographs/quality'
import { openShelf, type Original } from '../../../main/photos/shelf'
import { plain } from './pictures'
import { scene } from './scene'
import { emptyFolder, filesIn } from './shelf-folder'

const heic = (): Promise<Buffer> => readFile(new URL('./fixtures/scene.heic', import.meta.url))
const example = (name: string): Sharp => sharp(`assets/example/${name}.jpg`)
const takeAlone = async (bytes: Uint8Array): Promise<Original> => openShelf(await emptyFolder()).take(bytes, 'hub.jpg')

describe('a photograph that is taken in', () => {
  test('is measured, by figures the record can keep', async () => {
    const { quality, lookHash } = await takeAlone(await example('coupler-latch').jpeg().toBuffer())
    expect(qualitySchema.parse(JSON.parse(JSON.stringify(quality)))).toEqual(quality)
    expect(quality.edgeWidthPx).toBeLessThan(4)
    expect(lookHash).toMatch(/^[0-9a-f]{16}$/)
  })

  test('is measured at 1600 px, whatever its own size: out of focus at 12 MP is out of focus there', async () => {
    const sharpOne = await takeAlone(await example('bow-eye').resize({ width: 4000 }).jpeg().toBuffer())
    const soft = await takeAlone(await example('bow-eye').resize({ width: 4000 }).blur(10).jpeg().toBuffer())
    expect(sharpOne.quality.edgeWidthPx).toBeLessThan(4)
    // 10 px of 4000 are 4 px of 1600, and a blurred step is 2.5 times as wide.
    expect(Math.abs((soft.quality.edgeWidthPx ?? 0) - 4 * Math.sqrt(2 * Math.PI))).toBeLessThan(2)
  })

  test('comes out the same turned on its side and upright, as HEIC and as PNG', async () => {
    const asPng = await takeAlone(await scene().png().toBuffer())
    const asHeic = await takeAlone(await heic())
    expect(asHeic.quality.medianLuminance).toBeCloseTo(asPng.quality.medianLuminance, 1)
    expect(lookDistance(lookBitsOf(asHeic.lookHash ?? ''), lookBitsOf(asPng.lookHash ?? ''))).toBeLessThanOrEqual(4)
    const stored = await example('wire-pinched').rotate(90).jpeg({ quality: 95 }).withMetadata({ orientation: 8 }).toBuffer()
    const [upright, onSide] = [await takeAlone(await example('wire-pinched').jpeg({ quality: 95 }).toBuffer()), await takeAlone(stored)]
    expect([onSide.widthPx, onSide.heightPx]).toEqual([upright.widthPx, upright.heightPx])
    expect(lookDistance(lookBitsOf(onSide.lookHash ?? ''), lookBitsOf(upright.lookHash ?? ''))).toBeLessThanOrEqual(2)
  })

  test('a plain wall has no edges to judge by and nothing to know it by, and is taken all the same', async () => {
    const { quality, lookHash } = await takeAlone(await plain().jpeg().toBuffer())
    expect([quality.edgeWidthPx, lookHash]).toEqual([undefined, undefined])
  })
})

describe('the same picture uploaded twice', () => {
  test('by another run of the program is measured alike, and no file is written anew', async () => {
    const folder = await emptyFolder()
    const bytes = await example('coupler-latch').jpeg().toBuffer()
    const first = await openShelf(folder).take(bytes, 'latch.jpg')
    const long = new Date('2001-01-01T00:00:00Z')
    const files = (await filesIn(folder)).map((file) => join(folder, file))
    for (const file of files) await utimes(file, long, long)
    expect(await openShelf(folder).take(bytes, 'again.jpg')).toEqual(first)
    for (const file of files) expect((await stat(file)).mtime).toEqual(long)
  })

  test('as HEIC five times at once is decoded once', async () => {
    let started = 0
    const note = (): void => void (started += 1)
    process.on('worker', note)
    onTestFinished(() => void process.off('worker', note))
    const folder = await emptyFolder()
    const shelf = openShelf(folder)
    const bytes = await heic()
    const taken = await Promise.all([1, 2, 3, 4, 5].map((number) => shelf.take(bytes, `${number}.heic`)))
    expect(new Set(taken.map((each) => JSON.stringify(each))).size).toBe(1)
    expect(started).toBe(1)
    expect(await filesIn(folder)).toHaveLength(3)
  })
})
