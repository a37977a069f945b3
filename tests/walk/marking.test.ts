import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest'
import { framePx } from '../../renderer/picture-board/view'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { en } from '../../shared-logic/words/en'
import { beginSurvey } from './desk-beside'
import { fingersOn } from './fingers'
import { Keyboard } from './keyboard'
import { lookAt, overflowOn, screensFolder, smallTargets } from './look'
import { addByPicker } from './photographs'
import { makeYardFolder, startProgram, type Program } from './program'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { marking: said, survey: { photographs: viewer }, pictureBoard } = en.screens
/** 1,600 × 1,200 px, a rule of 100 mm from 430, 795 to 1326, 759 in it. */
const original = readFileSync('assets/example/rust-spot.jpg')
const size = { widthPx: 1600, heightPx: 1200 }

let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let page: Page
let survey: Survey

const photographOf = async (): Promise<Photograph> => {
  const { photographs } = await window.ask('surveys.get', { surveyId: survey.id })
  const [photograph] = photographs
  if (photograph === undefined) throw new Error('the photograph is gone')
  return photograph
}
const keptLayer = async (): Promise<MarkLayer | undefined> => (await photographOf()).marks

const board = () => page.getByRole('dialog', { name: said.title })
const stage = () => board().getByRole('application', { name: said.stage })
const thumb = () => page.getByRole('article').getByRole('button', { name: /, view large$/ }).first()
const press = (name: string) => board().getByRole('button', { name, exact: true }).click()
const takeTool = (tool: keyof typeof said.tools.names) => board().getByRole('button', { name: said.tools.names[tool], exact: true }).click()

const standAtCheck = async (): Promise<void> => {
  await page.goto(`${new URL(program.address).origin}/#/`)
  await page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
  await page.getByRole('article').waitFor()
}
const openBoard = async (): Promise<void> => {
  await thumb().click()
  await page.getByRole('button', { name: said.open, exact: true }).click()
  await stage().waitFor()
}

/** Where a point of the picture as it is turned shows on the screen, the whole of it being in the frame. */
const onScreen = async ([x, y]: PixelPoint, { widthPx, heightPx } = size): Promise<PixelPoint> => {
  const box = await stage().boundingBox()
  if (box === null) throw new Error('no photograph to mark up')
  const scale = Math.min((box.width - 2 * framePx) / widthPx, (box.height - 2 * framePx) / heightPx)
  return [box.x + (box.width - widthPx * scale) / 2 + x * scale, box.y + (box.height - heightPx * scale) / 2 + y * scale]
}
const drag = async (points: readonly PixelPoint[], turned = size): Promise<void> => {
  const [from = [0, 0], ...rest] = points
  await page.mouse.move(...(await onScreen(from, turned)))
  await page.mouse.down()
  for (const point of rest) await page.mouse.move(...(await onScreen(point, turned)), { steps: 4 })
  await page.mouse.up()
}
/** What is typed now goes into this field, and is seen there. */
const standsReady = async (field: Locator): Promise<void> => {
  await expect.poll(() => field.evaluate((element) => document.activeElement === element)).toBe(true)
  await expect.poll(async () => {
    const box = await field.boundingBox()
    const foot = await board().getByRole('button', { name: said.keep, exact: true }).boundingBox()
    return box !== null && foot !== null && box.y >= 0 && box.y + box.height <= foot.y
  }).toBe(true)
}
/** Each point within so many px of where it was meant. */
const expectNear = (found: readonly PixelPoint[], meant: readonly PixelPoint[], px: number): void => {
  expect(found.length).toBe(meant.length)
  for (const [index, [x, y]] of meant.entries()) expect(Math.hypot((found[index]?.[0] ?? NaN) - x, (found[index]?.[1] ?? NaN) - y)).toBeLessThanOrEqual(px)
}

beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  page = window.page
  await window.ask('settings.save', { settings: { ...(await window.ask('settings.get', {})).settings, units: 'metric' } })
  survey = await beginSurvey(window.ask)
  await page.reload()
  await standAtCheck()
  await addByPicker(page, [{ name: 'rail.jpg', mimeType: 'image/jpeg', buffer: original }])
}, 120_000)
beforeEach(async () => {
  const { id, quarterTurns } = await photographOf()
  await window.ask('photographs.mark', { photographId: id, layer: { ...size, marks: [] } })
  if (quarterTurns !== 0) await window.ask('photographs.turn', { photographId: id, quarterTurns: 0 })
  await page.reload()
  await standAtCheck()
}, 60_000)
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

