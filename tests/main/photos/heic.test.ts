import { readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Worker } from 'node:worker_threads'
import sharp, { type Sharp } from 'sharp'
import { describe, expect, onTestFinished, test } from 'vitest'
import { readCamera } from '../../../main/photos/camera'
import { decode, readHeader } from '../../../main/photos/decoder'
import { HeicFailure, heicAsTiff } from '../../../main/photos/heic'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { openShelf, type Original } from '../../../main/photos/shelf'
import { box, gridData, heifFile, imir, irot, ispe, nclx, picturesIn, type Item } from './heif-file'
import { plain, quarteredHeightPx, quarteredWidthPx } from './pictures'
import { likenessToScene, scene } from './scene'
import { emptyFolder } from './shelf-folder'

const fixture = (name: string): Promise<Buffer> => readFile(new URL(`./fixtures/${name}.heic`, import.meta.url))

const take = async (bytes: Uint8Array): Promise<{ readonly taken: Original; readonly large: Uint8Array; readonly original: Uint8Array; readonly mimeType: string }> => {
  const shelf = openShelf(await emptyFolder())
  const taken = await shelf.take(bytes, 'hub.heic')
  const original = await shelf.read(taken.sha256, 'original')
  return { taken, large: (await shelf.read(taken.sha256, 'large'))?.bytes ?? new Uint8Array(), original: original?.bytes ?? new Uint8Array(), mimeType: original?.mimeType ?? '' }
}

/** Decibel of likeness a picture twice coded with loss keeps to the scene; another turn of it has under 15. */
const leastLikeness = 32

const size = { widthPx: quarteredWidthPx, heightPx: quarteredHeightPx }
const onSide = { widthPx: quarteredHeightPx, heightPx: quarteredWidthPx }

describe('a HEIC as a phone writes it', () => {
  test.each(['scene', 'scene-p3', 'scene-10-bit'])('%s shows the scene as the same scene in PNG does, and its original is given back to the byte', async (name) => {
    const bytes = await fixture(name)
    const { taken, large, original, mimeType } = await take(bytes)
    expect(taken).toMatchObject({ format: 'heic', byteCount: bytes.byteLength, ...size })
    expect(await likenessToScene(large)).toBeGreaterThan(leastLikeness)
    expect(Buffer.compare(Buffer.from(original), bytes)).toBe(0)
    expect(mimeType).toBe('image/heic')
  })

  test('its preview carries no profile, and a lost one is made again from the original', async () => {
    const folder = await emptyFolder()
    const shelf = openShelf(folder)
    const { sha256 } = await shelf.take(await fixture('scene-p3'), 'hub.heic')
    const before = await shelf.read(sha256, 'small')
    expect((await sharp(before?.bytes).metadata()).icc).toBeUndefined()
    await rm(join(folder, 'previews'), { recursive: true })
    expect(Buffer.compare(Buffer.from((await shelf.read(sha256, 'small'))?.bytes ?? []), Buffer.from(before?.bytes ?? []))).toBe(0)
  })

  test('time and place of the camera are read, and the orientation its EXIF tells is not obeyed: the container’s own is', async () => {
    const bytes = await fixture('scene-p3')
    expect((await sharp(bytes).metadata()).exif?.includes(Buffer.from('12010300010000000600', 'hex'))).toBe(true)
    expect(readCamera(bytes, new Date('2026-11-25T12:00:00Z'))).toEqual({ takenAt: '2026-05-03T09:15:27+02:00', latitude: expect.closeTo(53.51, 6), longitude: expect.closeTo(-4.25, 6) })
    expect((await take(bytes)).taken).toMatchObject(size)
  })
})

/** What is to be seen. Source: ISO/IEC 23008-12:2022, 6.5.10 (quarter turns against the clock) and 6.5.12. */
const turned: readonly (readonly [string, readonly Buffer[], (upright: Sharp) => Sharp])[] = [
  ['a quarter turn against the clock', [irot(1)], (upright) => upright.rotate(270)],
  ['a half turn', [irot(2)], (upright) => upright.rotate(180)],
  ['a quarter turn with the clock', [irot(3)], (upright) => upright.rotate(90)],
  ['top and bottom changed', [imir(0)], (upright) => upright.flip()],
  ['left and right changed', [imir(1)], (upright) => upright.flop()],
]

