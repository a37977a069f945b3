import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { beginSurvey } from './desk-beside'
import { Person } from './person'
import { makeYardFolder, startProgram } from './program'
import { lineOf, sheetOf } from './sheet'
import { openBrowser, openWindow } from './window'

const { survey: said, yard } = en.screens
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

it('closed and killed in the middle of the walk, the same check is open again and every answer is there', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  let program = await startProgram(folder)
  try {
    const first = await openWindow(browser, program.address)
    const survey = await beginSurvey(first.ask)
    await first.page.reload()
    const person = new Person(first.page)
    await first.page.getByRole('link', { name: new RegExp(`^${yard.goOn}`) }).click()
    const sheet = sheetOf(survey)
    for (const checkId of ['papers.registration', 'papers.rating-plate', 'papers.loaded-mass', 'coupler.latch']) await person.answer(lineOf(sheet, checkId))
    const body = lineOf(sheet, 'coupler.body')
    await person.pick(body, 'condition', 'surface rust')
    await person.press(said.more.note)
    await person.write(said.more.note, 'Rust on the left cheek')
    await first.page.getByRole('heading', { level: 2 }).first().click()
    await person.saved()
    const before = (await first.ask('surveys.get', { surveyId: survey.id })).answers.map(({ checkId, answer }) => ({ checkId, answer }))
    expect(before).toHaveLength(5)
    await first.close()
    await program.end('SIGKILL')

    program = await startProgram(folder)
    const second = await openWindow(browser, program.address)
    const again = new Person(second.page)
    await second.page.getByRole('link', { name: new RegExp(`^${yard.goOn}`) }).click()
    await again.article().waitFor()
    expect(await again.heading()).toBe(body.heading)
    await again.seesVerdict('advisory')
    expect(await second.page.getByRole('textbox', { name: said.more.note, exact: true }).inputValue()).toBe('Rust on the left cheek')
    expect(await again.progress()).toEqual([5, sheet.size])
    expect((await second.ask('surveys.get', { surveyId: survey.id })).answers.map(({ checkId, answer }) => ({ checkId, answer }))).toEqual(before)
    expect(second.complaints).toEqual([])
    await second.close()
  } finally {
    await program.end('SIGKILL')
    await remove()
  }
})
