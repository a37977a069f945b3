import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { beginSurvey } from './desk-beside'
import { overflowOn, smallTargets } from './look'
import { addByPicker } from './photographs'
import { photographFile } from './pictures'
import { makeYardFolder, startProgram } from './program'
import { lineOf, sheetOf, type Line } from './sheet'
import { optionLabel } from '../../shared-logic/words/check-sentences'
import { openBrowser, openWindow } from './window'

const { survey: said, yard } = en.screens
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const expectFits = async (page: Page): Promise<void> => {
  expect(await overflowOn(page)).toBeLessThanOrEqual(0)
  expect(await smallTargets(page)).toEqual([])
}

it('walked on a telephone: answered, photographed and reviewed by touch, nothing too wide or too small', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder)
  const window = await openWindow(browser, program.address, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 })
  const { page, ask } = window
  try {
    await expectFits(page)
    const survey = await beginSurvey(ask)
    const sheet = sheetOf(survey)
    await page.reload()
    await page.getByRole('link', { name: new RegExp(`^${yard.goOn}`) }).waitFor()
    await expectFits(page)
    await page.getByRole('link', { name: new RegExp(`^${yard.goOn}`) }).tap()
    await page.getByRole('article').waitFor()
    await expectFits(page)
    // A finger drops and pastes nothing.
    await page.getByRole('button', { name: said.photographs.add, exact: true }).waitFor()
    expect(await page.getByText(said.photographs.drop, { exact: true }).isVisible()).toBe(false)
    const tapOption = async (line: Line, fieldId: string, option: string): Promise<void> => {
      const field = line.check.fields.find((each) => each.id === fieldId)
      if (field?.kind === 'choice') await page.getByRole('article').getByRole('radio', { name: optionLabel(en, line.check, field, option), exact: true }).tap()
    }

    // The drawing is the way to the hubs
    await page.getByRole('button', { name: said.walk.showDrawing, exact: true }).tap()
    await page.getByRole('dialog').getByRole('button', { name: new RegExp(`^\\d+\\. ${en.stations.hubs}`) }).tap()
    await page.getByRole('heading', { level: 2, name: new RegExp(en.stations.hubs) }).waitFor()
    for (const position of ['axle 1 left', 'axle 1 right']) {
      const line = lineOf(sheet, 'hubs.oil-condition', position)
      await page.getByRole('article').getByRole('heading', { level: 3 }).filter({ hasText: line.position.split(' ').at(-1) ?? '' }).waitFor()
      await tapOption(line, 'condition', position === 'axle 1 left' ? 'milky' : 'clear')
      if (position === 'axle 1 left') {
        await page.getByRole('article').getByText(en.verdicts.fail, { exact: true }).filter({ visible: true }).first().waitFor()
        await expectFits(page)
        await addByPicker(page, [await photographFile('milky.jpg', 7)])
        await page.getByRole('article').getByRole('button', { name: /, view large$/ }).waitFor()
        await expectFits(page)
        await page.getByRole('article').getByRole('button', { name: said.check.goOn, exact: true }).tap()
      }
    }
    const level = lineOf(sheet, 'hubs.oil-level', 'axle 1 left')
    await page.getByRole('article').getByRole('heading', { level: 3, name: level.heading.slice(0, 9) }).waitFor()
    await expectFits(page)
    await page.getByRole('link', { name: said.walk.review, exact: true }).tap()
    await page.getByRole('heading', { level: 1, name: /Review/ }).waitFor()
    await page.getByRole('button', { name: /, view large$/ }).waitFor()
    await expectFits(page)
    const kept = await ask('surveys.get', { surveyId: survey.id })
    expect(kept.summary.tallies).toMatchObject({ fail: 1, pass: 1 })
    expect(kept.photographs).toHaveLength(1)
    expect(window.complaints).toEqual([])
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
