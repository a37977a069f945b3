import { open } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import sharp from 'sharp'
import { en } from '../../shared-logic/words/en'
import { findChromium } from '../find-chromium'
import { beginSurvey } from '../walk/desk-beside'
import { cameraFlags } from '../walk/fake-camera'
import { makeYardFolder, startProgram } from '../walk/program'
import { openBrowser, openWindow } from '../walk/window'
import { atShare, type BenchLine } from './bench-line'
import { photographHeightPx, photographWidthPx, twelveMegapixels } from './twelve-megapixels'

const budgetMs = 300
const wantedShots = 12
/** A frame that comes round again is the same picture, kept once: it is not counted, and another is taken. */
const mostTries = 60
const frames = 16
const framesPerSecond = 10
const { camera: said, survey } = en.screens

/** Brightness and colour of the picture at half the density for colour: ITU-R BT.601-7, narrow range. */
const planesOf = async (jpeg: Buffer): Promise<{ readonly y: Buffer; readonly cb: Buffer; readonly cr: Buffer }> => {
  const rgb = await sharp(jpeg).removeAlpha().raw().toBuffer()
  const [width, half] = [photographWidthPx, photographWidthPx / 2]
  const y = Buffer.alloc(width * photographHeightPx)
  const cb = Buffer.alloc(y.length / 4)
  const cr = Buffer.alloc(y.length / 4)
  for (let at = 0; at < y.length; at += 1) {
    const [r, g, b] = [rgb[at * 3] ?? 0, rgb[at * 3 + 1] ?? 0, rgb[at * 3 + 2] ?? 0]
    const luma = 0.299 * r + 0.587 * g + 0.114 * b
    y[at] = 16 + (luma * 219) / 255
    const [row, column] = [Math.floor(at / width), at % width]
    if (row % 2 === 1 || column % 2 === 1) continue
    const chroma = (row / 2) * half + column / 2
    cb[chroma] = 128 + ((b - luma) * 224) / (1.772 * 255)
    cr[chroma] = 128 + ((r - luma) * 224) / (1.402 * 255)
  }
  return { y, cb, cr }
}

/** A film of 12 MP with the detail of a photograph; every frame is the picture rolled on by some lines, so that no two are alike. */
const writeLargeFilm = async (path: string): Promise<void> => {
  const planes = await planesOf(await twelveMegapixels(1))
  const file = await open(path, 'w')
  const rolled = (plane: Buffer, bytes: number): readonly Buffer[] => [plane.subarray(bytes), plane.subarray(0, bytes)]
  try {
    await file.write(`YUV4MPEG2 W${photographWidthPx} H${photographHeightPx} F${framesPerSecond}:1 Ip A1:1 C420jpeg\n`)
    for (let frame = 0; frame < frames; frame += 1) {
      const lines = frame * 120
      await file.write('FRAME\n')
      for (const part of rolled(planes.y, lines * photographWidthPx)) await file.write(part)
      for (const plane of [planes.cb, planes.cr]) for (const part of rolled(plane, (lines / 2) * (photographWidthPx / 2))) await file.write(part)
    }
  } finally {
    await file.close()
  }
}

interface Shot {
  readonly toThumbnailMs: number
  /** Undefined where the frame had been kept before. */
  readonly toKeptMs: number | undefined
}

