import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { decode } from '../../main/photos/decoder'
import { makePreviews } from '../../main/photos/previews'
import { writeReport } from '../../main/report/write-report'
import { sampleReport } from '../main/report/sample-report'
import type { BenchLine } from './intake'
import { twelveMegapixels } from './twelve-megapixels'

const photographCount = 100
const differentPictures = 10
const budget = { seconds: 3, megabytes: 400, bytes: 15_000_000 }

/** The greatest memory the whole process held while a job ran, and how long the job took. */
const measure = async <Result>(job: () => Promise<Result>): Promise<{ result: Result; seconds: number; peakMegabytes: number }> => {
  let peak = process.memoryUsage.rss()
  const watch = setInterval(() => {
    peak = Math.max(peak, process.memoryUsage.rss())
  }, 5)
  const begun = performance.now()
  try {
    const result = await job()
    return { result, seconds: (performance.now() - begun) / 1000, peakMegabytes: Math.max(peak, process.memoryUsage.rss()) / 1_000_000 }
  } finally {
    clearInterval(watch)
  }
}

/** Previews as the intake makes them from twelve-megapixel pictures. Ten pictures under a hundred names: each name is embedded by itself. */
const previews = async (): Promise<Buffer[]> => {
  const made: Buffer[] = []
  for (let seed = 0; seed < differentPictures; seed += 1) made.push((await makePreviews(await decode(await twelveMegapixels(seed), `picture ${seed}`))).large)
  return made
}

/** A report of a hundred photographs with its previews at hand: time, memory and size. */
export const benchReport = async (): Promise<BenchLine[]> => {
  const folder = await mkdtemp(join(tmpdir(), 'bench-report-'))
  try {
    const pictures = await previews()
    const report = sampleReport({ findings: 0.12, photographs: photographCount })
    const numbers = new Map(report.photographs.map(({ sha256, number }) => [sha256, number]))
    const pictureOf = (sha256: string): Promise<Uint8Array> => Promise.resolve(pictures[(numbers.get(sha256) ?? 0) % differentPictures] ?? Buffer.alloc(0))
    const { result, seconds, peakMegabytes } = await measure(() => writeReport(report, pictureOf, join(folder, 'report.pdf')))
    const line = (name: string, value: number, unit: string, limit: number): BenchLine => ({ name, value, unit, budget: `under ${limit} ${unit}`, ok: value < limit })
    return [
      line(`report of ${photographCount} photographs: time`, Math.round(seconds * 100) / 100, 's', budget.seconds),
      line(`report of ${photographCount} photographs: memory of the whole process`, Math.round(peakMegabytes), 'MB', budget.megabytes),
      line(`report of ${photographCount} photographs: size`, result.byteCount, 'bytes', budget.bytes),
    ]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
