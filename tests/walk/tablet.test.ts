import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { overflowOn } from './look'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const { survey: said, rig: rigSaid } = en.screens
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const bottomOf = async (page: Page, role: 'figure' | 'button', name?: string): Promise<number> => {
  const box = await (name === undefined ? page.getByRole(role) : page.getByRole(role, { name, exact: true })).first().boundingBox()
  if (!box) throw new Error(`no ${role} to be seen`)
  return box.y + box.height
}

it('walked on a tablet: nothing is cut, the strip follows a turn, and the kind of gear is entered from where it is asked', { timeout: 120_000 }, async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder)
  const window = await openWindow(browser, program.address, { viewport: { width: 1024, height: 768 } })
  const { page, ask } = window
  try {
    const { id } = await ask('rigs.save', { rig: { name: 'Nothing recorded', trailer: {} } })
    const { today } = await ask('yard.about', {})
    const survey = await ask('surveys.start', { rigId: id, purpose: 'before tow', surveyDate: today, ruleBook: 'us' })
    await page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
    await page.getByRole('article').waitFor()
    const stations = page.getByRole('navigation', { name: said.walk.stations }).getByRole('button')
    for (let at = 0; at < (await stations.count()); at += 1) {
      await stations.nth(at).click()
      await page.evaluate(() => { document.documentElement.scrollTop = 0 })
      expect(await bottomOf(page, 'button', said.check.goOn)).toBeLessThanOrEqual(768)
    }
    expect(await bottomOf(page, 'figure')).toBeLessThanOrEqual(768)
    const review = await page.getByRole('link', { name: said.walk.review, exact: true }).boundingBox()
    expect((review?.x ?? 0) + (review?.width ?? Infinity)).toBeLessThanOrEqual(1024)

    // Held upright, the strip shows where one stands.
    await stations.filter({ hasText: en.stations.brakes }).click()
    await page.setViewportSize({ width: 390, height: 844 })
    const here = page.getByRole('navigation', { name: said.walk.stations }).locator('[aria-current=step]')
    await expect.poll(async () => {
      const box = await here.boundingBox()
      return box !== null && box.x >= 0 && box.x + box.width <= 390
    }).toBe(true)
    expect(await overflowOn(page)).toBeLessThanOrEqual(0)

    // The kind of brakes is asked, entered in the record, and the walk goes on at the same station.
    await page.getByRole('heading', { level: 3, name: en.checks['brakes.kind']?.title ?? '' }).waitFor()
    await page.getByRole('link', { name: said.check.toRecord, exact: true }).click()
    const brakes = page.getByRole('radiogroup', { name: en.fields['trailer.brakes'] ?? '', exact: true })
    await expect.poll(() => brakes.evaluate((group) => group.contains(document.activeElement))).toBe(true)
    await brakes.getByText(en.fieldOptions['trailer.brakes']?.surge ?? '', { exact: true }).click()
    await page.getByRole('button', { name: rigSaid.save, exact: true }).click()
    await page.getByRole('article').waitFor()
    expect(await page.getByRole('heading', { level: 2 }).first().textContent()).toContain(en.stations.brakes)
    await expect(here.textContent()).resolves.toContain(en.stations.brakes)
    const asked = await ask('surveys.get', { surveyId: survey.id })
    expect(asked.rig.trailer.brakes).toBe('surge')
    expect(asked.summary.asked).toBeGreaterThan(survey.summary.asked)
    expect(window.complaints).toEqual([])
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
