import { readdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { beginSurvey } from './desk-beside'
import { lookAt, overflowOn, smallTargets } from './look'
import { addByPicker } from './photographs'
import { makeYardFolder, startProgram, type Program } from './program'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { photographs: said } = en.screens.survey

let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let page: Page
let walk: string
beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  page = window.page
  const survey = await beginSurvey(window.ask)
  walk = `${new URL(program.address).origin}/#/surveys/${survey.id}`
  await page.goto(walk)
  await page.getByRole('article').waitFor()
  await addByPicker(page, [{ name: 'latch.jpg', mimeType: 'image/jpeg', buffer: await sharp('assets/example/coupler-latch.jpg').resize({ width: 4000 }).jpeg({ quality: 88 }).toBuffer() }])
})
afterAll(async () => {
  await window.close()
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

const dialog = () => page.getByRole('dialog')
const frame = () => dialog().getByRole('region', { name: 'latch.jpg' })
const press = (name: string) => dialog().getByRole('button', { name, exact: true }).click()
const open = async () => {
  await page.getByRole('button', { name: /^latch\.jpg.*, view large$/ }).click()
  await dialog().waitFor()
}
/** In a window that has kept nothing of the pictures. */
const openAnew = async (): Promise<void> => {
  await window.close()
  window = await openWindow(browser, program.address)
  page = window.page
  await page.goto(walk)
  await page.getByRole('article').waitFor()
}
/** Of a share of the picture's box, how far from the middle of the frame it is shown, px. */
const offMiddle = async (x: number, y: number): Promise<number> => {
  const [seen, shown] = [await frame().boundingBox(), await frame().locator('> *').boundingBox()]
  if (seen === null || shown === null) throw new Error('no picture')
  return Math.max(Math.abs(shown.x + x * shown.width - seen.x - seen.width / 2), Math.abs(shown.y + y * shown.height - seen.y - seen.height / 2))
}

it('turned while it is seen closer, the place that was pressed stays in the middle', async () => {
  await open()
  const picture = frame().locator('img').first()
  await expect.poll(() => picture.evaluate((image: HTMLImageElement) => image.complete && image.naturalWidth)).toBe(1600)
  const whole = await picture.boundingBox()
  if (whole === null) throw new Error('no picture')
  await page.mouse.click(whole.x + 0.3 * whole.width, whole.y + 0.3 * whole.height)
  // So close that the place can be in the middle of the turned picture as well.
  for (let times = 0; times < 4; times += 1) await press(said.zoomIn)
  // A scroll bar of 15 px takes its part of the frame.
  await expect.poll(() => offMiddle(0.3, 0.3)).toBeLessThan(10)
  await press(said.turnRight)
  await expect.poll(() => picture.getAttribute('data-turns')).toBe('1')
  await expect.poll(() => offMiddle(0.7, 0.3)).toBeLessThan(10)
  await press(said.turnLeft)
  await expect.poll(() => picture.getAttribute('data-turns')).toBe('0')
  await expect.poll(() => offMiddle(0.3, 0.3)).toBeLessThan(10)
})

it('pressed by the mouse to its end, “Larger” leaves the viewer its Escape', async () => {
  await press(said.zoomIn)
  expect(await dialog().getByRole('button', { name: said.zoomIn, exact: true }).getAttribute('aria-disabled')).toBe('true')
  await page.keyboard.press('Escape')
  await expect.poll(() => dialog().count()).toBe(0)
})

it('on a phone its buttons are in reach at once, in one row, and cover little', async () => {
  await page.setViewportSize({ width: 390, height: 844 })
  await open()
  // The picture is at its highest then.
  for (let times = 0; times < 3; times += 1) await press(said.zoomIn)
  const close = await dialog().getByRole('button', { name: said.close, exact: true }).boundingBox()
  const remove = await dialog().getByRole('button', { name: said.remove, exact: true }).boundingBox()
  if (close === null || remove === null) throw new Error('no buttons')
  expect(close.y + close.height).toBeLessThanOrEqual(844)
  expect(close.y).toBe(remove.y)
  expect(await smallTargets(page)).toEqual([])
  expect(await overflowOn(page)).toBe(0)
  expect(await lookAt(page, 'photograph-viewer-phone')).toEqual([])
  // What is typed into is not covered by them.
  const caption = dialog().getByRole('textbox', { name: said.caption })
  await caption.focus()
  await expect.poll(async () => { const box = await caption.boundingBox(); return box && box.y + box.height }).toBeLessThanOrEqual(close.y)
  await press(said.close)
  await page.setViewportSize({ width: 1280, height: 800 })
})

it('an original that is lost is said to be unread, with its copy shown; with the copy lost too that is said in its place and in the strip', async () => {
  const files = (await readdir(place.yard, { recursive: true, withFileTypes: true })).filter((each) => each.isFile())
  const lose = async (isLost: (path: string) => boolean): Promise<number> => {
    const lost = files.map((each) => join(each.parentPath, each.name)).filter(isLost)
    for (const path of lost) await rm(path)
    return lost.length
  }
  expect(await lose((path) => path.includes('/originals/'))).toBe(1)
  await openAnew()
  await open()
  for (let times = 0; times < 5; times += 1) await press(said.zoomIn)
  await dialog().getByText(/the original cannot be read here\. Verify the photographs in the review\.$/).waitFor()
  expect(await lookAt(page, 'photograph-original-lost')).toEqual([])
  expect(await lose((path) => path.includes('/previews/'))).toBeGreaterThan(0)
  await openAnew()
  await page.getByRole('article').getByText(said.unreadableShort).waitFor()
  await open()
  await dialog().getByText(said.unreadable).waitFor()
  expect(await lookAt(page, 'photograph-lost')).toEqual([])
})
