import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { photographAddress } from '../../shared-logic/contract/contract'
import type { Photograph } from '../../shared-logic/survey/records'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { beginSurvey } from './desk-beside'
import { cameraFlags, noCameraFlags, quarters, writeFilm, type Rgb } from './fake-camera'
import { lookAt, overflowOn, screensFolder } from './look'
import { makeYardFolder, startProgram, type Program } from './program'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const said = en.screens.camera
const { photographs: news } = en.screens.survey
const film = { widthPx: 1280, heightPx: 720, frames: 160, framesPerSecond: 8 }

let place: Awaited<ReturnType<typeof makeYardFolder>>
let filmPath: string
let program: Program
let browser: Browser
beforeAll(async () => {
  place = await makeYardFolder()
  filmPath = join(place.folder, 'film.y4m')
  await writeFilm(filmPath, film)
  program = await startProgram(place.yard)
  browser = await openBrowser(cameraFlags(filmPath))
})
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

interface AtCheck extends ProgramWindow {
  /** The survey's photographs as the desk has them. */
  readonly kept: () => Promise<readonly Photograph[]>
}

declare global {
  interface Window {
    /** Every track the camera view was given, for whether it is off. */
    readonly cameraTracks: MediaStreamTrack[]
  }
}

/** A window at the first check of a survey of its own. */
const standAtCheck = async (with_: Browser, options: BrowserContextOptions): Promise<AtCheck> => {
  const window = await openWindow(with_, program.address, options)
  const survey = await beginSurvey(window.ask)
  await window.page.addInitScript(() => {
    const tracks: MediaStreamTrack[] = []
    Object.defineProperty(window, 'cameraTracks', { value: tracks })
    const { mediaDevices } = navigator
    const open = mediaDevices.getUserMedia.bind(mediaDevices)
    mediaDevices.getUserMedia = async (wanted) => {
      const stream = await open(wanted)
      tracks.push(...stream.getTracks())
      return stream
    }
  })
  await window.page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
  await window.page.reload()
  await window.page.getByRole('article').waitFor()
  return { ...window, kept: async () => (await window.ask('surveys.get', { surveyId: survey.id })).photographs }
}

const allowed: BrowserContextOptions = { permissions: ['camera'] }
const shutter = (page: Page) => page.getByRole('button', { name: said.take, exact: true })
const thumbnails = (page: Page) => page.getByRole('list', { name: said.strip }).getByRole('listitem')
const isLive = async (page: Page): Promise<void> => {
  await expect.poll(() => shutter(page).isEnabled()).toBe(true)
}
const isOff = (page: Page): Promise<boolean> => page.evaluate(() => window.cameraTracks.length > 0 && window.cameraTracks.every(({ readyState }) => readyState === 'ended'))

/** Narrow-range 4:2:0 in the film, JPEG at 0.92 in the window: each rounds, and a plain colour is moved by no more than this. */
const mostOff = 5

/** The mean colour of a quarter's middle, away from its pattern, its edges and the wandering mark. */
const colourOf = async (original: Buffer, index: number): Promise<Rgb> => {
  const [width, height] = [film.widthPx / 8, film.heightPx / 8]
  const left = (index % 2) * (film.widthPx / 2) + 3 * width - width / 2
  const top = Math.floor(index / 2) * (film.heightPx / 2) + 2 * height
  const { channels } = await sharp(await sharp(original).extract({ left, top, width, height }).toBuffer()).stats()
  const [r, g, b] = channels.map(({ mean }) => mean)
  return { r: r ?? Number.NaN, g: g ?? Number.NaN, b: b ?? Number.NaN }
}

const expectShowsFilm = async (page: Page, { sha256 }: Photograph): Promise<void> => {
  const original = await (await page.request.get(`${new URL(program.address).origin}/${photographAddress(sha256, 'original')}`)).body()
  const { format, width, height, exif } = await sharp(original).metadata()
  expect({ format, width, height, exif }).toEqual({ format: 'jpeg', width: film.widthPx, height: film.heightPx, exif: undefined })
  for (const [index, colour] of quarters.entries()) {
    const seen = await colourOf(original, index)
    expect(Math.max(Math.abs(seen.r - colour.r), Math.abs(seen.g - colour.g), Math.abs(seen.b - colour.b)), `quarter ${index}: ${JSON.stringify(seen)}`).toBeLessThanOrEqual(mostOff)
  }
}

