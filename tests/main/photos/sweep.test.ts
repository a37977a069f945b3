import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openShelf } from '../../../main/photos/shelf'
import { plain } from './pictures'
import { emptyFolder, filesIn } from './shelf-folder'

/** Photographs taken by a run that ended before their rows were written. */
const leftBehind = async (folder: string, count: number): Promise<string[]> => {
  const shelf = openShelf(folder)
  const taken: string[] = []
  for (let index = 0; index < count; index++) taken.push((await shelf.take(await plain(undefined, 40 + index).jpeg().toBuffer(), `${index}.jpg`)).sha256)
  return taken
}

test('a crash between original and row: the sweep takes it off the shelf and keeps the evidence aside', async () => {
  const folder = await emptyFolder()
  const [kept = '', lost = ''] = await leftBehind(folder, 2)
  const swept = await openShelf(folder).sweep(new Set([kept]))
  expect(swept).toEqual({ removedFiles: 3, missing: [] })
  const files = await filesIn(folder)
  expect(files.filter((file) => file.includes(kept))).toHaveLength(3)
  expect(files.filter((file) => file.includes(lost))).toEqual([`unrecorded/${lost}.jpg`])
  expect(await openShelf(folder).read(lost, 'large')).toBeUndefined()
})

test('an original set aside returns when a row names it again', async () => {
  const folder = await emptyFolder()
  const [sha256 = ''] = await leftBehind(folder, 1)
  await openShelf(folder).sweep(new Set())
  expect(await openShelf(folder).sweep(new Set([sha256]))).toEqual({ removedFiles: 0, missing: [] })
  expect((await openShelf(folder).read(sha256, 'small'))?.mimeType).toBe('image/jpeg')
})

test('a recorded photograph without its original is named as missing', async () => {
  const folder = await emptyFolder()
  const [here = '', gone = ''] = await leftBehind(folder, 2)
  await rm(join(folder, 'originals', gone.slice(0, 2), `${gone}.jpg`))
  expect((await openShelf(folder).sweep(new Set([here, gone]))).missing).toEqual([gone])
})

test('halves of files of an earlier run go; what a person laid into the folder stays', async () => {
  const folder = await emptyFolder()
  const [sha256 = ''] = await leftBehind(folder, 1)
  const ours = join(folder, 'originals', sha256.slice(0, 2))
  const half = `.${'0'.repeat(8)}-0000-4000-8000-${'0'.repeat(12)}-${'1'.repeat(8)}-1111-4111-8111-${'1'.repeat(12)}.part`
  await writeFile(join(ours, half), 'half')
  await mkdir(join(folder, 'originals', 'zz'), { recursive: true })
  const theirs = ['originals/notes.txt', `originals/zz/${'a'.repeat(64)}.jpg`, `originals/${'b'.repeat(64)}.jpg`, 'originals/zz/.hidden.part']
  for (const file of theirs) await writeFile(join(folder, file), 'mine')
  const swept = await openShelf(folder).sweep(new Set([sha256]))
  expect(swept.removedFiles).toBe(1)
  const files = await filesIn(folder)
  expect(files.some((file) => file.endsWith(half))).toBe(false)
  for (const file of theirs) expect(await readFile(join(folder, file), 'utf8')).toBe('mine')
})

test('a photograph taken in this run is left alone while its row is still being written', async () => {
  const folder = await emptyFolder()
  const shelf = openShelf(folder)
  const { sha256 } = await shelf.take(await plain().jpeg().toBuffer(), 'strap.jpg')
  expect(await shelf.sweep(new Set())).toEqual({ removedFiles: 0, missing: [] })
  expect(await shelf.read(sha256, 'original')).toBeDefined()
})

test('an empty shelf is swept without a fault', async () => {
  const folder = join(await emptyFolder(), 'not yet there')
  expect(await openShelf(folder).sweep(new Set())).toEqual({ removedFiles: 0, missing: [] })
})
