import { join } from 'node:path'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { fillCard } from './card-of-photographs'
import { beginSurvey } from './desk-beside'
import { issueFirstReport } from './issue'
import { lookAt, overflowOn, screensFolder } from './look'
import { Person } from './person'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const { contactSheet: said, survey: surveySaid } = en.screens
const count = 64
const oil = 'hubs.oil-condition'
const level = 'hubs.oil-level'

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const grid = (page: Page): Locator => page.getByRole('grid', { name: said.grid })
const cell = (page: Page, name: string): Locator => grid(page).getByRole('row', { name: new RegExp(`^${name}\\.`) })
const namesOn = async (page: Page): Promise<string[]> => (await grid(page).getByRole('row').evaluateAll((rows) => rows.map((row) => row.getAttribute('aria-label') ?? ''))).map((label) => label.split(/(?<=\.jpg)\. |\. /)[0] ?? '')
const checkIn = (page: Page, name: string): Locator => page.getByRole('listbox', { name: said.checks }).getByRole('option', { name: new RegExp(`^${name}`) })

/** The list draws only what is in sight: it is scrolled until the check is, and lies still again, for nothing is pressed in a list that runs. */
const bringIntoSight = async (page: Page, name: string): Promise<Locator> => {
  const list = page.getByRole('listbox', { name: said.checks })
  const check = checkIn(page, name)
  await list.evaluate((element) => { element.scrollTop = 0 })
  for (let tries = 0; tries < 60 && !(await check.isVisible()); tries += 1) await list.evaluate((element) => { element.scrollTop += 300 })
  await check.scrollIntoViewIfNeeded()
  await expect.poll(() => list.evaluate((element) => element.firstElementChild !== null && getComputedStyle(element.firstElementChild).pointerEvents)).toBe('auto')
  return check
}

const chooseFrom = async (page: Page, field: string, option: string): Promise<void> => {
  await page.getByRole('button', { name: new RegExp(` ${field}$`) }).click()
  await page.getByRole('option', { name: option, exact: true }).click()
}

const byName = (photographs: readonly Photograph[], name: string): Photograph => {
  const found = photographs.find(({ fileName }) => fileName === name)
  if (found === undefined) throw new Error(`no photograph ${name}`)
  return found
}

/** Drags by the mouse as a hand does: not in one leap. */
const drag = async (page: Page, from: Locator, to: Locator, at: { readonly x: number; readonly y: number }): Promise<void> => {
  const [start, end] = [await from.boundingBox(), await to.boundingBox()]
  if (start === null || end === null) throw new Error('nothing there to drag')
  await page.mouse.move(start.x + start.width / 2, start.y + 60)
  await page.mouse.down()
  await page.mouse.move(start.x + start.width / 2 + 12, start.y + 72, { steps: 3 })
  await page.mouse.move(end.x + end.width * at.x, end.y + end.height * at.y, { steps: 12 })
  await page.mouse.move(end.x + end.width * at.x + 1, end.y + end.height * at.y + 1)
  await page.mouse.up()
}

