import { readFile } from 'node:fs/promises'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { countSurvey, readReport } from './pdf-tallies'
import { Person } from './person'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const { rig: rigWords, yard, reportPage } = en.screens
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

it('the example yard opens from the empty yard, and its finished survey has its PDF', async () => {
  const { folder, yard: yardFolder, remove } = await makeYardFolder()
  const program = await startProgram(yardFolder)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  const person = new Person(page)
  try {
    await person.press(yard.openExample)
    const rigs = page.getByRole('list', { name: yard.rigs })
    await rigs.waitFor({ timeout: 60_000 })
    expect(await rigs.getByRole('heading', { level: 2 }).count()).toBe(3)
    const { surveys } = await ask('surveys.list', {})
    const issued = surveys.find((each) => each.status === 'issued')
    await rigs.getByRole('link', { name: issued?.rigName ?? 'no issued survey', exact: true }).click()
    await page.getByRole('link', { name: new RegExp(`^${rigWords.openReport}`) }).first().click()
    const download = page.waitForEvent('download')
    await page.getByRole('link', { name: reportPage.download }).click()
    const path = `${folder}/report.pdf`
    await (await download).saveAs(path)
    const survey = await ask('surveys.get', { surveyId: issued?.id ?? '' })
    const { counted, title } = await readReport(new Uint8Array(await readFile(path)))
    expect(counted).toEqual(countSurvey(survey))
    expect(counted.photographs).toBeGreaterThanOrEqual(12)
    expect(title).toContain(survey.rigName)
    expect(window.complaints).toEqual([])
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
