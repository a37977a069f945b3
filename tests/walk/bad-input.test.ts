import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { noteLimit } from '../../shared-logic/survey/answer'
import { answerIn } from './kept-answer'
import { beginSurvey } from './desk-beside'
import { Person } from './person'
import { LeftEarly, makeYardFolder, startProgram, type Program } from './program'
import { lineOf, sheetOf } from './sheet'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { rig: rigWords, survey: said, yard } = en.screens
let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let person: Person
beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
})
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})
beforeEach(async () => {
  window = await openWindow(browser, program.address)
  person = new Person(window.page)
})
afterEach(() => window.close())

it('a rig with wrong figures is not saved: each field says why, and keeps what was typed', async () => {
  const { page, ask } = window
  const { total } = await ask('rigs.list', {})
  await person.follow(yard.register)
  await person.describe('name', 'Spindrift')
  const wrong = [
    ['trailer.maximumMassKg', '-300 kg', /^More than 0/], ['trailer.massKg', 'heavy', /“heavy” is not a number/], ['trailer.axleRatingKg', '1200 stone', /“stone” is not a unit known here/], ['trailer.lengthM', '900 m', /^At most/],
  ] as const
  for (const [path, text] of wrong) await person.describe(path, text)
  await person.press(rigWords.save)
  await page.getByRole('alert').getByText(say(rigWords.problemsTitle, { count: wrong.length }, 'us')).waitFor()
  for (const [path, text, sentence] of wrong) {
    const field = page.locator(`[data-path="${path}"]`)
    await field.getByText(sentence).waitFor()
    expect(await field.getByRole('textbox').inputValue()).toBe(text)
    expect(await field.getByRole('textbox').getAttribute('aria-invalid')).toBe('true')
  }
  expect((await ask('rigs.list', {})).total).toBe(total)
  await person.describe('trailer.maximumMassKg', '3000 lb')
  await person.describe('trailer.massKg', '700 lb')
  await person.describe('trailer.axleRatingKg', '3500 lb')
  await person.describe('trailer.lengthM', '21 ft 6 in')
  await person.press(rigWords.save)
  await page.getByRole('heading', { level: 1, name: 'Spindrift' }).waitFor()
  expect(window.complaints).toEqual([])
})

it('a survey of tomorrow is not begun, and says so', async () => {
  const { page, ask } = window
  const { id } = await ask('rigs.save', { rig: { name: 'Spindrift', trailer: {} } })
  await page.goto(`${new URL(program.address).origin}/#/rigs/${id}/survey`)
  await person.choose(said.start.purpose, en.purposes.yearly)
  const year = page.getByRole('spinbutton', { name: /^year/ })
  await year.fill('2099').catch(() => undefined)
  await year.click()
  await page.keyboard.type('2099')
  await person.write(said.start.place, 'Slip four')
  await person.press(said.start.begin)
  await page.getByText(/date lies in the future/).waitFor()
  expect(await page.getByRole('textbox', { name: said.start.place }).inputValue()).toBe('Slip four')
  expect((await ask('surveys.list', {})).surveys.filter(({ rigId }) => rigId === id)).toEqual([])
})

it('readings that cannot be right are told at their field and not kept', async () => {
  const { page, ask } = window
  const survey = await beginSurvey(ask)
  const sheet = sheetOf(survey)
  await page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
  await person.article().waitFor()
  for (const checkId of ['papers.registration', 'papers.rating-plate']) await person.answer(lineOf(sheet, checkId))
  const mass = lineOf(sheet, 'papers.loaded-mass')
  await person.pick(mass, 'basis', 'weighed')
  const field = person.fieldOf(mass, 'loaded')
  for (const [text, sentence] of [['-40 kg', /at least .* can be right here/], ['90000 kg', /at most .* can be right here/], ['12 furlongs', /“furlongs” is not a unit/], ['about a ton', /is not a number/]] as const) {
    await field.fill(text)
    await field.press('Enter')
    await person.article().getByText(sentence).waitFor()
    expect(await field.inputValue()).toBe(text)
    expect(await person.heading()).toBe(mass.heading)
  }
  expect(answerIn(await ask('surveys.get', { surveyId: survey.id }), mass.key)?.values['loaded']).toBeUndefined()
  await field.fill('1,950 lb')
  await person.goOn()
  expect(answerIn(await ask('surveys.get', { surveyId: survey.id }), mass.key)?.values['loaded']).toBeCloseTo(884.5, 0)
  expect(window.complaints).toEqual([])
})

it('four megabytes pasted into a note are told to be too long, none of it is cut off and the answer stays', async () => {
  const { page, ask } = window
  const survey = await beginSurvey(ask)
  const sheet = sheetOf(survey)
  await page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
  const first = lineOf(sheet, 'papers.registration')
  await person.article().waitFor()
  await person.pick(first, 'condition', 'hard to read')
  await person.saved()
  await person.press(said.more.note)
  const note = page.getByRole('textbox', { name: said.more.note, exact: true })
  const text = 'Tide mark. '.repeat(380_000)
  await page.evaluate((words) => navigator.clipboard.writeText(words), text)
  await note.focus()
  await page.keyboard.press('ControlOrMeta+v')
  // Read from the window at once: a search by text would go over the four megabytes for each thing that holds them.
  const told = [say(en.refusals['field.too-long'] ?? '', { field: said.more.note, limit: noteLimit }, 'us'), said.check.notSaved]
  await page.waitForFunction((sentences) => sentences.every((sentence) => document.body.innerText.includes(sentence)), told, { polling: 200 })
  expect(await note.evaluate((field) => (field instanceof HTMLTextAreaElement ? field.value.length : 0))).toBe(text.length)
  expect(answerIn(await ask('surveys.get', { surveyId: survey.id }), first.key)).toEqual({ values: { condition: 'hard to read' } })
  await note.fill('Tide mark at the coupler.')
  await person.goOn()
  await person.saved()
  expect(answerIn(await ask('surveys.get', { surveyId: survey.id }), first.key)).toEqual({ values: { condition: 'hard to read' }, note: 'Tide mark at the coupler.' })
})

it('a second copy on the same yard is refused with a sentence, and the first goes on', async () => {
  const before = await window.ask('rigs.list', {})
  const second = await startProgram(place.yard).catch((error: unknown) => error)
  expect(second).toBeInstanceOf(LeftEarly)
  expect(second).toMatchObject({ code: 1, said: say(en.refusals['yard.open-elsewhere'] ?? '', { folder: place.yard }, 'us') })
  expect(await window.ask('rigs.list', {})).toEqual(before)
})
