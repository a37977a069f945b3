import { readFileSync } from 'node:fs'
import { appendFile, readFile, rm, writeFile } from 'node:fs/promises'
import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { openShelf } from '../../../main/photos/shelf'
import { blue, plain, red } from './pictures'
import { emptyFolder, filesIn } from './shelf-folder'

const sha256 = (bytes: Uint8Array | undefined): string => createHash('sha256').update(bytes ?? new Uint8Array()).digest('hex')
const sizes = ['large', 'small'] as const
const fileOf = (folder: string, hash: string, size: 'large' | 'small'): string => join(folder, 'previews', size, hash.slice(0, 2), `${hash}.jpg`)

const scene = plain(blue, 900, 700)
const originals = {
  JPEG: () => scene.clone().jpeg().toBuffer(), PNG: () => scene.clone().png().toBuffer(), WebP: () => scene.clone().webp().toBuffer(), TIFF: () => scene.clone().tiff().toBuffer(), AVIF: () => scene.clone().avif().toBuffer(),
  HEIC: async () => readFileSync(new URL('fixtures/scene-p3.heic', import.meta.url)),
}
const forged = (): Promise<Buffer> => plain(red, 900, 700).jpeg().toBuffer()

describe.each(Object.entries(originals))('the copies of a %s', (_format, original) => {
  test('are known by the hashes of what lies on the disk, and come out alike every time they are made', async () => {
    const [one, two] = [await emptyFolder(), await emptyFolder()]
    const bytes = await original()
    const taken = await openShelf(one).take(bytes, 'hub')
    for (const size of sizes) expect(sha256(await readFile(fileOf(one, taken.sha256, size)))).toBe(taken.previews[size])
    expect((await openShelf(two).take(bytes, 'hub')).previews).toEqual(taken.previews)
  })

  test.each(sizes)('are made again where the %s one was changed: what lies there is never given out', async (size) => {
    const folder = await emptyFolder()
    const { sha256: hash, previews } = await openShelf(folder).take(await original(), 'hub')
    for (const change of [async () => writeFile(fileOf(folder, hash, size), await forged()), () => appendFile(fileOf(folder, hash, size), 'x'), () => writeFile(fileOf(folder, hash, size), ''), () => rm(fileOf(folder, hash, size))]) {
      await change()
      expect(sha256((await openShelf(folder).read(hash, size, previews))?.bytes)).toBe(previews[size])
      expect(sha256(await readFile(fileOf(folder, hash, size)))).toBe(previews[size])
    }
  })
})

test('copies of which nothing is recorded are made again, once a run, and said to have been', async () => {
  const folder = await emptyFolder()
  const { sha256: hash, previews } = await openShelf(folder).take(await originals.JPEG(), 'hub.jpg')
  await writeFile(fileOf(folder, hash, 'large'), await forged())
  const shelf = openShelf(folder)
  const read = await shelf.read(hash, 'large')
  expect([sha256(read?.bytes), read?.previews]).toEqual([previews.large, previews])
  await rm(join(folder, 'originals'), { recursive: true })
  expect(sha256((await shelf.read(hash, 'small'))?.bytes)).toBe(previews.small)
})

test('copies that are as recorded are given out as they are, with the original gone or changed too', async () => {
  const folder = await emptyFolder()
  const { sha256: hash, previews } = await openShelf(folder).take(await originals.JPEG(), 'hub.jpg')
  await rm(join(folder, 'originals'), { recursive: true })
  const read = await openShelf(folder).read(hash, 'large', previews)
  expect(sha256(read?.bytes)).toBe(previews.large)
  expect(read?.previews).toBeUndefined()
})

test('no copy is made of an original that was changed, and the original itself is not given out', async () => {
  const folder = await emptyFolder()
  const { sha256: hash, previews } = await openShelf(folder).take(await originals.JPEG(), 'hub.jpg')
  await writeFile(join(folder, 'originals', hash.slice(0, 2), `${hash}.jpg`), await forged())
  await writeFile(fileOf(folder, hash, 'large'), await forged())
  const shelf = openShelf(folder)
  for (const size of ['large', 'original'] as const) await expect(shelf.read(hash, size, previews)).rejects.toMatchObject({ data: { code: 'photograph.original-changed', values: { sha256: hash.slice(0, 12) } } })
  expect(sha256((await shelf.read(hash, 'small', previews))?.bytes)).toBe(previews.small)
})

test.each(['the same run', 'a later run'])('a photograph that comes in again in %s puts right what was changed of it', async (run) => {
  const folder = await emptyFolder()
  const first = openShelf(folder)
  const bytes = await originals.JPEG()
  const taken = await first.take(bytes, 'hub.jpg')
  const files = (await filesIn(folder)).map((file) => join(folder, file))
  const before = await Promise.all(files.map((file) => readFile(file)))
  for (const file of files) await writeFile(file, await forged())
  expect(await (run === 'the same run' ? first : openShelf(folder)).take(bytes, 'again.jpg')).toEqual(taken)
  expect(await Promise.all(files.map((file) => readFile(file)))).toEqual(before)
})