it('sixty-four photographs are sorted, found, given to their checks by keyboard and by drag, turned, captioned, put in order and chosen, and the report prints those', async () => {
  const { folder, yard, remove } = await makeYardFolder()
  const card = await fillCard(join(folder, 'card'), count)
  const program = await startProgram(yard)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  const wrong: string[] = []
  try {
    const { id: surveyId } = await beginSurvey(ask)
    await ask('surveys.answer', { surveyId, checkId: oil, position: 'axle 1 left', answer: { values: { condition: 'milky' } } })
    const kept = async (): Promise<Survey> => ask('surveys.get', { surveyId })
    const photographs = async (): Promise<Photograph[]> => (await kept()).photographs
    await page.goto(`${new URL(program.address).origin}/#/surveys/${surveyId}`)

    // An empty sheet says what it is for
    await page.getByRole('link', { name: said.link, exact: true }).first().click()
    await page.getByRole('heading', { name: said.empty }).waitFor()
    wrong.push(...(await lookAt(page, 'contact-sheet-empty')))
    await page.locator('input[type=file]').setInputFiles(card.map(({ path }) => path))
    await page.getByText(say(said.count, { total: count }, 'metric'), { exact: true }).waitFor({ timeout: 120_000 })
    // Two go in at a time, so that neighbours may change places: from here on they are named as they arrived.
    const arrived = (await photographs()).map(({ fileName }) => fileName)
    expect(arrived.toSorted()).toEqual(card.map(({ name }) => name).toSorted())
    const nth = (place: number): string => arrived[place] ?? ''
    expect(await grid(page).getByRole('row').count()).toBeLessThan(count)

    // By the camera’s clock, and found by name
    await chooseFrom(page, said.sort, said.sorts.taken)
    const byClock = card.toSorted((a, b) => a.minute - b.minute || a.name.localeCompare(b.name)).map(({ name }) => name)
    await expect.poll(async () => (await namesOn(page)).slice(0, 4).toSorted()).toEqual(byClock.slice(0, 4).toSorted())
    await page.getByRole('searchbox', { name: said.find }).fill('dsc_101')
    await page.getByText(say(said.countShown, { shown: 10, total: count }, 'metric'), { exact: true }).waitFor()
    await page.getByRole('searchbox', { name: said.find }).press('Escape')
    await chooseFrom(page, said.sort, said.sorts.walk)

    // By keyboard alone: the first three to the milky hub
    await cell(page, nth(0)).waitFor()
    await page.getByRole('button', { name: said.acts.allName, exact: true }).focus()
    await page.keyboard.press('Tab')
    await page.keyboard.press('Space')
    await page.keyboard.press('Shift+ArrowRight')
    await page.keyboard.press('Shift+ArrowRight')
    await page.getByText(say(said.countChosen, { chosen: 3 }, 'metric'), { exact: true }).waitFor()
    wrong.push(...(await lookAt(page, 'contact-sheet-chosen')))
    await page.keyboard.press('m')
    const dialog = page.getByRole('dialog')
    await dialog.waitFor()
    await page.keyboard.type('oil condition left')
    await expect.poll(() => dialog.getByRole('option').count()).toBe(1)
    wrong.push(...(await lookAt(page, 'contact-sheet-move')))
    await page.keyboard.press('Enter')
    await dialog.waitFor({ state: 'detached' })
    const atOil = async (): Promise<string[]> => (await photographs()).filter(({ checkId, position }) => checkId === oil && position === 'axle 1 left').map(({ fileName }) => fileName)
    await expect.poll(atOil).toEqual([nth(0), nth(1), nth(2)])
    const inGrid = (): Promise<boolean> => page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null)
    await expect.poll(inGrid).toBe(true)

    // By the mouse: two chosen and dragged onto a check
    await page.keyboard.press('Escape')
    await cell(page, nth(3)).click()
    await cell(page, nth(4)).click()
    await drag(page, cell(page, nth(3)), await bringIntoSight(page, 'Oil level, left'), { x: 0.5, y: 0.5 })
    const atLevel = async (): Promise<string[]> => (await photographs()).filter(({ checkId }) => checkId === level).map(({ fileName }) => fileName)
    await expect.poll(atLevel).toEqual([nth(3), nth(4)])
    await page.screenshot({ path: `${screensFolder}contact-sheet-dragged.png` })

    // Undone and done again by a press
    await page.getByRole('button', { name: said.undo, exact: true }).click()
    await expect.poll(atLevel).toEqual([])
    await cell(page, nth(3)).click()
    await (await bringIntoSight(page, 'Oil level, left')).click()
    await expect.poll(atLevel).toEqual([nth(3)])

    // Dragged by keyboard: the handle, Enter, on to the checks, down to the first, Enter
    await cell(page, nth(5)).focus()
    await page.keyboard.press('Tab')
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('slot'))).toBe('drag')
    await page.keyboard.press('Enter')
    // Where it may be dropped is gone through by Tab, the grid's own places first.
    const isInChecks = (): Promise<boolean> => page.evaluate((name) => document.activeElement?.closest('[role=listbox]')?.getAttribute('aria-label') === name, said.checks)
    await expect.poll(async () => {
      if (!(await isInChecks())) await page.keyboard.press('Tab')
      return isInChecks()
    }).toBe(true)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await expect.poll(async () => byName(await photographs(), nth(5)).checkId).toBeDefined()
    await page.getByRole('button', { name: said.undo, exact: true }).click()
    await expect.poll(async () => byName(await photographs(), nth(5)).checkId).toBeUndefined()

    // Turned, captioned in its place, left out
    await cell(page, nth(0)).click()
    await page.getByRole('button', { name: said.acts.turnRight }).click()
    await expect.poll(async () => byName(await photographs(), nth(0)).quarterTurns).toBe(1)
    await cell(page, nth(0)).focus()
    await page.keyboard.press('c')
    await page.keyboard.type('Milky, seen from below')
    await page.keyboard.press('Enter')
    await expect.poll(async () => byName(await photographs(), nth(0)).caption).toBe('Milky, seen from below')
    await cell(page, 'Milky, seen from below').waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: said.acts.allName }).click()
    await page.getByRole('button', { name: said.acts.leaveOut }).click()
    await expect.poll(async () => (await photographs()).filter(({ isPrinted }) => isPrinted).length).toBe(0)
    await page.getByRole('button', { name: said.acts.noneName }).click()
    for (const name of ['Milky, seen from below', nth(1), nth(2)]) await cell(page, name).click()
    await page.getByRole('button', { name: said.acts.print }).click()
    await expect.poll(async () => (await photographs()).filter(({ isPrinted }) => isPrinted).length).toBe(3)
    wrong.push(...(await lookAt(page, 'contact-sheet-turned')))

    // Put in order: by drag within its check, and by Alt and an arrow
    await page.getByRole('button', { name: said.acts.noneName }).click()
    await drag(page, cell(page, nth(2)), cell(page, 'Milky, seen from below'), { x: 0.2, y: 0.5 })
    await expect.poll(atOil).toEqual([nth(2), nth(0), nth(1)])
    await cell(page, nth(1)).click()
    await page.keyboard.press('Alt+ArrowLeft')
    await expect.poll(atOil).toEqual([nth(2), nth(1), nth(0)])
    await page.keyboard.press('Escape')

    // Two of no check print as well, in an order of their own
    await chooseFrom(page, said.sort, said.sorts.own)
    await chooseFrom(page, said.show, said.shows['no check'])
    for (const name of [nth(5), nth(6)]) await cell(page, name).click()
    await page.getByRole('button', { name: said.acts.print }).click()
    await page.getByRole('button', { name: said.acts.noneName }).click()
    await cell(page, nth(6)).click()
    await page.getByRole('button', { name: said.acts.earlier }).click()
    await expect.poll(async () => (await photographs()).filter(({ checkId, isPrinted }) => checkId === undefined && isPrinted).map(({ fileName }) => fileName)).toEqual([nth(6), nth(5)])

    // Removed, and had back; the button that could do no more has given the focus back to the sheet
    await page.getByRole('button', { name: said.acts.earlier }).click()
    await expect.poll(inGrid).toBe(true)
    await page.keyboard.press('Delete')
    await expect.poll(async () => (await photographs()).length).toBe(count - 1)
    await page.getByRole('button', { name: said.undo, exact: true }).click()
    await expect.poll(async () => (await photographs()).length).toBe(count)

    // The report prints those chosen, in their order, and says what is kept beside them
    await page.getByRole('link', { name: said.walk, exact: true }).click()
    await page.getByRole('link', { name: surveySaid.walk.review, exact: true }).click()
    const report = await issueFirstReport(new Person(page), { name: 'Ilse Marwick', address: '4 Slipway Lane' }, folder)
    const printed = [...report.text.matchAll(/DSC_\d+\.jpg/g)].map(([name]) => name)
    expect(printed).toEqual([nth(2), nth(1), nth(0), nth(6), nth(5)])
    expect(report.counted.photographs).toBe(5)
    expect(report.text).toContain('Milky, seen from below')
    expect(report.text).toContain(say(en.report.photographsKept.further.many, { count: count - 5 }, 'metric'))

    // Issued, the sheet is looked at only
    await page.getByRole('link', { name: said.link, exact: true }).click()
    await page.getByText(said.frozen).waitFor()
    expect(await page.getByRole('button', { name: said.add, exact: true }).count()).toBe(0)
    wrong.push(...(await lookAt(page, 'contact-sheet-issued')))
    await cell(page, 'Milky, seen from below').click()
    await dialog.waitFor()
    expect(await dialog.getByRole('textbox').count()).toBe(0)
    expect(wrong).toEqual([])
    expect(window.complaints).toEqual([])
  } catch (error) {
    await page.screenshot({ path: `${screensFolder}failed-contact-sheet.png` })
    throw error
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})

