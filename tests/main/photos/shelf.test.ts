import { readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import sharp from 'sharp'
import { expect, test } from 'vitest'
import { openShelf } from '../../../main/photos/shelf'
import { blue, plain } from './pictures'
import { emptyFolder, filesIn } from './shelf-folder'

test('an original lies under its SHA-256, to the byte, with two previews', async () => {
  const folder = await emptyFolder()
  const bytes = await plain().jpeg().toBuffer()
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const taken = await openShelf(folder).take(bytes, 'strap.jpg')
  expect(taken.sha256).toBe(sha256)
  const start = sha256.slice(0, 2)
  expect(await filesIn(folder)).toEqual([`originals/${start}/${sha256}.jpg`, `previews/large/${start}/${sha256}.jpg`, `previews/small/${start}/${sha256}.jpg`])
  expect(Buffer.compare(await readFile(join(folder, 'originals', start, `${sha256}.jpg`)), bytes)).toBe(0)
})

test('previews have a long edge of 1600 and 320 px, and a small picture is not blown up', async () => {
  const shelf = openShelf(await emptyFolder())
  const big = await shelf.take(await plain(blue, 2000, 3000).jpeg().toBuffer(), 'tall.jpg')
  const little = await shelf.take(await plain(blue, 200, 100).png().toBuffer(), 'little.png')
  const sizeOf = async (sha256: string, size: 'small' | 'large') => {
    const { width, height } = await sharp((await shelf.read(sha256, size))?.bytes).metadata()
    return [width, height]
  }
  expect(await sizeOf(big.sha256, 'large')).toEqual([1067, 1600])
  expect(await sizeOf(big.sha256, 'small')).toEqual([213, 320])
  expect(await sizeOf(little.sha256, 'large')).toEqual([200, 100])
})

test('the same photograph again is the same original and is not worked on twice', async () => {
  const folder = await emptyFolder()
  const shelf = openShelf(folder)
  const bytes = await plain().jpeg().toBuffer()
  const first = await shelf.take(bytes, 'strap.jpg')
  const long = new Date('2001-01-01T00:00:00Z')
  const files = (await filesIn(folder)).map((file) => join(folder, file))
  for (const file of files) await utimes(file, long, long)
  expect(await shelf.take(bytes, 'again.jpg')).toEqual(first)
  for (const file of files) expect((await stat(file)).mtime).toEqual(long)
})

test('the same photograph ten times at once leaves three files', async () => {
  const folder = await emptyFolder()
  const shelf = openShelf(folder)
  const bytes = await plain().jpeg().toBuffer()
  const taken = await Promise.all(Array.from({ length: 10 }, (_, index) => shelf.take(bytes, `${index}.jpg`)))
  expect(new Set(taken.map((each) => each.sha256)).size).toBe(1)
  expect(await filesIn(folder)).toHaveLength(3)
})

test('bytes changed by the caller after handing over change nothing', async () => {
  const shelf = openShelf(await emptyFolder())
  const bytes = await plain().jpeg().toBuffer()
  const kept = Buffer.from(bytes)
  const taking = shelf.take(bytes, 'strap.jpg')
  await new Promise((resolve) => setTimeout(resolve, 0))
  const { sha256 } = await taking
  bytes.fill(0)
  expect(Buffer.compare(Buffer.from((await shelf.read(sha256, 'original'))?.bytes ?? []), kept)).toBe(0)
})

test.each(['small', 'large'] as const)('a missing %s preview is made again from the original', async (size) => {
  const folder = await emptyFolder()
  const { sha256 } = await openShelf(folder).take(await plain(blue, 900, 700).jpeg().toBuffer(), 'strap.jpg')
  const before = await openShelf(folder).read(sha256, size)
  await rm(join(folder, 'previews'), { recursive: true })
  const after = await openShelf(folder).read(sha256, size)
  expect(Buffer.compare(Buffer.from(after?.bytes ?? []), Buffer.from(before?.bytes ?? []))).toBe(0)
  expect((await filesIn(folder)).filter((file) => file.startsWith('previews/'))).toHaveLength(2)
})

test('what is not on the shelf is not found, and a name that is no SHA-256 leads nowhere', async () => {
  const folder = await emptyFolder()
  const shelf = openShelf(join(folder, 'shelf'))
  await writeFile(join(folder, 'secret.jpg'), 'secret')
  const names = ['0'.repeat(64), '../secret', '../../secret.jpg', `${'a'.repeat(62)}/.`, 'A'.repeat(64), `${'a'.repeat(64)}\n`, '', `..${'a'.repeat(62)}`, '%2e%2e%2fsecret']
  for (const name of names) for (const size of ['small', 'large', 'original'] as const) expect(await shelf.read(name, size)).toBeUndefined()
})

test('one refused photograph leaves the rest of the batch to go in', async () => {
  const shelf = openShelf(await emptyFolder())
  const good = await Promise.all([1, 2, 3].map((width) => plain(blue, 40 + width).jpeg().toBuffer()))
  const batch = [good[0], Buffer.from('text'), good[1], Buffer.alloc(0), good[2]].map((bytes, index) => shelf.take(bytes ?? Buffer.alloc(0), `${index}.jpg`))
  expect((await Promise.allSettled(batch)).map((each) => each.status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'rejected', 'fulfilled'])
})
