import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { openLanes } from '../../main/photos/lanes'
import { openShelf } from '../../main/photos/shelf'
import type { BenchLine } from './bench-line'
import { twelveMegapixels, withComment } from './twelve-megapixels'

const photographCount = 100
const differentPictures = 10
const leastShareOfBare = 0.8
const reportByteLimit = 15_000_000
/** What the shelf's forecast chooses for these pictures; the bare run is told, the shelf has to find out. */
const bareQuality = 54

/** The same two resizes by the imaging library alone: nothing hashed, checked, read out or written. */
const bare = async (bytes: Buffer): Promise<void> => {
  const large = await sharp(bytes).autoOrient().resize({ width: 1600, height: 1600, fit: 'inside' }).jpeg({ quality: bareQuality, mozjpeg: true }).toBuffer()
  await sharp(large).resize({ width: 320, height: 320, fit: 'inside' }).jpeg({ quality: 72 }).toBuffer()
}

const secondsOf = async (job: () => Promise<unknown>): Promise<number> => {
  const start = performance.now()
  await job()
  return (performance.now() - start) / 1000
}

const runBare = (photographs: readonly Buffer[]): Promise<number> => {
  const lanes = openLanes(2)
  return secondsOf(() => Promise.all(photographs.map((bytes) => lanes.run(() => bare(bytes)))))
}

/** Seconds for all, and the weight of their large previews. */
const runShelf = async (photographs: readonly Buffer[], folder: string): Promise<{ readonly seconds: number; readonly largeBytes: number }> => {
  const shelf = openShelf(folder)
  const taken: string[] = []
  const seconds = await secondsOf(() => Promise.all(photographs.map(async (bytes, index) => taken.push((await shelf.take(bytes, `photograph ${index}.jpg`)).sha256))))
  let largeBytes = 0
  for (const sha256 of taken) largeBytes += (await shelf.read(sha256, 'large'))?.bytes.byteLength ?? Number.NaN
  return { seconds, largeBytes }
}

/**
 * Intake of 100 photographs of 12 MP against bare sharp doing the same two resizes in the same run, half of each by
 * turns, so that a machine that slows down slows both.
 */
export const benchIntake = async (): Promise<BenchLine[]> => {
  const pictures: Buffer[] = []
  for (let seed = 1; seed <= differentPictures; seed++) pictures.push(await twelveMegapixels(seed))
  const photographs = Array.from({ length: photographCount }, (_, index) => withComment(pictures[index % differentPictures] ?? Buffer.alloc(0), index))
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-intake-'))
  try {
    const half = photographCount / 2
    const halves = [photographs.slice(0, half), photographs.slice(half)]
    await runBare(halves[0]?.slice(0, 4) ?? [])
    let [bareSeconds, shelfSeconds, largeBytes] = [0, 0, 0]
    for (const some of halves) {
      bareSeconds += await runBare(some)
      const shelved = await runShelf(some, folder)
      shelfSeconds += shelved.seconds
      largeBytes += shelved.largeBytes
    }
    const share = bareSeconds / shelfSeconds
    return [
      { name: 'intake of 100 photographs of 12 MP, against bare sharp', value: Number(share.toFixed(2)), unit: 'of bare', budget: `at least ${leastShareOfBare}`, ok: share >= leastShareOfBare },
      { name: 'photographs taken in', value: Number((photographCount / shelfSeconds).toFixed(1)), unit: 'per second', budget: 'none', ok: true },
      { name: 'large previews of 100 photographs', value: Number((largeBytes / 1_000_000).toFixed(1)), unit: 'MB', budget: 'under 15', ok: largeBytes < reportByteLimit },
    ]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