it('on a phone the photographs are chosen by touch and moved by a dialog, and nothing is too wide or hidden by the bar', async () => {
  const { folder, yard, remove } = await makeYardFolder()
  const card = await fillCard(join(folder, 'card'), 12)
  const program = await startProgram(yard)
  const window = await openWindow(browser, program.address, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 })
  const { page, ask } = window
  try {
    const { id: surveyId } = await beginSurvey(ask)
    await page.goto(`${new URL(program.address).origin}/#/surveys/${surveyId}/photographs`)
    await page.locator('input[type=file]').setInputFiles(card.map(({ path }) => path))
    await page.getByText(say(said.count, { total: 12 }, 'metric'), { exact: true }).waitFor()
    await cell(page, 'DSC_1000.jpg').tap()
    await cell(page, 'DSC_1001.jpg').tap()
    await page.screenshot({ path: `${screensFolder}contact-sheet-touch.png` })
    expect(await overflowOn(page)).toBeLessThanOrEqual(0)
    await page.getByRole('button', { name: said.acts.move }).tap()
    await page.getByRole('dialog').getByRole('searchbox').fill('oil level')
    await page.getByRole('dialog').getByRole('option', { name: /^Oil level, left/ }).waitFor()
    await page.screenshot({ path: `${screensFolder}contact-sheet-touch-move.png`, animations: 'disabled' })
    await page.getByRole('dialog').getByRole('option', { name: /^Oil level, left/ }).tap()
    await expect.poll(async () => (await ask('surveys.get', { surveyId })).photographs.filter(({ checkId }) => checkId === level).length).toBe(2)

    // The last photograph can be brought clear of the bar, and one that is reached by keyboard is
    await page.getByRole('button', { name: said.acts.allName }).tap()
    await cell(page, 'DSC_1002.jpg').focus()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Control+End')
    const last = grid(page).getByRole('row').last()
    await expect.poll(async () => {
      const [row, bar] = [await last.boundingBox(), await page.getByRole('group', { name: said.acts.title }).boundingBox()]
      return row !== null && bar !== null && row.y + row.height <= bar.y
    }).toBe(true)
    await page.screenshot({ path: `${screensFolder}contact-sheet-touch-last.png` })

    // What was removed is told as wide as the screen, right on the bar, over nothing of the head; the focus comes back to the grid.
    await page.getByRole('button', { name: said.acts.noneName }).tap()
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null)).toBe(true)
    await page.evaluate(() => scrollTo(0, 0))
    for (const name of ['DSC_1002.jpg', 'DSC_1003.jpg']) await cell(page, name).tap()
    await page.getByRole('button', { name: said.acts.remove, exact: true }).tap()
    const told = page.getByRole('status').filter({ hasText: say(said.removed, { count: 2 }, 'metric') })
    await expect.poll(async () => {
      const [news, bar] = [await told.boundingBox(), await page.getByRole('group', { name: said.acts.title }).boundingBox()]
      return news && bar && { x: news.x, width: news.width, gap: Math.round(bar.y - news.y - news.height) }
    }).toEqual({ x: 0, width: 390, gap: 0 })
    await page.screenshot({ path: `${screensFolder}contact-sheet-touch-removed.png` })
    await page.getByRole('button', { name: said.undo, exact: true }).tap()
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest('[role=grid]') !== null)).toBe(true)
    await expect.poll(async () => (await ask('surveys.get', { surveyId })).photographs.length).toBe(12)

    // All removed: the way back is at the foot of the empty sheet.
    await page.getByRole('button', { name: said.acts.allName }).tap()
    await page.getByRole('button', { name: said.acts.remove, exact: true }).tap()
    await page.getByText(said.empty, { exact: true }).waitFor()
    await page.screenshot({ path: `${screensFolder}contact-sheet-touch-all-removed.png` })
    await page.getByRole('button', { name: said.undo, exact: true }).tap()
    await expect.poll(async () => (await ask('surveys.get', { surveyId })).photographs.length).toBe(12)
    expect(window.complaints).toEqual([])
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
