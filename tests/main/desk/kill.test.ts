import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { beforeAll, expect, test } from 'vitest'
import { openDesk, type OpenedDesk } from '../../../main/desk/open'
import { newFolder } from './yard-on-disk'

const root = fileURLToPath(new URL('../../..', import.meta.url))
const bundleFolder = join(root, 'tests', 'output', 'scripted-survey')
const moments = 100
const lanes = 2
/** The moment lies so many calls and milliseconds after the first call; counted in calls, a busy machine does as much work as an idle one. */
const mostCalls = 9
const mostMs = 12
/** Some are killed while they are still starting. */
const shareOfEarly = 0.12
const longestStartMs = 500

beforeAll(async () => {
  await build({
    configFile: false, root, logLevel: 'error',
    // In one file it starts in half the time, and it starts a hundred times.
    ssr: { noExternal: true, external: ['better-sqlite3', 'pdfkit', 'sharp'] },
    build: { ssr: join(root, 'tests/main/desk/scripted-survey.ts'), outDir: bundleFolder, emptyOutDir: true, rolldownOptions: { output: { entryFileNames: 'scripted-survey.mjs' } } },
  })
}, 60_000)

/** Chance with a seed, so that a failing run can be run again. Source: mulberry32, public domain. */
const chance = (seed: number): (() => number) => {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** All that a yard has acknowledged, over every life of the program. */
interface Acknowledged {
  readonly answers: Map<string, number>
  readonly photographs: Set<string>
  readonly reports: Map<string, string>
  surveyId: string | undefined
  /** The newest count that was asked for, acknowledged or not. */
  asked: number
}

const take = (acknowledged: Acknowledged, line: string): void => {
  const [what, first = '', second = '', third = ''] = line.split('\t')
  if (what === 'ready') acknowledged.surveyId = first
  if (what === 'asking') acknowledged.asked = Number(first)
  if (what === 'answered') acknowledged.answers.set(`${first} @ ${second}`, Number(third))
  if (what === 'photographed') acknowledged.photographs.add(first)
  if (what === 'issued') acknowledged.reports.set(first, second)
}

interface Moment {
  /** Calls begun before the kill; none for one that is killed while starting. */
  readonly calls: number
  readonly thenMs: number
}

const randomMoment = (random: () => number): Moment =>
  random() < shareOfEarly ? { calls: 0, thenMs: random() * longestStartMs } : { calls: 1 + Math.floor(random() * mostCalls), thenMs: random() * mostMs }

/** One life: from the start of the program to its SIGKILL. */
const live = (folder: string, acknowledged: Acknowledged, { calls, thenMs }: Moment): Promise<void> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(bundleFolder, 'scripted-survey.mjs'), folder, String(acknowledged.asked)], { stdio: ['ignore', 'pipe', 'pipe'] })
    let rest = ''
    let trouble = ''
    let timer: NodeJS.Timeout | undefined
    const killLater = (): void => {
      timer ??= setTimeout(() => child.kill('SIGKILL'), thenMs)
    }
    let begun = 0
    if (calls === 0) killLater()
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      const lines = (rest + text).split('\n')
      // What follows the last line end was cut off by the kill: it was not acknowledged.
      rest = lines.pop() ?? ''
      for (const line of lines) {
        take(acknowledged, line)
        if (line.startsWith('asking')) begun += 1
      }
      if (begun >= calls) killLater()
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => (trouble += text))
    child.on('error', reject)
    child.on('close', (_code, signal) => (signal === 'SIGKILL' ? resolve() : reject(new Error(`the scripted survey ended by itself: ${trouble}`))))
  })

const hashOf = (file: string): string => createHash('sha256').update(readFileSync(file)).digest('hex')

const filesIn = (folder: string): string[] =>
  existsSync(folder) ? readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)) : []

const checkAnswers = async (opened: OpenedDesk, { surveyId = '', answers, asked }: Acknowledged): Promise<void> => {
  const survey = await opened.desk['surveys.get']({ surveyId })
  const kept = new Map(survey.answers.map(({ checkId, position, answer }) => [`${checkId} @ ${position}`, Number(answer.note)]))
  for (const [place, count] of answers) expect([count, asked], `${place}: acknowledged ${count}`).toContain(kept.get(place))
}

const checkPhotographs = async (opened: OpenedDesk, folder: string, { surveyId = '', photographs }: Acknowledged): Promise<void> => {
  const rows = new Set((await opened.desk['surveys.get']({ surveyId })).photographs.map(({ sha256 }) => sha256))
  for (const sha256 of photographs) expect(rows).toContain(sha256)
  const files = filesIn(join(folder, 'photographs', 'originals'))
  expect(new Set(files.map((file) => basename(file).slice(0, 64)))).toEqual(rows)
  for (const file of files) expect(hashOf(file)).toBe(basename(file).slice(0, 64))
}

/** A row is there with its entry in the record, or neither is; and all of it fits. */
const checkRecord = async (opened: OpenedDesk, { surveyId = '' }: Acknowledged): Promise<void> => {
  expect((await opened.desk['proof.verify']({ surveyId })).problems).toEqual([])
}

const checkReports = async (opened: OpenedDesk, folder: string, { reports }: Acknowledged): Promise<void> => {
  const rows = (await opened.desk['reports.list']({ offset: 0, limit: 200 })).reports
  for (const [id, sha256] of reports) expect(rows.find((row) => row.id === id)?.pdfSha256).toBe(sha256)
  const files = filesIn(join(folder, 'reports'))
  expect(files.map((file) => basename(file, '.pdf')).toSorted()).toEqual(rows.map((row) => row.pdfSha256).toSorted())
  for (const file of files) expect(hashOf(file)).toBe(basename(file, '.pdf'))
}

/** Opens the yard as the next start does, lets it clear up, and holds it to what it acknowledged. */
const checkYard = async (folder: string, acknowledged: Acknowledged): Promise<void> => {
  const opened = await openDesk(folder)
  try {
    expect(await opened.missingPhotographs()).toEqual([])
    if (acknowledged.surveyId === undefined) return
    await checkAnswers(opened, acknowledged)
    await checkPhotographs(opened, folder, acknowledged)
    await checkReports(opened, folder, acknowledged)
    await checkRecord(opened, acknowledged)
  } finally {
    await opened.close()
  }
}

const liveAgainAndAgain = async (seed: number, times: number): Promise<Acknowledged> => {
  const folder = newFolder()
  const random = chance(seed)
  const acknowledged: Acknowledged = { answers: new Map(), photographs: new Set(), reports: new Map(), surveyId: undefined, asked: 0 }
  for (let life = 0; life < times; life += 1) {
    await live(folder, acknowledged, randomMoment(random))
    await checkYard(folder, acknowledged)
  }
  return acknowledged
}

test(`killed at ${moments} random moments, the yard keeps every acknowledged answer, photograph and report, no file without its row, and no row without its entry in the record`, async () => {
  const lives = await Promise.all(Array.from({ length: lanes }, (_, lane) => liveAgainAndAgain(20_261_125 + lane, moments / lanes)))
  const counts = lives.map(({ asked, photographs, reports }) => ({ asked, photographs: photographs.size, reports: reports.size }))
  console.log(`killed ${moments} times: ${JSON.stringify(counts)}`)
  // The test is only worth something when there was much to lose.
  for (const each of counts) {
    expect(each.asked).toBeGreaterThan(80)
    expect(each.photographs).toBeGreaterThan(15)
    expect(each.reports).toBeGreaterThan(3)
  }
}, 600_000)
