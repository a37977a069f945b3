import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import type { SurveyRow } from '../../shared-logic/survey/records'
import { lookAt } from './look'
import { Person } from './person'
import { addByPicker } from './photographs'
import { photographFile } from './pictures'
import { makeYardFolder, startProgram, type Program } from './program'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { rig: rigWords, survey: said, yard, reportPage } = en.screens
const nobody = '0192f0a0-0000-7000-8000-000000000000'
let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let person: Person
let page: Page
let underWay: SurveyRow
let issued: SurveyRow

const go = async (hash: string, heading?: string | RegExp): Promise<void> => {
  await page.goto(`${new URL(program.address).origin}/#${hash}`)
  await (heading === undefined ? page.getByRole('article') : page.getByRole('heading', { level: 1, name: heading })).first().waitFor()
}

beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  page = window.page
  // A form that is left half filled asks first; here it is left on purpose.
  page.on('dialog', (dialog) => void dialog.accept())
  person = new Person(page)
  await person.press(yard.openExample)
  await page.getByRole('button', { name: yard.openingExample }).waitFor({ state: 'detached', timeout: 60_000 })
  await page.getByRole('list', { name: yard.rigs }).getByRole('heading', { level: 2 }).nth(2).waitFor({ timeout: 60_000 })
  const { surveys } = await window.ask('surveys.list', {})
  const open = surveys.find((each) => each.status === 'under way')
  const done = surveys.find((each) => each.status === 'issued')
  if (open === undefined || done === undefined) throw new Error('the example has no survey of each kind')
  underWay = open
  issued = done
})
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

it('the register: a form with its sentences, and the removal of a rig', async () => {
  await go('/rigs/new', rigWords.newTitle)
  await person.describe('trailer.maximumMassKg', '-3 kg')
  await person.press(rigWords.save)
  await page.getByRole('alert').waitFor()
  const wrong = await lookAt(page, 'rig-new-refused')
  await page.reload()
  await go(`/rigs/${issued.rigId}`, issued.rigName)
  await person.press(rigWords.remove)
  await page.getByRole('alertdialog').waitFor()
  wrong.push(...(await lookAt(page, 'rig-remove')))
  await person.press(rigWords.removeKeep)
  expect(wrong).toEqual([])
})

it('what floats above the walk', async () => {
  const wrong: string[] = []
  await go(`/surveys/${underWay.id}`)
  const dialog = page.getByRole('dialog')
  const close = async (): Promise<void> => {
    await dialog.press('Escape')
    await dialog.waitFor({ state: 'detached' })
  }
  for (const [name, key] of [['not-seen', 's'], ['not-applicable', 'a'], ['keys', '?']] as const) {
    await page.keyboard.press(key)
    await dialog.waitFor()
    wrong.push(...(await lookAt(page, `dialog-${name}`)))
    await close()
  }
  await page.keyboard.press('1')
  await page.keyboard.press('k')
  await page.keyboard.press('o')
  if (await dialog.isVisible()) {
    wrong.push(...(await lookAt(page, 'dialog-overrule')))
    await close()
  }
  await addByPicker(page, [await photographFile('rail.jpg', 5)])
  await page.getByRole('button', { name: /, view large$/ }).first().click()
  await dialog.waitFor()
  wrong.push(...(await lookAt(page, 'dialog-photograph')))
  await close()
  await page.setViewportSize({ width: 390, height: 844 })
  await person.press(said.walk.showDrawing)
  await dialog.waitFor()
  wrong.push(...(await lookAt(page, 'dialog-drawing')))
  await close()
  await page.getByRole('figure').getByRole('button', { name: new RegExp(`^\\d+\\. ${en.stations.frame}`) }).click()
  await page.getByRole('figure').getByRole('button', { name: /left rail/ }).click()
  for (let count = 0; count < 12 && !(await page.getByRole('button', { name: said.spots.add, exact: true }).isVisible()); count += 1) await page.keyboard.press('j')
  await person.press(said.spots.add)
  await dialog.waitFor()
  wrong.push(...(await lookAt(page, 'dialog-spot')))
  await close()
  expect(wrong).toEqual([])
})

it('what is asked before a report is issued, and what stands where there is none', async () => {
  const wrong: string[] = []
  await go(`/surveys/${underWay.id}/review`, /Review/)
  await person.press(said.review.issue)
  await page.getByRole('alertdialog').waitFor()
  wrong.push(...(await lookAt(page, 'review-issue')))
  await person.press(said.review.cancel)
  await go(`/surveys/${issued.id}/report`, /^Report/)
  await page.getByRole('link', { name: reportPage.download }).waitFor()
  await person.press(reportPage.reopen)
  await page.getByRole('dialog').waitFor()
  wrong.push(...(await lookAt(page, 'report-reopen')))
  await page.keyboard.press('Escape')
  await go(`/surveys/${issued.id}`, new RegExp(issued.rigName))
  wrong.push(...(await lookAt(page, 'walk-issued', { phoneHasOwnColours: true })))
  await go(`/surveys/${underWay.id}/report`, reportPage.titleAlone)
  wrong.push(...(await lookAt(page, 'report-none')))
  expect(wrong).toEqual([])
  expect(window.complaints).toEqual([])
})

it('what is not there, and a program that does not answer', async () => {
  const wrong: string[] = []
  for (const [name, hash] of [['unknown-rig', `/rigs/${nobody}`], ['unknown-rig-edit', `/rigs/${nobody}/edit`], ['unknown-survey', `/surveys/${nobody}`], ['unknown-review', `/surveys/${nobody}/review`], ['unknown-report', `/surveys/${nobody}/report`]] as const) {
    await page.goto(`${new URL(program.address).origin}/#${hash}`)
    await page.getByRole('alert').waitFor()
    wrong.push(...(await lookAt(page, name)))
  }
  await page.route('**/api/**', (route) => route.abort())
  await page.goto(`${new URL(program.address).origin}/#/settings`)
  await page.goto(`${new URL(program.address).origin}/#/rigs/${issued.rigId.replace(/.$/, '0')}`)
  await page.getByRole('alert').first().waitFor()
  wrong.push(...(await lookAt(page, 'no-answer')))
  expect(wrong).toEqual([])
})
