import { setTimeout as wait } from 'node:timers/promises'
import type { Page } from 'playwright-core'
import { tandem } from '../../main/example/rigs'
import { en } from '../../shared-logic/words/en'
import { findChromium } from '../find-chromium'
import { makeYardFolder, startProgram } from '../walk/program'
import { openBrowser, openWindow } from '../walk/window'
import { atShare, type BenchLine } from './bench-line'

/** Sixty frames a second are 16.7 ms each; most frames have to show other figures, for still ones cost nothing. */
const budget = { meanMs: 17, nearlyAllMs: 18, drawnAnew: 0.7 }
const nearlyAll = 0.95
const dragMs = 2_000
/** As often as a usual mouse reports, or nearly. */
const mouseEveryMs = 8
/** Share of the slider's way that the hand swings to each side, and how long one swing there and back takes. */
const swing = { share: 0.06, ms: 1_000 }
const drags = 3

interface Frames {
  readonly intervalsMs: readonly number[]
  /** Share of the frames in which something was drawn anew. */
  readonly drawnAnew: number
}

/** Notes the time of each frame and whether anything in the drawing was drawn anew since the one before, until it is asked. Its figures alone would not tell: rounded, they stand still while the axle moves. */
const watchFrames = (page: Page) =>
  page.evaluateHandle(() => {
    const drawing = document.querySelector('figure svg[role=img]')
    const frames: { readonly ms: number; readonly isNew: boolean }[] = []
    let isNew = false
    if (drawing) new MutationObserver(() => { isNew = true }).observe(drawing, { subtree: true, attributes: true, childList: true, characterData: true })
    const note = (ms: number): void => {
      frames.push({ ms, isNew })
      isNew = false
      requestAnimationFrame(note)
    }
    requestAnimationFrame(note)
    return frames
  })

const dragOnce = async (page: Page): Promise<Frames> => {
  const slider = page.getByRole('slider', { name: en.screens.sums.handles.axle })
  const thumb = await slider.locator('xpath=../..').boundingBox()
  const track = await slider.locator('xpath=../../..').boundingBox()
  if (thumb === null || track === null) throw new Error('nothing here can be dragged')
  const [x, y] = [thumb.x + thumb.width / 2, thumb.y + thumb.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const watched = await watchFrames(page)
  // Straight to the browser: Playwright's own mouse looks for a drag and drop in the page before and after each movement.
  const browser = await page.context().newCDPSession(page)
  // As from a hand: the next movement does not wait until the window is done with the last.
  const sent: Promise<unknown>[] = []
  const began = performance.now()
  for (let ms = 0; ms < dragMs; ms = performance.now() - began) {
    const toX = x + Math.sin((ms / swing.ms) * 2 * Math.PI) * swing.share * track.width
    sent.push(browser.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x: toX, y, button: 'left', buttons: 1 }))
    await wait(mouseEveryMs)
  }
  await Promise.all(sent)
  const frames = await watched.evaluate((noted) => [...noted])
  await browser.detach()
  await page.mouse.move(x, y)
  await page.mouse.up()
  const pairs = frames.slice(1).map((frame, index) => ({ ms: frame.ms - (frames[index]?.ms ?? Number.NaN), isNew: frame.isNew }))
  return { intervalsMs: pairs.map(({ ms }) => ms), drawnAnew: pairs.filter(({ isNew }) => isNew).length / pairs.length }
}

/** The example's tandem in the built program, in a window of a desk. */
const openSums = async (drag: (page: Page) => Promise<Frames[]>): Promise<Frames[]> => {
  const { yard, remove } = await makeYardFolder()
  const program = await startProgram(yard)
  const browser = await openBrowser()
  try {
    const { page, ask } = await openWindow(browser, program.address)
    const { id } = await ask('rigs.save', { rig: tandem })
    await page.goto(`${new URL(program.address).origin}/#/rigs/${id}/sums`)
    await page.getByRole('img', { name: /^The rig from the side/ }).scrollIntoViewIfNeeded()
    return await drag(page)
  } finally {
    await browser.close()
    await program.end('SIGTERM')
    await remove()
  }
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const linesOf = (frames: readonly Frames[]): BenchLine[] => {
  const meanMs = atShare(frames.map(({ intervalsMs }) => mean(intervalsMs)), 0.5)
  const nearlyAllMs = atShare(frames.map(({ intervalsMs }) => atShare(intervalsMs, nearlyAll)), 0.5)
  const drawnAnew = Math.min(...frames.map((each) => each.drawnAnew))
  const line = (name: string, ms: number, most: number): BenchLine => ({ name, value: Math.round(ms * 10) / 10, unit: 'ms', budget: `at most ${most} ms`, ok: ms <= most })
  return [
    line('dragging the axle, from frame to frame, mean', meanMs, budget.meanMs), line('dragging the axle, 95 of 100 frames within', nearlyAllMs, budget.nearlyAllMs),
    // Frames that show nothing new cost nothing: the figures above are worth something only where most do.
    { name: 'dragging the axle, frames drawn anew', value: Math.round(drawnAnew * 100), unit: '%', budget: `at least ${budget.drawnAnew * 100} %`, ok: drawnAnew >= budget.drawnAnew },
  ]
}

/** The axle dragged over the drawing by mouse for two seconds, in a real browser: the middle one of three drags, after a short one. */
export const benchDrag = async (): Promise<BenchLine[]> => {
  if (findChromium() === undefined) return [{ name: 'dragging the axle, no Chromium was found', value: undefined, unit: '', budget: `at most ${budget.meanMs} ms`, ok: undefined }]
  return linesOf(await openSums(async (page) => {
    const frames: Frames[] = []
    for (let drag = 0; drag <= drags; drag += 1) frames.push(await dragOnce(page))
    return frames.slice(1)
  }))
}