/** From the key's own time stamp until the frame after the one that drew the thumbnail, and until the desk has said that it is on the disk. */
const takeOne = async (page: Page): Promise<Shot> => {
  const before = await page.locator('ul canvas').count()
  const timed = await page.evaluateHandle((label) => {
    const noted: { key?: number; thumbnail?: number; kept?: number; isBlank?: boolean } = {}
    const strip = document.querySelector(`ul[aria-label="${label}"]`)
    const first = strip?.querySelector('canvas')
    window.addEventListener('keydown', (event) => { noted.key = event.timeStamp }, { capture: true, once: true })
    const look = (): void => {
      const newest = strip?.querySelector('canvas')
      if (newest === first || !newest) return
      if (newest.dataset['kept'] === 'true') noted.kept ??= performance.now()
      if (noted.thumbnail !== undefined || noted.isBlank !== undefined) return
      noted.isBlank = true
      requestAnimationFrame(() => requestAnimationFrame(() => {
        noted.thumbnail = performance.now()
        const pixels = newest.getContext('2d')?.getImageData(0, 0, newest.width, newest.height).data ?? []
        noted.isBlank = new Set(pixels).size < 32
      }))
    }
    if (strip) new MutationObserver(look).observe(strip, { subtree: true, childList: true, attributes: true })
    return noted
  }, said.strip)
  await page.keyboard.press('Space')
  const dialog = page.getByRole('dialog')
  await page.waitForFunction(([noted, label, count]) => {
    const isRefused = document.querySelector('[role=dialog]')?.textContent.includes(label) === true
    return noted.thumbnail !== undefined && (noted.kept !== undefined || isRefused) && document.querySelectorAll('ul canvas').length >= Math.min(count + 1, 12)
  }, [timed, survey.photographs.dismiss, before] as const)
  const { key = Number.NaN, thumbnail = Number.NaN, kept, isBlank } = await timed.jsonValue()
  if (isBlank !== false) throw new Error('the thumbnail shows nothing')
  const dismiss = dialog.getByRole('button', { name: survey.photographs.dismiss, exact: true })
  // The news may go by itself while the hand is on its way to the button.
  if (await dismiss.isVisible()) await dismiss.click({ timeout: 1000 }).catch(() => dismiss.waitFor({ state: 'detached' }))
  return { toThumbnailMs: thumbnail - key, toKeptMs: kept === undefined ? undefined : kept - key }
}

/** The built program in a real browser, whose fake camera shows 12 MP. */
const shoot = async (): Promise<Shot[]> => {
  const { folder, yard, remove } = await makeYardFolder()
  const film = join(folder, 'film.y4m')
  await writeLargeFilm(film)
  const program = await startProgram(yard)
  const browser = await openBrowser(cameraFlags(film))
  try {
    const { page, ask } = await openWindow(browser, program.address, { permissions: ['camera'] })
    const { id } = await beginSurvey(ask)
    await page.goto(`${new URL(program.address).origin}/#/surveys/${id}`)
    await page.getByRole('article').waitFor()
    await page.keyboard.press('t')
    const shutter = page.getByRole('button', { name: said.take, exact: true })
    await page.waitForFunction(() => document.querySelector<HTMLButtonElement>('[data-shutter]')?.disabled === false)
    const counted: Shot[] = []
    await takeOne(page)
    for (let tries = 0; tries < mostTries && counted.length < wantedShots; tries += 1) {
      // Out of step with the film, or the same two frames come round for ever.
      await page.waitForTimeout((tries % 11) * 70)
      await shutter.focus()
      const shot = await takeOne(page)
      if (shot.toKeptMs !== undefined) counted.push(shot)
    }
    const { photographs } = await ask('surveys.get', { surveyId: id })
    if (photographs.some(({ widthPx, heightPx }) => widthPx !== photographWidthPx || heightPx !== photographHeightPx)) throw new Error('the pictures are not of 12 MP')
    return counted
  } finally {
    await browser.close()
    await program.end('SIGTERM')
    await remove()
  }
}

/** From the shutter to the thumbnail, and until the picture is safe on the disk: the middle one of twelve of 12 MP, after a first. */
export const benchShutter = async (): Promise<BenchLine[]> => {
  const budget = `under ${budgetMs} ms`
  if (findChromium() === undefined) return [{ name: 'shutter to thumbnail, no Chromium was found', value: undefined, unit: '', budget, ok: undefined }]
  const shots = await shoot()
  const toThumbnail = shots.map(({ toThumbnailMs }) => toThumbnailMs)
  const toKept = shots.flatMap(({ toKeptMs }) => toKeptMs ?? [])
  const line = (name: string, ms: number, said_: string, ok: boolean): BenchLine => ({ name, value: Math.round(ms), unit: 'ms', budget: said_, ok })
  const median = atShare(toThumbnail, 0.5)
  return [
    line(`shutter to thumbnail at 12 MP, middle of ${shots.length}`, median, budget, shots.length >= wantedShots && median < budgetMs),
    line('shutter to thumbnail at 12 MP, slowest', Math.max(...toThumbnail), 'none', true),
    line('shutter to safe on the disk at 12 MP, middle', atShare(toKept, 0.5), 'none', true),
  ]
}
