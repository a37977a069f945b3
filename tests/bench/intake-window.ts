import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import type { Page } from 'playwright-core'
import { tandem } from '../../main/example/rigs'
import { en } from '../../shared-logic/words/en'
import { findChromium } from '../find-chromium'
import { makeYardFolder, startProgram } from '../walk/program'
import { openBrowser, openWindow } from '../walk/window'
import { atShare, type BenchLine } from './bench-line'
import { manyPhotographs } from './many-photographs'

const photographCount = 500
/** The issue: the window answers within this while they are taken in. */
const budgetMs = 100
const nearlyAll = 0.99
const keyEveryMs = 200

interface Answered {
  /** From a key struck to the frame that shows what it did, as the browser itself times it; 16 where it was less. */
  readonly keysMs: readonly number[]
  /** From a question asked of the desk to its answer. */
  readonly deskMs: readonly number[]
  /** From frame to frame. */
  readonly framesMs: readonly number[]
  readonly seconds: number
}

/** Watches in the page, until it is asked: frames, the desk's answers, and the browser's own timing of keys. Its timing is in steps of 8 ms, and says nothing of keys below 16. */
const watch = (page: Page) =>
  page.evaluateHandle(() => {
    const seen = { keys: [] as number[], desk: [] as number[], frames: [] as number[], isOver: false }
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (entry.name === 'keydown') seen.keys.push(entry.duration)
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit)
    let last: number | undefined
    const frame = (ms: number): void => {
      if (last !== undefined) seen.frames.push(ms - last)
      last = ms
      if (!seen.isOver) requestAnimationFrame(frame)
    }
    requestAnimationFrame(frame)
    const ask = async (): Promise<void> => {
      while (!seen.isOver) {
        const began = performance.now()
        await fetch('api/yard.about', { method: 'POST', body: '{}', headers: { 'content-type': 'application/json' } }).then((response) => response.text())
        seen.desk.push(performance.now() - began)
        await new Promise((resolve) => { setTimeout(resolve, 50) })
      }
    }
    void ask()
    return seen
  })

const writeFiles = async (folder: string): Promise<string[]> => {
  await mkdir(folder)
  const photographs = await manyPhotographs(photographCount, 7)
  return Promise.all(photographs.map(async (bytes, index) => {
    const path = join(folder, `DSC_${4000 + index}.jpg`)
    await writeFile(path, bytes)
    return path
  }))
}

/** Hands all over at once and goes on walking over the sheet by the arrow keys until the last is in. How far it is, is read on the page: the desk is not asked more than a window asks. */
const takeIn = async (page: Page, paths: readonly string[]): Promise<Answered> => {
  const allIn = page.getByText(en.screens.contactSheet.count.replace('{total}', String(photographCount)), { exact: true })
  await page.locator('input[type=file]').setInputFiles(paths.slice(0, 4))
  await page.getByRole('row').nth(3).waitFor()
  await page.getByRole('row').first().focus()
  const watched = await watch(page)
  const began = performance.now()
  await page.locator('input[type=file]').setInputFiles([...paths])
  let struck = 0
  for (; !(await allIn.isVisible()); struck += 1) {
    await page.keyboard.press(struck % 2 === 0 ? 'ArrowRight' : 'ArrowLeft')
    await wait(keyEveryMs)
  }
  const seconds = (performance.now() - began) / 1000
  const { keys, desk, frames } = await watched.evaluate((seen) => {
    seen.isOver = true
    return { keys: [...seen.keys], desk: [...seen.desk], frames: [...seen.frames] }
  })
  return { keysMs: [...keys, ...Array.from({ length: Math.max(0, struck - keys.length) }, () => 16)], deskMs: desk, framesMs: frames, seconds }
}

const rounded = (value: number): number => Math.round(value * 10) / 10

const linesOf = ({ keysMs, deskMs, framesMs, seconds }: Answered): BenchLine[] => {
  const within = (name: string, values: readonly number[], share: number): BenchLine => {
    const value = values.length === 0 ? 0 : atShare(values, share)
    return { name, value: rounded(value), unit: 'ms', budget: `under ${budgetMs} ms`, ok: value < budgetMs }
  }
  const worst = (name: string, values: readonly number[]): BenchLine => ({ name, value: rounded(Math.max(0, ...values)), unit: 'ms', budget: 'none', ok: true })
  return [
    within(`${photographCount} photographs taken in: from a key to the frame that shows it, 99 of 100 within`, keysMs, nearlyAll), worst('from a key to its frame, the worst', keysMs),
    within('from frame to frame, 99 of 100 within', framesMs, nearlyAll), worst('from frame to frame, the worst', framesMs),
    within('the desk’s answer to another question, 99 of 100 within', deskMs, nearlyAll), worst('the desk’s answer, the worst', deskMs),
    { name: 'photographs of 2 MP taken in through the window', value: rounded(photographCount / seconds), unit: 'per second', budget: 'none', ok: true },
  ]
}

/** Five hundred photographs of two megapixels handed over on the contact sheet in a real browser, while somebody goes on working there. */
export const benchIntakeWindow = async (): Promise<BenchLine[]> => {
  if (findChromium() === undefined) return [{ name: 'intake through the window, no Chromium was found', value: undefined, unit: '', budget: `under ${budgetMs} ms`, ok: undefined }]
  const { folder, yard, remove } = await makeYardFolder()
  const paths = await writeFiles(join(folder, 'card'))
  const program = await startProgram(yard)
  const browser = await openBrowser()
  try {
    const { page, ask } = await openWindow(browser, program.address)
    const { id: rigId } = await ask('rigs.save', { rig: tandem })
    const { today } = await ask('yard.about', {})
    const { id: surveyId } = await ask('surveys.start', { rigId, purpose: 'purchase', surveyDate: today, ruleBook: 'us' })
    await page.goto(`${new URL(program.address).origin}/#/surveys/${surveyId}/photographs`)
    await page.getByRole('button', { name: en.screens.contactSheet.add, exact: true }).first().waitFor()
    const answered = await takeIn(page, paths)
    const { photographs } = await ask('surveys.get', { surveyId })
    if (photographs.length !== photographCount) throw new Error(`${photographs.length} of ${photographCount} photographs are in`)
    return linesOf(answered)
  } finally {
    await browser.close()
    await program.end('SIGTERM')
    await remove()
  }
}