it('is drawn wholly by keyboard: one of each, measured by a known length, moved, taken away, had back, kept', async () => {
  const keys = new Keyboard(page)
  const strike = async (...names: string[]): Promise<void> => { for (const name of names) await page.keyboard.press(name) }
  /** Ten px of this picture at a stroke. */
  const go = async (x: number, y: number): Promise<void> => {
    for (let count = 0; count < Math.abs(x) / 10; count += 1) await page.keyboard.press(x > 0 ? 'Shift+ArrowRight' : 'Shift+ArrowLeft')
    for (let count = 0; count < Math.abs(y) / 10; count += 1) await page.keyboard.press(y > 0 ? 'Shift+ArrowDown' : 'Shift+ArrowUp')
  }
  await thumb().focus()
  await strike('Enter')
  await keys.strike(said.open)
  await stage().waitFor()
  // The crosshair stands in the middle, 800, 600.
  await strike('a', 'Enter')
  await go(100, 50)
  await strike('Enter')
  await strike('c')
  await go(0, 50)
  await strike('Enter')
  await go(200, 100)
  await strike('Enter', 'b', 'Enter')
  await go(100, 100)
  await strike('Enter', 'f', 'Enter')
  await go(-50, 20)
  await strike('Enter', 't')
  await go(-550, -450)
  await strike('Enter')
  await page.keyboard.type('crack at the weld')
  await strike('Enter', 'l')
  await go(200, -250)
  await strike('Enter')
  await go(600, 0)
  await strike('Enter')
  await expect.poll(() => board().getByText(said.on.noLength).count()).toBeGreaterThan(0)
  await strike('k')
  await go(-1200, 800)
  await strike('Enter')
  await go(1200, 0)
  await strike('Enter')
  // It waits for the length; nothing can be kept meanwhile.
  expect(await board().getByRole('button', { name: said.keep, exact: true }).isDisabled()).toBe(true)
  // The field for its length has the focus already.
  await page.keyboard.type('60 mm')
  await strike('Enter')
  await board().getByText(/^30 mm ± /).first().waitFor()
  const wrong = await lookAt(page, 'marking-all')
  expect(wrong).toEqual([])

  // Tab walks through the marks; the arrow is taken away and had back twice over, then moved by its head.
  await keys.tabTo('Mark 1: arrow, at 850, 625')
  await strike('Delete', 'Control+z', 'Control+Shift+Z', 'Control+z')
  // Back past the length that was typed and the line it belongs to, and here again: the keys go on working.
  const nowKnown = () => board().getByRole('textbox', { name: said.known.length, exact: true })
  await strike('Control+z')
  await expect.poll(() => nowKnown().inputValue()).toBe('')
  await strike('Control+z')
  await nowKnown().waitFor({ state: 'detached' })
  await strike('Control+Shift+Z', 'Control+Shift+Z')
  await expect.poll(() => nowKnown().inputValue()).toBe('60 mm')
  // By the buttons, too: one that is used up hands the focus on.
  await keys.strike(pictureBoard.redo)
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(pictureBoard.undo)
  await strike('Enter')
  await keys.tabTo('Mark 1: arrow, at 850, 625')
  await strike('Shift+ArrowLeft', 'ArrowUp')
  await keys.tabTo('Head of mark 1, at 890, 649')
  await strike('Shift+ArrowDown')
  await strike('Escape')
  await keys.strike(said.keep)
  await board().waitFor({ state: 'detached' })

  const layer = await keptLayer()
  expect(layer).toMatchObject({ ...size, scale: { kind: 'length', lengthM: 0.06 } })
  expect(layer?.marks.map(({ kind }) => kind)).toEqual(['arrow', 'circle', 'box', 'freehand', 'text', 'length'])
  expect(layer?.marks[0]).toEqual({ kind: 'arrow', from: [790, 599], to: [890, 659] })
  expect(layer?.marks[1]).toEqual({ kind: 'circle', from: [900, 700], to: [1100, 800] })
  expect(layer?.marks[4]).toMatchObject({ kind: 'text', text: 'crack at the weld', at: [600, 470] })
  // The picture in the viewer says what is marked on it.
  await page.getByRole('img', { name: /; marked: arrow, circle, box, line drawn by hand, “crack at the weld”, 30 mm ± [\d.]+ mm, known: 60 mm$/ }).waitFor()
  expect(window.complaints).toEqual([])
}, 120_000)

