import { readFileSync } from 'node:fs'
import sharp, { type Sharp } from 'sharp'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { photographAddress } from '../../shared-logic/contract/contract'
import type { Survey } from '../../shared-logic/survey/records'
import { en } from '../../shared-logic/words/en'
import { likenessToScene } from '../main/photos/scene'
import { beginSurvey } from './desk-beside'
import { lookAt, overflowOn, screensFolder, smallTargets } from './look'
import { addByPicker } from './photographs'
import type { PictureFile } from './pictures'
import { makeYardFolder, startProgram, type Program } from './program'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const said = en.screens.photographs
const { photographs: viewer } = en.screens.survey

let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let page: Page
let survey: Survey
beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  page = window.page
  survey = await beginSurvey(window.ask)
  await page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
  await page.getByRole('article').waitFor()
})
afterAll(async () => {
  await window.close()
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

const example = (name: string): string => `assets/example/${name}.jpg`
/** As a camera of 12 MP hands it over. */
const taken = async (name: string, file: string, change: (picture: Sharp) => Sharp = (picture) => picture): Promise<PictureFile> => ({
  name: file, mimeType: 'image/jpeg', buffer: await change(sharp(example(name)).resize({ width: 4000 })).jpeg({ quality: 88 }).toBuffer(),
})
const news = () => page.getByRole('status', { name: said.heading })
const kept = async () => (await window.ask('surveys.get', { surveyId: survey.id })).photographs

it('a photograph taken well gives no word', async () => {
  expect(await addByPicker(page, [await taken('coupler-latch', 'latch.jpg')])).toBe(viewer.takenOne)
  expect(await news().innerText()).toBe('')
})

it('a blurred one is told at once, in reach on every screen, and taken again: the old one goes when the new one is in', async () => {
  await addByPicker(page, [await taken('bow-eye', 'shaken.jpg', (picture) => picture.blur(12))])
  await news().getByText(/^Blurred: hold still, come closer, or tap to focus\. Its sharpest edges are spread over [\d.]+ px/).waitFor()
  expect(await lookAt(page, 'photograph-warning')).toEqual([])
  await page.setViewportSize({ width: 390, height: 844 })
  expect(await smallTargets(page)).toEqual([])
  expect(await overflowOn(page)).toBe(0)
  // One line, of the height of its buttons; a tap tells the rest.
  expect((await news().boundingBox())?.height).toBeLessThan(56)
  await page.screenshot({ path: `${screensFolder}photograph-warning-brief.png` })
  await news().getByRole('button', { name: 'Look again: blurred' }).click()
  await news().getByText(/^Blurred: hold still/).waitFor()
  expect((await news().boundingBox())?.height).toBeLessThan(844 / 3)
  expect(await smallTargets(page)).toEqual([])
  await page.setViewportSize({ width: 1280, height: 800 })
  const chooser = page.waitForEvent('filechooser')
  await news().getByRole('button', { name: 'Take it again: shaken.jpg' }).click()
  await (await chooser).setFiles([await taken('bow-eye', 'steady.jpg')])
  await page.getByText('shaken.jpg removed.').waitFor()
  await expect.poll(async () => (await kept()).map(({ fileName }) => fileName)).toEqual(['latch.jpg', 'steady.jpg'])
  await expect.poll(() => news().innerText()).toBe('')
})

it('what is wrong stays marked on the picture, and is told beside it', async () => {
  await addByPicker(page, [await taken('strap-cut', 'dark.jpg', (picture) => picture.linear(0.08, 0)), { name: 'small.jpg', mimeType: 'image/jpeg', buffer: await sharp(example('tyre-tread')).resize({ width: 640 }).jpeg().toBuffer() }])
  await news().getByText(/^Too dark/).waitFor()
  await news().getByRole('button', { name: said.understood }).click()
  await expect.poll(() => news().innerText()).toBe('')
  await page.getByRole('article').getByText(en.screens.photographs.short.tooDark, { exact: true }).scrollIntoViewIfNeeded()
  await page.screenshot({ path: `${screensFolder}photograph-warned-strip.png` })
  await page.getByRole('button', { name: /\(small\), view large$/ }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByText(/^Small for this: 640 × 480 px/).waitFor()
  expect(await lookAt(page, 'photograph-warned-viewer')).toEqual([])
  await dialog.getByRole('button', { name: viewer.close }).click()
})

it('seen closer the place that was pressed comes to the middle and stays there, and past its own pixels the copy gives way to the original', async () => {
  await page.getByRole('button', { name: 'latch.jpg, view large' }).click()
  const dialog = page.getByRole('dialog')
  const frame = dialog.getByRole('region', { name: 'latch.jpg' })
  const picture = frame.locator('img').first()
  await expect.poll(() => picture.evaluate((image: HTMLImageElement) => image.complete && image.naturalWidth)).toBe(1600)
  const share = 0.3
  const whole = await picture.boundingBox()
  if (whole === null) throw new Error('no picture')
  await page.mouse.click(whole.x + share * whole.width, whole.y + share * whole.height)
  for (const times of [1.5, 2, 3]) {
    await dialog.getByRole('button', { name: viewer.zoomIn, exact: true }).click()
    await expect.poll(async () => ((await picture.boundingBox())?.width ?? 0) / whole.width).toBeCloseTo(times, 1)
  }
  const [seen, shown] = [await frame.boundingBox(), await picture.boundingBox()]
  if (seen === null || shown === null) throw new Error('no picture')
  // A scroll bar of 15 px takes its part of the frame.
  expect(Math.abs(shown.x + share * shown.width - (seen.x + seen.width / 2))).toBeLessThan(10)
  expect(Math.abs(shown.y + share * shown.height - (seen.y + seen.height / 2))).toBeLessThan(10)
  await dialog.getByText(/^Shown is the original, 4000 × \d+ px\.$/).waitFor()
  expect(await frame.locator('img').last().evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(4000)
  expect(await lookAt(page, 'photograph-closer')).toEqual([])
  await dialog.getByRole('button', { name: viewer.close, exact: true }).click()
})

it('a picture that stands at another check already is pointed out there', async () => {
  await page.keyboard.press('j')
  await addByPicker(page, [await taken('coupler-latch', 'latch again.jpg', (picture) => picture.resize({ width: 3000 }))])
  await news().getByText(/^It looks like “latch\.jpg” at “/).waitFor()
  await page.screenshot({ path: `${screensFolder}photograph-alike.png` })
  await news().getByRole('button', { name: 'Side by side with what looks like it: latch again.jpg' }).click()
  const both = page.getByRole('dialog', { name: said.sideBySideTitle })
  expect(await both.getByRole('figure').filter({ hasText: 'latch.jpg' }).count()).toBe(1)
  expect(await lookAt(page, 'photograph-side-by-side')).toEqual([])
  await both.getByRole('button', { name: said.sideBySideClose }).click()
  expect(await news().getByRole('button', { name: /^Take it again/ }).count()).toBe(0)
  await news().getByRole('button', { name: said.understood }).click()
})

it('the window is not closed over a photograph on its way in: it is asked, and stays; once the photograph is in, it is told where the walk went on', async () => {
  let letIn: () => void = () => undefined
  const isHeld = new Promise<void>((resolve) => { letIn = resolve })
  await page.route('**/api/photographs.add', async (route) => {
    await isHeld
    await route.continue()
  })
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: viewer.add, exact: true }).click()
  await (await chooser).setFiles([await taken('chain-hook', 'slow.jpg')])
  await page.getByText(/^Taking in 0 of 1/).waitFor()
  const asked = page.waitForEvent('dialog')
  await page.close({ runBeforeUnload: true })
  const dialog = await asked
  expect(dialog.type()).toBe('beforeunload')
  await dialog.dismiss()
  const walk = page.url()
  await page.goto(`${walk}/photographs`)
  await page.getByRole('grid', { name: en.screens.contactSheet.grid }).waitFor()
  await page.getByText(/^Taking in 0 of 1/).waitFor()
  letIn()
  // With those told of just before, where their line still stood.
  await page.getByText(/^(?:Photograph|\d photographs) added\.$/).waitFor()
  await page.unroute('**/api/photographs.add')
  await page.goto(walk)
  await page.getByRole('article').waitFor()
  expect((await kept()).map(({ fileName }) => fileName)).toContain('slow.jpg')
})

it('a HEIC is taken, shown upright in its colours, and kept to the byte', async () => {
  const bytes = readFileSync('tests/main/photos/fixtures/scene-p3.heic')
  await addByPicker(page, [{ name: 'IMG_0042.HEIC', mimeType: 'image/heic', buffer: bytes }])
  const photograph = (await kept()).find(({ fileName }) => fileName === 'IMG_0042.HEIC')
  expect(photograph).toMatchObject({ format: 'heic', widthPx: 480, heightPx: 320, takenAt: '2026-05-03T09:15:27+02:00' })
  const read = async (size: 'large' | 'original') => {
    const answer = await page.request.get(`${new URL(program.address).origin}/${photographAddress(photograph?.sha256 ?? '', size)}`)
    return { type: answer.headers()['content-type'], body: await answer.body() }
  }
  expect((await read('original')).type).toBe('image/heic')
  expect(Buffer.compare((await read('original')).body, bytes)).toBe(0)
  expect(await likenessToScene((await read('large')).body)).toBeGreaterThan(32)
  const shown = page.getByRole('article').locator('img').last()
  await expect.poll(() => shown.evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight])).toEqual([320, 213])
  expect(window.complaints).toEqual([])
})