describe('the container’s own turning is obeyed', () => {
  test.each(turned)('%s', async (_, properties, show) => {
    const [picture] = picturesIn(await fixture('scene'))
    if (!picture) throw new Error('no picture')
    const { taken, large } = await take(heifFile([{ ...picture, properties: [...picture.properties, ...properties] }]))
    const wanted = sharp(await show(scene()).png().toBuffer())
    expect(await likenessToScene(large, wanted)).toBeGreaterThan(leastLikeness)
    const { width } = await wanted.metadata()
    expect(taken).toMatchObject(width === quarteredWidthPx ? size : onSide)
  })

  test('tiles in a grid, turned, with a small copy and a further picture: the primary one alone, whole', async () => {
    const tiles = picturesIn(await fixture('tiles'))
    const grid: Item = { type: 'grid', data: gridData(2, 2, quarteredWidthPx, quarteredHeightPx), properties: [ispe(quarteredWidthPx, quarteredHeightPx), irot(3)], madeOf: [2, 3, 4, 5] }
    const [other] = picturesIn(await fixture('scene'))
    if (!other || tiles.length !== 4) throw new Error('no pictures')
    const bytes = heifFile([other, ...tiles, grid, { ...other, thumbnailOf: 6 }], { primary: 6 })
    const { taken, large } = await take(bytes)
    expect(taken).toMatchObject(onSide)
    expect(await likenessToScene(large, sharp(await scene().rotate(90).png().toBuffer()))).toBeGreaterThan(leastLikeness)
  })
})

test('the primary picture is taken, wherever it stands in the file', async () => {
  const [corner] = picturesIn(await fixture('tiles'))
  const [whole] = picturesIn(await fixture('scene'))
  if (!corner || !whole) throw new Error('no pictures')
  const { taken, large } = await take(heifFile([corner, whole], { primary: 2 }))
  expect(taken).toMatchObject(size)
  expect(await likenessToScene(large)).toBeGreaterThan(leastLikeness)
  expect((await take(heifFile([whole, corner], { primary: 2 }))).taken).toMatchObject({ widthPx: 256, heightPx: 192 })
})

/** The samples of the scene in Display P3, with these numbers in the profile's stead. */
const withNumbers = async (primaries: number, transfer: number): Promise<Uint8Array> => {
  const [picture] = picturesIn(await fixture('scene-p3'))
  if (!picture) throw new Error('no picture')
  const properties = picture.properties.filter((property) => property.toString('latin1', 4, 8) !== 'colr')
  return (await take(heifFile([{ ...picture, properties: [...properties, nclx(primaries, transfer, 6)] }]))).large
}

describe('colours told by number instead of by profile', () => {
  test('Display P3 by number shows the scene as Display P3 by profile does', async () => {
    expect(await likenessToScene(await withNumbers(12, 13))).toBeGreaterThan(leastLikeness)
  })

  test('the same samples called sRGB show other colours: the number is what counts', async () => {
    expect(await likenessToScene(await withNumbers(1, 13))).toBeLessThan(27)
  })
})

describe('what a moving picture adds is left alone', () => {
  const film = Buffer.concat([box('ftyp', Buffer.from('mp42'), Buffer.alloc(4)), box('mdat', Buffer.alloc(60_000, 7))])

  test.each([['in a box of its own', box('mpvd', film)], ['behind the last box', film]])('a HEIC with a film %s', async (_, behind) => {
    const bytes = heifFile(picturesIn(await fixture('scene')), { behind })
    const { taken, large, original } = await take(bytes)
    expect(taken).toMatchObject({ format: 'heic', byteCount: bytes.byteLength, ...size })
    expect(await likenessToScene(large)).toBeGreaterThan(leastLikeness)
    expect(Buffer.compare(Buffer.from(original), bytes)).toBe(0)
  })

  test('a JPEG with a film behind its end, and one with a second picture there', async () => {
    const jpeg = await scene().jpeg({ quality: 95 }).toBuffer()
    for (const behind of [film, await plain().jpeg().toBuffer()]) {
      const { taken, large } = await take(Buffer.concat([jpeg, behind]))
      expect(taken).toMatchObject({ format: 'jpeg', ...size })
      expect(await likenessToScene(large)).toBeGreaterThan(leastLikeness)
    }
  })
})

