import sharp from 'sharp'
import { expect, test } from 'vitest'
import { openShelf } from '../../../main/photos/shelf'
import { colourAt, differenceOf, plain, red } from './pictures'
import { emptyFolder } from './shelf-folder'

const cases = [
  ['jpeg', 'image/jpeg', () => plain().jpeg({ quality: 95 })],
  ['png', 'image/png', () => plain().png()],
  ['webp', 'image/webp', () => plain().webp({ lossless: true })],
  ['tiff', 'image/tiff', () => plain().tiff()],
  ['avif', 'image/avif', () => plain().avif({ quality: 90 })],
] as const

test.each(cases)('a %s is taken and its original given back to the byte', async (format, mimeType, make) => {
  const bytes = await make().toBuffer()
  const shelf = openShelf(await emptyFolder())
  const taken = await shelf.take(bytes, 'rig')
  expect(taken).toMatchObject({ format, byteCount: bytes.byteLength, widthPx: 60, heightPx: 40 })
  const original = await shelf.read(taken.sha256, 'original')
  expect(original?.mimeType).toBe(mimeType)
  expect(Buffer.compare(Buffer.from(original?.bytes ?? []), bytes)).toBe(0)
  const large = await shelf.read(taken.sha256, 'large')
  expect(large?.mimeType).toBe('image/jpeg')
  expect(differenceOf(await colourAt(large?.bytes ?? new Uint8Array(), 0.5, 0.5), red)).toBeLessThan(10)
})

const largeOf = async (bytes: Uint8Array): Promise<Uint8Array> => {
  const shelf = openShelf(await emptyFolder())
  const { sha256 } = await shelf.take(bytes, 'rig.jpg')
  return (await shelf.read(sha256, 'large'))?.bytes ?? new Uint8Array()
}

test('a wide-gamut profile is turned to sRGB, not dropped', async () => {
  const bytes = await plain().withIccProfile('p3').png().toBuffer()
  const storedRed = (await sharp(bytes, { ignoreIcc: true }).raw().toBuffer())[0] ?? 0
  expect(Math.abs(storedRed - red[0])).toBeGreaterThan(10)
  const large = await largeOf(bytes)
  expect(differenceOf(await colourAt(large, 0.5, 0.5), red)).toBeLessThan(6)
  const { icc, space } = await sharp(large).metadata()
  expect([icc, space]).toEqual([undefined, 'srgb'])
})

test('a CMYK JPEG shows in its colours', async () => {
  const bytes = await plain().toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer()
  expect((await sharp(bytes).metadata()).space).toBe('cmyk')
  const large = await largeOf(bytes)
  expect((await sharp(large).metadata()).space).toBe('srgb')
  expect(differenceOf(await colourAt(large, 0.5, 0.5), red)).toBeLessThan(60)
})

test('a picture of 16 bits a channel comes out in 8', async () => {
  const bytes = await plain().toColourspace('rgb16').png().toBuffer()
  expect((await sharp(bytes).metadata()).depth).toBe('ushort')
  expect(differenceOf(await colourAt(await largeOf(bytes), 0.5, 0.5), red)).toBeLessThan(8)
})

test('a grey picture and one with a see-through ground are taken; the ground shows white', async () => {
  const grey = await largeOf(await plain().greyscale().png().toBuffer())
  const [r, g, b] = await colourAt(grey, 0.5, 0.5)
  expect(Math.max(r, g, b) - Math.min(r, g, b)).toBeLessThan(3)
  const clear = await sharp({ create: { width: 20, height: 20, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } }).png().toBuffer()
  expect(await colourAt(await largeOf(clear), 0.5, 0.5)).toEqual([255, 255, 255])
})