/** Until ten frames long nothing has scrolled any more: a key struck into a scroll under way is taken as a part of it. */
const atRest = (box: Locator): Promise<void> =>
  box.evaluate(async (each) => {
    let [last, still] = ['', 0]
    while (still < 10) {
      await new Promise(requestAnimationFrame)
      const now = `${each.scrollTop} ${document.documentElement.scrollTop} ${each.clientHeight}`
      still = now === last ? still + 1 : 0
      last = now
    }
  })

it('a batch with warnings and refusals covers no more than a third of the screen; all of it is read by scrolling, the check is answered beside it', async () => {
  await page.keyboard.press('j')
  const small = (name: string, file: string): Promise<PictureFile> => taken(name, file, (picture) => picture.resize({ width: 640 }))
  const chooser = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: viewer.add, exact: true }).click()
  await (await chooser).setFiles([
    await taken('bow-eye', 'one shaken.jpg', (picture) => picture.blur(12)), await taken('strap-cut', 'one dark.jpg', (picture) => picture.linear(0.08, 0)),
    await small('tyre-tread', 'small 1.jpg'), await small('chain-hook', 'small 2.jpg'), await small('coupler-latch', 'small 3.jpg'), await small('bow-eye', 'small 4.jpg'),
    ...['text.jpg', 'note.jpg', 'list.jpg'].map((name) => ({ name, mimeType: 'image/jpeg', buffer: Buffer.from(`no picture, ${name}`) })),
  ])
  await page.getByText(/^“list\.jpg” is not a photograph/).waitFor()
  const all = page.getByRole('region', { name: said.news })
  await all.waitFor()
  expect(await lookAt(page, 'photograph-batch-news')).toEqual([])
  const noted = news().getByRole('button', { name: said.understood })
  // In the hand nothing is put away that was not opened.
  await page.setViewportSize({ width: 390, height: 844 })
  expect(await noted.isVisible()).toBe(false)
  await news().getByRole('button', { name: /^Look again at \d photographs/ }).click()
  expect(await noted.isVisible()).toBe(true)
  await page.screenshot({ path: `${screensFolder}photograph-batch-news-opened.png` })
  for (const [width, height] of [[390, 844], [1280, 800]] as const) {
    await page.setViewportSize({ width, height })
    // A window takes a moment to be laid out anew.
    await expect.poll(async () => (await all.boundingBox())?.height).toBeLessThanOrEqual(Math.ceil(height / 3))
    expect(await smallTargets(page)).toEqual([])
    await all.focus()
    await atRest(all)
    await page.keyboard.press('End')
    await expect.poll(() => all.evaluate((each) => each.scrollHeight - each.clientHeight - each.scrollTop)).toBeLessThan(2)
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => all.evaluate((each) => each.scrollTop)).toBeGreaterThan(0)
  }
  // The gravest first, before those that are merely small.
  expect((await news().getByRole('listitem').allInnerTexts()).map((text) => /^[^\n]+\n+[^:]+/.exec(text)?.[0].replaceAll(/\n+/g, ': '))).toEqual(expect.arrayContaining(['one shaken.jpg: Blurred', 'one dark.jpg: Too dark', 'small 4.jpg: Small for this']))
  expect(await news().getByRole('listitem').first().innerText()).toMatch(/^one shaken\.jpg/)
  await page.getByRole('button', { name: viewer.dismiss, exact: true }).click()
  await noted.click()
  await page.getByRole('article').getByRole('radio').first().click()
})