it('from the contact sheet pictures go to no check, and stand there at once', async () => {
  const { page, kept, complaints, close } = await standAtCheck(browser, allowed)
  await page.getByRole('button', { name: said.open, exact: true }).waitFor()
  await page.goto(`${page.url()}/photographs`)
  await page.getByText(en.screens.contactSheet.empty).waitFor()
  await page.getByRole('button', { name: said.open, exact: true }).click()
  await isLive(page)
  await page.keyboard.press('Space')
  await expect.poll(async () => (await kept()).map(({ source, checkId }) => ({ source, checkId }))).toEqual([{ source: 'camera', checkId: undefined }])
  await page.getByRole('button', { name: said.done, exact: true }).click()
  await page.getByRole('grid', { name: en.screens.contactSheet.grid }).getByRole('row').first().waitFor()
  // With photographs on the sheet the way to the camera stands at its head.
  await page.getByRole('button', { name: said.open, exact: true }).waitFor()
  expect(await lookAt(page, 'contact-sheet-camera')).toEqual([])
  expect(await isOff(page)).toBe(true)
  expect(complaints).toEqual([])
  await close()
})

it('pictures by Space, by the button and in a series go into the open check and show what stood before the camera', async () => {
  const { page, kept, complaints, close } = await standAtCheck(browser, allowed)
  const keptCount = async (): Promise<number> => (await kept()).length
  expect(await page.evaluate(() => window.cameraTracks.length)).toBe(0)
  await page.keyboard.press('t')
  await isLive(page)
  await page.keyboard.press('Space')
  await expect.poll(keptCount).toBe(1)
  await shutter(page).click()
  await expect.poll(keptCount).toBe(2)
  expect(await thumbnails(page).allInnerTexts()).toEqual(['Picture 2, kept', 'Picture 1, kept'])

  // Twelve, three a second. A camera that stalls may show one frame twice: that is told, and kept once.
  await page.keyboard.press('b')
  await expect.poll(() => page.getByText('Picture 14 taken.').count()).toBe(1)
  await page.getByRole('button', { name: said.series, exact: true }).waitFor()
  const told = async (): Promise<number> => page.getByRole('dialog').getByText(/is at this check already/).count()
  await expect.poll(async () => (await keptCount()) + (await told())).toBe(14)
  expect(await keptCount()).toBeGreaterThanOrEqual(10)
  const photographs = await kept()
  const [first] = photographs
  for (const photograph of photographs) {
    expect(photograph).toMatchObject({ source: 'camera', widthPx: film.widthPx, heightPx: film.heightPx, checkId: first?.checkId, position: first?.position })
    expect(photograph.fileName).toMatch(/^[a-z0-9-]+ \d{4}-\d\d-\d\d \d\d\.\d\d\.\d\d(?:-\d+)?\.jpg$/)
  }
  const names = photographs.map(({ fileName }) => fileName.replace('.jpg', ''))
  expect(names).toEqual(names.toSorted())
  expect(first?.checkId).toBeDefined()
  for (const photograph of [photographs[0], photographs[1], photographs.at(-1)]) if (photograph) await expectShowsFilm(page, photograph)

  // Taken away to be taken again, and had back. That pictures were added is said no more.
  const before = await keptCount()
  await page.keyboard.press('r')
  await expect.poll(keptCount).toBe(before - 1)
  await page.getByRole('dialog').getByText(said.retaken).waitFor()
  await expect.poll(() => page.getByRole('dialog').getByText(/added\.$/).count()).toBe(0)
  await page.screenshot({ path: `${screensFolder}camera-retaken.png` })
  await page.getByRole('dialog').getByRole('button', { name: news.undo, exact: true }).click()
  await expect.poll(keptCount).toBe(before)
  expect(await shutter(page).isEnabled()).toBe(true)

  // Two taken away one after the other: neither is lost.
  await page.keyboard.press('r')
  await expect.poll(keptCount).toBe(before - 1)
  await page.keyboard.press('r')
  await expect.poll(keptCount).toBe(before - 2)
  await page.getByRole('dialog').getByText(say(news.othersRemoved, { count: 1 }, 'metric')).waitFor()
  await page.screenshot({ path: `${screensFolder}camera-retaken-twice.png` })
  await page.getByRole('dialog').getByRole('button', { name: news.undoAll, exact: true }).click()
  await expect.poll(keptCount).toBe(before)

  // Closed in the moment of the picture: it arrives all the same.
  await page.keyboard.press('t')
  await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'detached' })
  expect(await isOff(page)).toBe(true)
  await expect.poll(keptCount).toBe(before + 1)
  await expect.poll(() => page.getByRole('article').getByRole('button', { name: /, view large/ }).count()).toBe(before + 1)
  // Only a frame shown twice was refused, and Chromium notes the status of that answer itself.
  expect(complaints.filter((line) => !line.includes('422'))).toEqual([])
  await close()
})

