import { spawnSync } from 'node:child_process'
import { createHash, randomBytes } from 'node:crypto'
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { harmedOriginals } from '../../main/desk/harmed-originals'
import { decode } from '../../main/photos/decoder'
import { foldersOf } from '../../main/photos/folders'
import { makePreviews } from '../../main/photos/previews'
import { writeReport } from '../../main/report/write-report'
import { reportDocumentSchema } from '../../shared-logic/report/document'
import { sampleReport } from '../main/report/sample-report'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { BenchLine } from './bench-line'
import { twelveMegapixels } from './twelve-megapixels'

const photographCount = 100
const differentPictures = 10
/** Of a telephone's photograph: common practice, no source. */
const originalBytes = 5_000_000
const budget = { seconds: 3, readingSeconds: 2, megabytes: 400, bytes: 15_000_000 }

interface Measured {
  readonly seconds: number
  /** Reading every original anew, which goes before. */
  readonly readingSeconds: number
  readonly peakMegabytes: number
  readonly byteCount: number
}

/** The report and its previews laid ready as files; ten pictures under a hundred names, each embedded by itself. */
const layReady = async (folder: string): Promise<void> => {
  const report = sampleReport({ findings: 0.12, photographs: photographCount })
  await writeFile(join(folder, 'report.json'), JSON.stringify(report))
  for (let seed = 0; seed < differentPictures; seed += 1) {
    const { large } = await makePreviews(await decode(await twelveMegapixels(seed), `picture ${seed}`))
    for (const { sha256, number } of report.photographs) if (number % differentPictures === seed) await writeFile(join(folder, sha256), large)
  }
}

/** As many originals as photographs, on the shelf as they came in; what is recorded of them. */
const layOriginals = async (folder: string): Promise<void> => {
  const recorded: Pick<RecordedPhotograph, 'sha256' | 'byteCount' | 'facts'>[] = []
  for (let count = 0; count < photographCount; count += 1) {
    const bytes = randomBytes(originalBytes)
    const sha256 = createHash('sha256').update(bytes).digest('hex')
    const file = foldersOf(join(folder, 'photographs')).original(sha256, 'jpeg')
    await mkdir(dirname(file), { recursive: true })
    await writeFile(file, bytes)
    recorded.push({ sha256, byteCount: bytes.byteLength, facts: { format: 'jpeg' } as RecordedPhotograph['facts'] })
  }
  await writeFile(join(folder, 'originals.json'), JSON.stringify(recorded))
}

const readOriginals = async (folder: string): Promise<number> => {
  const recorded = JSON.parse(await readFile(join(folder, 'originals.json'), 'utf8')) as RecordedPhotograph[]
  const begun = performance.now()
  const harmed = await harmedOriginals(folder, recorded, new Map())
  if (harmed.length > 0) throw new Error('the originals were not read as they were laid')
  return (performance.now() - begun) / 1000
}

/** Run in a process that has done nothing else: its greatest memory is the report's and the runtime's own. */
export const measureReport = async (folder: string): Promise<Measured> => {
  const report = reportDocumentSchema.parse(JSON.parse(await readFile(join(folder, 'report.json'), 'utf8')))
  const readingSeconds = await readOriginals(folder)
  const begun = performance.now()
  const { byteCount } = await writeReport(report, (sha256) => readFile(join(folder, sha256)), join(folder, 'report.pdf'))
  return { seconds: (performance.now() - begun) / 1000, readingSeconds, peakMegabytes: process.resourceUsage().maxRSS / 1000, byteCount }
}

const inOwnProcess = (folder: string): Measured => {
  const script = `const { measureReport } = await import(${JSON.stringify(import.meta.url)}); process.stdout.write(JSON.stringify(await measureReport(${JSON.stringify(folder)})))`
  const { status, stdout } = spawnSync(process.execPath, ['--input-type=module', '--eval', script], { stdio: ['ignore', 'pipe', 'inherit'], encoding: 'utf8' })
  if (status !== 0) throw new Error('the process that wrote the report broke off')
  return JSON.parse(stdout) as Measured
}

/** A report of a hundred photographs with its previews at hand, and its originals read anew before: time, memory and size. */
export const benchReport = async (): Promise<BenchLine[]> => {
  const folder = await mkdtemp(join(tmpdir(), 'bench-report-'))
  try {
    await layReady(folder)
    await layOriginals(folder)
    const { seconds, readingSeconds, peakMegabytes, byteCount } = inOwnProcess(folder)
    const line = (name: string, value: number, unit: string, limit: number): BenchLine => ({ name, value, unit, budget: `under ${limit} ${unit}`, ok: value < limit })
    return [
      line(`report of ${photographCount} photographs: time`, Math.round(seconds * 100) / 100, 's', budget.seconds),
      line(`report of ${photographCount} photographs: reading ${photographCount} originals of 5 MB anew before`, Math.round(readingSeconds * 100) / 100, 's', budget.readingSeconds),
      line(`report of ${photographCount} photographs: memory of the whole process`, Math.round(peakMegabytes), 'MB', budget.megabytes),
      line(`report of ${photographCount} photographs: size`, Math.round(byteCount / 10_000) / 100, 'MB', budget.bytes / 1_000_000),
    ]
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
