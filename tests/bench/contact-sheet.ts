import type { CDPSession, Page } from 'playwright-core'
import { catalogue } from '../../shared-logic/checks/catalogue'
import { askedChecks } from '../../shared-logic/survey/assess'
import { tandem } from '../../main/example/rigs'
import { openDesk } from '../../main/desk/open'
import { findChromium } from '../find-chromium'
import { makeYardFolder, startProgram } from '../walk/program'
import { openBrowser, openWindow } from '../walk/window'
import { atShare, type BenchLine } from './bench-line'
import { manyPhotographs } from './many-photographs'

const photographCount = 500
/** The issue: never below fifty frames a second. */
const leastFramesPerSecond = 50
const nearlyAllMs = 1000 / leastFramesPerSecond
/** Brisk: a row of the sheet every tenth of a second. */
const pixelsPerSecond = 3_000
const passes = 3

/** A survey of five hundred photographs, most of them at checks, taken in through the desk. Answers its address. */
const fillYard = async (folder: string): Promise<string> => {
  const { desk, close } = await openDesk(folder)
  try {
    const { id: rigId } = await desk['rigs.save']({ rig: tandem })
    const { today } = await desk['yard.about']({})
    const survey = await desk['surveys.start']({ rigId, purpose: 'purchase', surveyDate: today, ruleBook: 'us' })
    const places = askedChecks(catalogue, survey)
    const photographs = await manyPhotographs(photographCount)
    await Promise.all(photographs.map((bytes, index) => {
      const place = index % 10 === 9 ? undefined : places[(index * 7) % places.length]
      return desk['photographs.add']({ surveyId: survey.id, fileName: `DSC_${4000 + index}.jpg`, source: 'file', ...(place && { checkId: place.check.id, position: place.position }) }, bytes)
    }))
    return `/surveys/${survey.id}/photographs`
  } finally {
    await close()
  }
}

/** Notes the time of each frame until it is asked. */
const watchFrames = (page: Page) =>
  page.evaluateHandle(() => {
    const times: number[] = []
    const note = (ms: number): void => {
      times.push(ms)
      requestAnimationFrame(note)
    }
    requestAnimationFrame(note)
    return times
  })

/** From the top of the sheet to its end by the browser's own scrolling, as from a wheel or a finger. Answers from frame to frame, ms. */
const scrollThrough = async (page: Page, browser: CDPSession): Promise<number[]> => {
  await page.evaluate(() => window.scrollTo(0, 0))
  await page.waitForTimeout(500)
  const way = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight)
  const watched = await watchFrames(page)
  await browser.send('Input.synthesizeScrollGesture', { x: 400, y: 500, yDistance: -way - 200, speed: pixelsPerSecond, gestureSourceType: 'mouse', preventFling: true })
  const times = await watched.evaluate((noted) => [...noted])
  const left = await page.evaluate(() => document.documentElement.scrollHeight - window.innerHeight - window.scrollY)
  if (left > 2) throw new Error(`the sheet was not scrolled to its end: ${left} px are left of ${way}`)
  return times.slice(1).map((ms, index) => ms - (times[index] ?? Number.NaN))
}

/** The fewest frames of any second of the way. */
const slowestSecond = (intervalsMs: readonly number[]): number => {
  const ends: number[] = []
  let at = 0
  for (const ms of intervalsMs) ends.push((at += ms))
  const counts = ends.flatMap((end, index) => (end < 1000 ? [] : [ends.slice(0, index + 1).filter((each) => each > end - 1000).length]))
  return Math.min(...counts)
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
const rounded = (value: number): number => Math.round(value * 10) / 10

const linesOf = (first: readonly number[], runs: readonly (readonly number[])[]): BenchLine[] => {
  const atFirst = slowestSecond(first)
  const middle = (of: (run: readonly number[]) => number): number => atShare(runs.map(of), 0.5)
  const fewest = middle(slowestSecond)
  const p95 = middle((run) => atShare(run, 0.95))
  return [
    { name: 'contact sheet of 500, scrolled through for the first time: frames in its slowest second', value: atFirst, unit: '', budget: `at least ${leastFramesPerSecond}`, ok: atFirst >= leastFramesPerSecond },
    { name: 'scrolled through again: frames in its slowest second', value: fewest, unit: '', budget: `at least ${leastFramesPerSecond}`, ok: fewest >= leastFramesPerSecond },
    { name: 'from frame to frame, mean', value: rounded(middle(mean)), unit: 'ms', budget: 'none', ok: true },
    { name: 'from frame to frame, 95 of 100 within', value: rounded(p95), unit: 'ms', budget: `at most ${nearlyAllMs} ms`, ok: p95 <= nearlyAllMs },
    { name: 'from frame to frame, the worst', value: rounded(middle((run) => Math.max(...run))), unit: 'ms', budget: 'none', ok: true },
  ]
}

/** The contact sheet of 500 photographs scrolled from top to bottom in a real browser: the first time, when every picture has yet to be fetched, and the middle one of three passes after it. */
export const benchContactSheet = async (): Promise<BenchLine[]> => {
  if (findChromium() === undefined) return [{ name: 'contact sheet, no Chromium was found', value: undefined, unit: '', budget: `at least ${leastFramesPerSecond}`, ok: undefined }]
  const { yard, remove } = await makeYardFolder()
  const route = await fillYard(yard)
  const program = await startProgram(yard)
  const browser = await openBrowser()
  try {
    const { page } = await openWindow(browser, program.address)
    await page.goto(`${new URL(program.address).origin}/#${route}`)
    await page.getByRole('row').first().waitFor()
    const session = await page.context().newCDPSession(page)
    const runs: number[][] = []
    for (let pass = 0; pass <= passes; pass += 1) runs.push(await scrollThrough(page, session))
    return linesOf(runs[0] ?? [], runs.slice(1))
  } finally {
    await browser.close()
    await program.end('SIGTERM')
    await remove()
  }
}