it('a smaller resolution is taken as chosen; the camera goes off when the screen is left', async () => {
  const { page, kept, complaints, close } = await standAtCheck(browser, allowed)
  await page.getByRole('button', { name: said.open }).click()
  await isLive(page)
  await page.getByRole('button', { name: new RegExp(`${said.resolution}$`) }).click()
  await page.getByRole('option', { name: /^640 × 360/ }).click()
  await page.getByRole('button', { name: /^640 × 360 px/ }).waitFor()
  await page.waitForFunction(() => document.querySelector('video')?.videoWidth === 640)
  await page.keyboard.press('t')
  await expect.poll(async () => (await kept()).map(({ widthPx, heightPx }) => [widthPx, heightPx])).toEqual([[640, 360]])
  await page.goto(`${new URL(program.address).origin}/#/settings`)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await expect.poll(() => isOff(page)).toBe(true)
  expect(complaints).toEqual([])
  await close()
})

it('a full disk is said, nothing is kept of it, and the picture goes in when there is room', async () => {
  const { page, kept, close } = await standAtCheck(browser, allowed)
  await page.route('**/api/photographs.add', (route) => route.fulfill({ status: 422, json: { ok: false, refusal: { code: 'disk.full' } } }))
  await page.keyboard.press('t')
  await isLive(page)
  await page.keyboard.press('Space')
  const dialog = page.getByRole('dialog')
  await dialog.getByText(en.refusals['disk.full'] ?? '').waitFor()
  expect(await kept()).toEqual([])
  expect(await thumbnails(page).allInnerTexts()).toEqual(['Picture 1, not kept yet'])
  await page.unroute('**/api/photographs.add')
  await dialog.getByRole('button', { name: en.screens.shell.tryAgain, exact: true }).click()
  await expect.poll(async () => (await kept()).length).toBe(1)
  await expect.poll(() => thumbnails(page).allInnerTexts()).toEqual(['Picture 1, kept'])
  await close()
})

it('on a telephone, by touch: taken, kept, nothing too wide', async () => {
  const { page, kept, complaints, close } = await standAtCheck(browser, { ...allowed, viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 })
  await page.getByRole('button', { name: said.open }).tap()
  await isLive(page)
  await shutter(page).tap()
  await expect.poll(async () => (await kept()).length).toBe(1)
  expect(await overflowOn(page)).toBeLessThanOrEqual(0)
  const small = await page.getByRole('dialog').getByRole('button').evaluateAll((buttons) => buttons.map((each) => each.getBoundingClientRect()).filter(({ width, height }) => width < 44 || height < 44).length)
  expect(small).toBe(0)
  await page.getByRole('button', { name: said.done, exact: true }).tap()
  await page.getByRole('dialog').waitFor({ state: 'detached' })
  expect(complaints).toEqual([])
  await close()
})

