import { writeFile } from 'node:fs/promises'
import { crc32, deflateSync } from 'node:zlib'
import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { en } from '../../../shared-logic/words/en'
import { say } from '../../../shared-logic/words/say'
import { byteLimit } from '../../../main/photos/decoder'
import { refuseUnwritable } from '../../../main/photos/durable-file'
import { openShelf } from '../../../main/photos/shelf'
import { filesIn, emptyFolder } from './shelf-folder'
import { plain } from './pictures'

const pngChunk = (type: string, body: Buffer): Buffer => {
  const chunk = Buffer.alloc(body.byteLength + 12)
  chunk.writeUInt32BE(body.byteLength, 0)
  chunk.write(type, 4, 'latin1')
  body.copy(chunk, 8)
  chunk.writeUInt32BE(crc32(chunk.subarray(4, body.byteLength + 8)), body.byteLength + 8)
  return chunk
}

/** A PNG of 30,000 x 30,000 px, one bit each, all black; with its pixels, or with the header's claim alone. */
const hugePng = (isWhole: boolean): Buffer => {
  const edgePx = 30_000
  const header = Buffer.alloc(13)
  header.writeUInt32BE(edgePx, 0)
  header.writeUInt32BE(edgePx, 4)
  header[8] = 1
  const pixels = isWhole ? deflateSync(Buffer.alloc(edgePx * (1 + edgePx / 8)), { level: 1 }) : deflateSync(Buffer.alloc(10))
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
  return Buffer.concat([signature, pngChunk('IHDR', header), pngChunk('IDAT', pixels), pngChunk('IEND', Buffer.alloc(0))])
}

/** 140 MP of four channels at 16 bits, 1.1 GB, as an interlaced or a plain PNG (ISO/IEC 15948, 11.2.2), of which the header alone is there. */
const deepPng = (isInterlaced: boolean): Buffer => {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(14_000, 0)
  header.writeUInt32BE(10_000, 4)
  header.set([16, 6, 0, 0, isInterlaced ? 1 : 0], 8)
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
  return Buffer.concat([signature, pngChunk('IHDR', header), pngChunk('IDAT', deflateSync(Buffer.alloc(10))), pngChunk('IEND', Buffer.alloc(0))])
}

const truncatedJpeg = async (): Promise<Buffer> => {
  const jpeg = await sharp({ create: { width: 900, height: 700, channels: 3, background: '#777', noise: { type: 'gaussian', mean: 128, sigma: 30 } } }).jpeg().toBuffer()
  return jpeg.subarray(0, Math.floor(jpeg.byteLength * 0.6))
}

/** The box at the front of a HEIC file, as a telephone writes it, and nothing behind it that could be read. */
const heicHeader = (): Buffer => Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic'), Buffer.alloc(4), Buffer.from('mif1heic'), Buffer.alloc(200)])

const refusalOf = async (bytes: Uint8Array, name: string): Promise<{ readonly code: string; readonly sentence: string; readonly files: readonly string[] }> => {
  const folder = await emptyFolder()
  const error: unknown = await openShelf(folder).take(bytes, name).then(() => undefined, (thrown: unknown) => thrown)
  if (!(error instanceof Refusal)) throw new Error('was not refused', { cause: error })
  return { code: error.data.code, sentence: say(en.refusals[error.data.code] ?? '', error.data.values, 'metric'), files: await filesIn(folder) }
}

const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="40"><rect width="40" height="40"/></svg>'

test('an interlaced PNG that would be held in memory whole is refused before it is, a plain one is read row by row', async () => {
  expect((await refusalOf(deepPng(true), 'deep.png')).code).toBe('photograph.takes-too-much')
  expect((await refusalOf(deepPng(false), 'deep.png')).code).toBe('photograph.damaged')
})

describe('a file that is no photograph is refused by name and nothing is kept', () => {
  test.each([
    ['text named .jpg', 'notes.jpg', () => Buffer.from('left rear hub low'), 'photograph.not-a-photograph'],
    ['an empty file', 'empty.jpg', () => Buffer.alloc(0), 'photograph.empty'],
    ['a drawing in SVG', 'plan.png', () => Buffer.from(svg), 'photograph.not-a-photograph'],
    ['a GIF', 'moving.gif', () => plain().gif().toBuffer(), 'photograph.not-a-photograph'],
    ['a truncated JPEG', 'half.jpg', truncatedJpeg, 'photograph.damaged'],
    ['a JPEG header without a picture', 'head.jpg', () => Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70, 0]), 'photograph.not-a-photograph'],
    ['a film named .heic', 'film.heic', () => Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypmp42'), Buffer.alloc(4), Buffer.from('mp42isom'), Buffer.alloc(4000, 9)]), 'photograph.not-a-photograph'],
    ['a PNG of 30,000 x 30,000 px', 'wall.png', () => hugePng(true), 'photograph.too-many-pixels'],
    ['a PNG that only claims as much', 'claims.png', () => hugePng(false), 'photograph.too-many-pixels'],
    ['the front of a HEIC alone', 'phone.heic', heicHeader, 'photograph.damaged'],
  ] as const)('%s', async (_, name, make, code) => {
    const refused = await refusalOf(await make(), name)
    expect(refused.code).toBe(code)
    expect(refused.sentence).toContain(name)
    expect(refused.sentence).not.toMatch(/[{}]/)
    expect(refused.files).toEqual([])
  })

  test('a file over 100 MB', async () => {
    expect(await refusalOf(new Uint8Array(byteLimit + 1), 'heavy.tif')).toMatchObject({ code: 'photograph.too-large', files: [] })
  })
})

test('the name in a refusal carries no folder', async () => {
  const { sentence } = await refusalOf(Buffer.from('text'), '../../home/someone\\private/strap.jpg')
  expect(sentence).toContain('“strap.jpg”')
})

const fault = (code: string): Error => Object.assign(new Error(code), { code })

test('a full disk and a read-only folder are refused in words; any other fault is thrown on as it is', () => {
  const cases = [['ENOSPC', 'photograph.disk-full'], ['EDQUOT', 'photograph.disk-full'], ['EROFS', 'photograph.read-only'], ['EACCES', 'photograph.read-only']] as const
  for (const [code, refusal] of cases) expect(() => refuseUnwritable(fault(code), 'strap.jpg')).toThrow(expect.objectContaining({ data: { code: refusal, values: { name: 'strap.jpg' } } }))
  const other = fault('EIO')
  expect(() => refuseUnwritable(other, 'strap.jpg')).toThrow(other)
})

test.runIf(process.platform === 'linux')('a real full device comes out as the sentence about the full disk', async () => {
  const full: unknown = await writeFile('/dev/full', 'x').then(() => undefined, (thrown: unknown) => thrown)
  expect(() => refuseUnwritable(full, 'strap.jpg')).toThrow(expect.objectContaining({ data: { code: 'photograph.disk-full', values: { name: 'strap.jpg' } } }))
})