const named = 'half.heic'

/** Why it was refused; undefined when it was taken. Any other fault is thrown on. */
const refusalOf = async (bytes: Uint8Array): Promise<Refusal['data'] | undefined> => {
  try {
    await readHeader(bytes, named)
    await decode(bytes, named)
    return undefined
  } catch (error) {
    if (error instanceof Refusal) return error.data
    throw error
  }
}
const refusal = (code: string) => ({ code, values: expect.objectContaining({ name: named }) })

describe('a HEIC that cannot be taken is refused by name', () => {
  test.each([0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98])('broken off after %f of its length', async (share) => {
    for (const name of ['scene', 'scene-p3']) {
      const whole = await fixture(name)
      expect(await refusalOf(whole.subarray(0, Math.floor(whole.byteLength * share)))).toEqual(refusal('photograph.damaged'))
    }
  })

  test('a grid whose last tile breaks off', async () => {
    const tiles = picturesIn(await fixture('tiles'))
    const bytes = heifFile([...tiles, { type: 'grid', data: gridData(2, 2, quarteredWidthPx, quarteredHeightPx), properties: [ispe(quarteredWidthPx, quarteredHeightPx)], madeOf: [1, 2, 3, 4] }], { primary: 5 })
    expect(await refusalOf(bytes)).toBeUndefined()
    expect(await refusalOf(bytes.subarray(0, bytes.byteLength - 300))).toEqual(refusal('photograph.damaged'))
  })

  test('one that claims 30,000 x 30,000 px is refused by its header, before anything is decoded', async () => {
    const started: unknown[] = []
    const note = (worker: unknown): void => void started.push(worker)
    process.on('worker', note)
    onTestFinished(() => void process.off('worker', note))
    const [picture] = picturesIn(await fixture('scene'))
    if (!picture) throw new Error('no picture')
    const properties = picture.properties.map((property) => (property.toString('latin1', 4, 8) === 'ispe' ? ispe(30_000, 30_000) : property))
    expect(await refusalOf(heifFile([{ ...picture, properties }]))).toEqual(refusal('photograph.too-many-pixels'))
    expect(started).toEqual([])
  })

  test('eighty copies with a changed byte here and there: taken or refused, never anything else', async () => {
    const whole = await fixture('scene-p3')
    for (let round = 0; round < 80; round++) {
      const bytes = Buffer.from(whole)
      const at = Math.floor((round / 80) * bytes.byteLength)
      bytes[at] = (bytes[at] ?? 0) ^ (1 << round % 8)
      expect(['photograph.damaged', 'photograph.not-a-photograph', 'photograph.too-many-pixels', 'taken'], `byte ${at}`).toContain((await refusalOf(bytes))?.code ?? 'taken')
    }
  }, 120_000)
})

describe('decoding a HEIC', () => {
  test('is given up after its time, and the thread ends', async () => {
    const workers: Worker[] = []
    const note = (worker: Worker): void => void workers.push(worker)
    process.on('worker', note)
    onTestFinished(() => void process.off('worker', note))
    const answer: unknown = await heicAsTiff(await fixture('scene'), undefined, 1).catch((error: unknown) => error)
    expect(answer).toBeInstanceOf(HeicFailure)
    expect(answer).toMatchObject({ why: 'takes too much' })
    await expect.poll(() => workers.map(({ threadId }) => threadId)).toEqual([-1])
  })

  test('goes one at a time, however many come at once', async () => {
    let [running, most] = [0, 0]
    const note = (worker: Worker): void => {
      running += 1
      most = Math.max(most, running)
      worker.on('exit', () => (running -= 1))
    }
    process.on('worker', note)
    onTestFinished(() => void process.off('worker', note))
    const bytes = await fixture('scene')
    await Promise.all([1, 2, 3, 4].map(() => heicAsTiff(bytes, undefined)))
    expect(most).toBe(1)
  })
})