it('is accessible at both sizes by day and by night, with pictures and without', async () => {
  const { page, close } = await standAtCheck(browser, allowed)
  await page.keyboard.press('t')
  await isLive(page)
  const wrong = await lookAt(page, 'camera')
  await page.keyboard.press('Space')
  await expect.poll(() => thumbnails(page).allInnerTexts()).toEqual(['Picture 1, kept'])
  await page.keyboard.press('Space')
  await expect.poll(() => thumbnails(page).count()).toBe(2)
  wrong.push(...(await lookAt(page, 'camera-taken')))
  expect(wrong).toEqual([])
  await close()
})

it('where the camera is denied, a sentence says where to allow it, and files can still be added', async () => {
  const { page, complaints, close } = await standAtCheck(browser, { permissions: [] })
  await page.keyboard.press('t')
  await page.getByRole('alert').getByText(said.problems.denied.browser).waitFor()
  expect(await shutter(page).isEnabled()).toBe(false)
  expect(await lookAt(page, 'camera-denied')).toEqual([])
  await page.getByRole('button', { name: said.done, exact: true }).click()
  await page.getByRole('button', { name: news.add, exact: true }).waitFor()
  expect(complaints).toEqual([])
  await close()
})

it('where there is no camera, a sentence says so', async () => {
  const without = await openBrowser(noCameraFlags)
  try {
    const { page, complaints } = await standAtCheck(without, allowed)
    await page.keyboard.press('t')
    await page.getByRole('alert').getByText(said.problems.none).waitFor()
    expect(await lookAt(page, 'camera-none')).toEqual([])
    expect(complaints).toEqual([])
  } finally {
    await without.close()
  }
})

it('zoom is offered by a camera that has it, and set by its slider', async () => {
  // Chromium's own fake camera zooms from 100 to 400; the film's does not.
  const zooming = await openBrowser(['--use-fake-device-for-media-stream=device-count=2'])
  try {
    const { page } = await standAtCheck(zooming, allowed)
    // A permission beside the camera's own, which Playwright has no name for.
    const session = await page.context().newCDPSession(page)
    const { targetInfo } = await session.send('Target.getTargetInfo')
    await session.send('Browser.grantPermissions', {
      origin: new URL(program.address).origin, permissions: ['videoCapture', 'cameraPanTiltZoom'], ...(targetInfo.browserContextId !== undefined && { browserContextId: targetInfo.browserContextId }),
    })
    await page.keyboard.press('t')
    await isLive(page)
    const slider = page.getByRole('slider', { name: said.zoom })
    await slider.fill('250')
    await expect.poll(() => page.evaluate(() => window.cameraTracks.at(-1)?.getSettings().zoom)).toBe(250)
    expect(await page.getByText('50 % of the way').isVisible()).toBe(true)
    // Zoomed at its full size, and zoomed still at a smaller one.
    expect(await page.evaluate(() => document.querySelector('video')?.videoWidth)).toBe(3840)
    await page.getByRole('button', { name: new RegExp(`${said.resolution}$`) }).click()
    await page.getByRole('option', { name: /^1920 × 1080/ }).click()
    await page.waitForFunction(() => document.querySelector('video')?.videoWidth === 1920)
    await slider.fill('400')
    await expect.poll(() => page.evaluate(() => window.cameraTracks.at(-1)?.getSettings())).toMatchObject({ zoom: 400, width: 1920, height: 1080 })
    expect(await page.getByRole('switch', { name: said.light }).count()).toBe(0)
    // Two cameras: the other is chosen, and this one goes off.
    await page.getByRole('button', { name: new RegExp(`${said.device}$`) }).click()
    await page.getByRole('option').nth(1).click()
    await expect.poll(() => page.evaluate(() => window.cameraTracks.map(({ readyState }) => readyState))).toEqual(['ended', 'live'])
    expect(await lookAt(page, 'camera-zoom')).toEqual([])
  } finally {
    await zooming.close()
  }
})