it('on a turned picture is drawn by mouse as it is seen, and kept in px of the upright original; the original stays as it was', async () => {
  const before = await photographOf()
  await window.ask('photographs.turn', { photographId: before.id, quarterTurns: 1 })
  await page.reload()
  await standAtCheck()
  await openBoard()
  const turned = { widthPx: 1200, heightPx: 1600 }
  await takeTool('arrow')
  await drag([[200, 300], [600, 900]], turned)
  await takeTool('box')
  await drag([[700, 1000], [1100, 1400]], turned)
  // Tapped between two points instead of dragged.
  await takeTool('circle')
  await page.mouse.click(...(await onScreen([100, 1000], turned)))
  await page.mouse.click(...(await onScreen([500, 1300], turned)))
  await takeTool('freehand')
  await drag([[700, 200], [800, 400], [900, 200], [1000, 400]], turned)
  // The arrow's head is dragged elsewhere, then the whole of the box.
  await takeTool('move')
  await page.mouse.click(...(await onScreen([400, 600], turned)))
  await drag([[600, 900], [600, 700]], turned)
  await drag([[700, 1200], [600, 1200]], turned)
  expect(await lookAt(page, 'marking-turned')).toEqual([])
  await press(said.keep)
  await board().waitFor({ state: 'detached' })
  const layer = await keptLayer()
  const px = 6
  // A quarter turn clockwise takes x, y of the upright picture to 1200 − y, x.
  const upright = ([x, y]: PixelPoint): PixelPoint => [y, 1200 - x]
  const [arrow, box, circle, freehand] = layer?.marks ?? []
  if (arrow?.kind !== 'arrow' || box?.kind !== 'box' || circle?.kind !== 'circle' || freehand?.kind !== 'freehand') throw new Error(`not what was drawn: ${JSON.stringify(layer)}`)
  expectNear([arrow.from, arrow.to], [upright([200, 300]), upright([600, 700])], px)
  expectNear([box.from, box.to], [upright([600, 1000]), upright([1000, 1400])], px)
  expectNear([circle.from, circle.to], [upright([100, 1000]), upright([500, 1300])], px)
  expectNear([freehand.points[0] ?? [0, 0], freehand.points.at(-1) ?? [0, 0]], [upright([700, 200]), upright([1000, 400])], px)
  expect(freehand.points.length).toBeGreaterThan(8)
  expect(await lookAt(page, 'marked-viewer')).toEqual([])
  await page.getByRole('button', { name: viewer.close, exact: true }).click()
  await page.screenshot({ path: `${screensFolder}marked-strip.png` })

  const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')
  const served = await (await page.request.get(`${new URL(program.address).origin}/photographs/${before.sha256}/original`)).body()
  expect([sha256(served), before.sha256]).toEqual([sha256(original), sha256(original)])
  expect(window.complaints).toEqual([])
}, 120_000)

it('is not lost by accident: Escape gives up one thing after the other, and asks before the board is left', async () => {
  await openBoard()
  await takeTool('arrow')
  await drag([[300, 300], [700, 500]])
  await stage().focus()
  // A first point, then what is chosen; only then the board.
  await page.keyboard.press('Enter')
  for (let count = 0; count < 2; count += 1) {
    await page.keyboard.press('Escape')
    expect(await page.getByRole('alertdialog').count()).toBe(0)
  }
  await page.keyboard.press('Escape')
  await page.getByRole('alertdialog', { name: said.discardTitle }).waitFor()
  expect(await lookAt(page, 'marking-leave')).toEqual([])
  await page.getByRole('button', { name: said.stay, exact: true }).click()
  await press(pictureBoard.undo)
  expect(await board().getByRole('button', { name: said.keep, exact: true }).isDisabled()).toBe(true)
  await press(pictureBoard.redo)
  await press(said.cancel)
  await page.getByRole('button', { name: said.discard, exact: true }).click()
  await board().waitFor({ state: 'detached' })
  expect(await keptLayer()).toBeUndefined()
  expect(window.complaints).toEqual([])
}, 60_000)

it('is drawn by touch on a telephone: dragged, tapped, pinched closer without losing the first point, every target wide enough', async () => {
  const phone = await openWindow(browser, program.address, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 })
  const desktop = page
  page = phone.page
  try {
    await standAtCheck()
    await thumb().tap()
    await page.getByRole('button', { name: said.open, exact: true }).tap()
    await stage().waitFor()
    const tapTool = (tool: keyof typeof said.tools.names) => board().getByRole('button', { name: said.tools.names[tool], exact: true }).tap()
    const fingers = await fingersOn(page)
    const places = (points: readonly PixelPoint[]) => Promise.all(points.map((point) => onScreen(point)))
    const tap = async (point: PixelPoint): Promise<void> => page.touchscreen.tap(...(await onScreen(point)))
    await fingers.draw(await places([[300, 300], [900, 300]]))
    await tapTool('freehand')
    await fingers.draw(await places([[200, 900], [500, 1000], [800, 900]]))
    // A first point, then closer and back with two fingers, then the second.
    await tapTool('box')
    await tap([1000, 500])
    const [left, right] = await places([[600, 600], [1000, 600]])
    if (left === undefined || right === undefined) throw new Error('no two places')
    await fingers.pinch([left, [left[0] - 60, left[1]]], [right, [right[0] + 60, right[1]]])
    await board().getByRole('button', { name: pictureBoard.fit, exact: true }).tap()
    await tap([1400, 900])
    await tapTool('text')
    await tap([800, 150])
    // The field has the focus and is in sight right under the picture, which stays in sight whole.
    await standsReady(board().getByRole('textbox', { name: said.words.label, exact: true }))
    const [picture, field] = [await stage().boundingBox(), await board().getByRole('textbox', { name: said.words.label, exact: true }).boundingBox()]
    if (picture === null || field === null) throw new Error('no picture or no field')
    expect(picture.y).toBeGreaterThanOrEqual(0)
    expect(field.y + field.height - (picture.y + picture.height)).toBeLessThan(120)
    await page.screenshot({ path: `${screensFolder}marking-phone-words.png` })
    // So they are with the keys of the telephone up; what ends the writing stands above the foot.
    await page.setViewportSize({ width: 390, height: 480 })
    await expect.poll(async () => {
      const foot = await board().getByRole('button', { name: said.keep, exact: true }).boundingBox()
      const ends = await Promise.all([said.words.put, said.words.giveUp].map((name) => board().getByRole('button', { name, exact: true }).boundingBox()))
      return foot !== null && ends.every((end) => end !== null && end.y + end.height < foot.y - 8)
    }).toBe(true)
    await page.screenshot({ path: `${screensFolder}marking-phone-words-keys-up.png` })
    await page.setViewportSize({ width: 390, height: 844 })
    await page.keyboard.type('wet glove')
    await board().getByRole('button', { name: said.words.put, exact: true }).tap()
    // An end of the box is dragged; under the finger it shows larger.
    await tapTool('move')
    await tap([1200, 900])
    const letGo = await fingers.hold(await places([[1400, 900], [1300, 1000]]))
    await page.screenshot({ path: `${screensFolder}marking-phone-magnifier.png` })
    await letGo()
    await tapTool('known')
    await tap([300, 1100])
    await tap([1200, 1100])
    await standsReady(board().getByRole('textbox', { name: said.known.length, exact: true }))
    await page.keyboard.type('100 mm')
    // The finger pressed nothing of what came under it as the field came into sight.
    await board().getByRole('button', { name: said.tools.names.length, exact: true, pressed: true }).waitFor()
    expect(await overflowOn(page)).toBeLessThanOrEqual(0)
    expect(await smallTargets(page)).toEqual([])
    await press(said.keep)
    await board().waitFor({ state: 'detached' })
    const px = 14
    const [arrow, freehand, box, text] = (await keptLayer())?.marks ?? []
    if (arrow?.kind !== 'arrow' || freehand?.kind !== 'freehand' || box?.kind !== 'box' || text?.kind !== 'text') throw new Error('not what was drawn')
    expectNear([arrow.from, arrow.to], [[300, 300], [900, 300]], px)
    expectNear([freehand.points[0] ?? [0, 0], freehand.points.at(-1) ?? [0, 0]], [[200, 900], [800, 900]], px)
    expectNear([box.from, box.to], [[1000, 500], [1300, 1000]], px)
    expectNear([text.at], [[800, 150]], px)
    expect(text.text).toBe('wet glove')
    expect(phone.complaints).toEqual([])
  } finally {
    page = desktop
    await phone.close()
  }
}, 120_000)
