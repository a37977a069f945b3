import { expect, test } from 'vitest'
import { catalogueVersion } from '../../../shared-logic/checks/catalogue'
import { ask, newFolder, open, placeWith, refusalOf, startSurvey, keepTandem } from './yard-on-disk'

const choice = placeWith('choice')
const reading = placeWith('reading')

test('a survey begins with everything open and nothing passed', async () => {
  const opened = await open(newFolder())
  const survey = await startSurvey(opened)
  expect(survey).toMatchObject({ status: 'under way', revision: 0, catalogueVersion, zone: 'Europe/Lisbon', place: 'Lisboa', answers: [], photographs: [], reports: [] })
  expect(survey.summary.open).toBe(survey.summary.asked)
  expect(survey.summary.tallies['not seen']).toBe(survey.summary.asked)
  expect(survey.summary.verdict).toBe('not seen')
  await opened.close()
})

test.each([
  ['tomorrow', '2026-06-16', 'survey.date-in-the-future'],
  ['before there were such trailers', '1949-12-31', 'survey.date-too-early'],
  ['a day that does not exist', '2026-02-30', 'field.not-a-date'],
  ['words', 'yesterday', 'field.not-a-date'],
])('a survey is not dated %s', async (_when, surveyDate, code) => {
  const opened = await open(newFolder())
  const rigId = await keepTandem(opened)
  const refused = await refusalOf(opened, 'surveys.start', { rigId, purpose: 'sale', surveyDate, ruleBook: 'us' })
  expect(refused).toMatchObject({ code, field: 'surveyDate' })
  expect((await ask(opened, 'surveys.list', {})).total).toBe(0)
  await opened.close()
})

test('today is the surveyor’s today, not Greenwich’s', async () => {
  const opened = await open(newFolder(), { clock: () => new Date('2026-06-15T14:30:00Z'), zone: 'Pacific/Auckland' })
  const rigId = await keepTandem(opened)
  const survey = await ask(opened, 'surveys.start', { rigId, purpose: 'sale', surveyDate: '2026-06-16', ruleBook: 'eu' })
  expect(survey.surveyDate).toBe('2026-06-16')
  await opened.close()
})

test('answers outlive the program, with the place where the surveyor stood and the sum of it', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const { id: surveyId, summary: before } = await startSurvey(opened)
  const place = { surveyId, checkId: choice.checkId, position: choice.position }
  const answer = { values: { [choice.field.id]: choice.field.options[0] ?? '' }, note: 'Øverst – 上', instrument: 'by eye' }
  const { summary } = await ask(opened, 'surveys.answer', { ...place, answer })
  await ask(opened, 'surveys.standAt', { surveyId, here: { checkId: choice.checkId, position: choice.position } })
  await opened.close()
  const again = await open(folder)
  const survey = await ask(again, 'surveys.get', { surveyId })
  expect(survey.answers).toEqual([{ checkId: choice.checkId, position: choice.position, answer, answeredAt: '2026-06-15T12:00:00.000Z' }])
  expect(survey.here).toEqual({ checkId: choice.checkId, position: choice.position })
  expect(survey.summary).toEqual(summary)
  expect((await ask(again, 'surveys.list', {})).surveys[0]?.summary).toEqual(summary)
  expect(summary.asked).toBe(before.asked)
  await again.close()
})

test('a check set aside is no longer open; taken back, it is open again', async () => {
  const opened = await open(newFolder())
  const { id: surveyId, summary } = await startSurvey(opened)
  const place = { surveyId, checkId: reading.checkId, position: reading.position }
  const aside = await ask(opened, 'surveys.answer', { ...place, answer: { aside: { as: 'not applicable', reason: 'none fitted' } } })
  expect(aside.summary.open).toBe(summary.open - 1)
  expect(aside.summary.tallies['not applicable']).toBe(1)
  expect((await ask(opened, 'surveys.clear', place)).summary).toEqual(summary)
  await opened.close()
})

test('an overrule counts with its reason, and without one is refused', async () => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  const place = { surveyId, checkId: choice.checkId, position: choice.position }
  const values = { [choice.field.id]: choice.field.options[0] ?? '' }
  const { summary } = await ask(opened, 'surveys.answer', { ...place, answer: { values, overrule: { verdict: 'fail', reason: 'seen it come apart' } } })
  expect(summary.verdict).toBe('fail')
  expect((await refusalOf(opened, 'surveys.answer', { ...place, answer: { values, overrule: { verdict: 'fail', reason: ' ' } } })).code).toBe('field.empty')
  await opened.close()
})

const wrong: readonly { readonly what: string; readonly at: typeof choice | typeof reading; readonly answer: unknown; readonly code: string }[] = [
  { what: 'an option that is none', at: choice, answer: { values: { [choice.field.id]: 'splendid' } }, code: 'answer.not-an-option' },
  { what: 'a number in words', at: reading, answer: { values: { [reading.field.id]: 'about half' } }, code: 'answer.not-a-number' },
  { what: 'a reading below all belief', at: reading, answer: { values: { [reading.field.id]: reading.field.min - 1 } }, code: 'answer.below' },
  { what: 'a reading above all belief', at: reading, answer: { values: { [reading.field.id]: reading.field.max * 10 + 1 } }, code: 'answer.above' },
  { what: 'a field the check does not have', at: choice, answer: { values: { colour: 'red' } }, code: 'answer.unknown-field' },
  { what: 'four megabytes of note', at: choice, answer: { note: 'n'.repeat(4_000_000) }, code: 'field.too-long' },
  { what: 'a value of 401 letters', at: choice, answer: { values: { [choice.field.id]: 'x'.repeat(401) } }, code: 'field.too-long' },
  { what: 'a reason left out', at: choice, answer: { aside: { as: 'not seen' } }, code: 'field.missing' },
]

test.each(wrong)('$what is refused, and the answer that was there stays', async ({ at, answer, code }) => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  const place = { surveyId, checkId: at.checkId, position: at.position }
  const good = { values: {}, note: 'what was there' }
  await ask(opened, 'surveys.answer', { ...place, answer: good })
  expect((await refusalOf(opened, 'surveys.answer', { ...place, answer })).code).toBe(code)
  expect((await ask(opened, 'surveys.get', { surveyId })).answers.map((each) => each.answer)).toEqual([good])
  await opened.close()
})

test.each([
  ['a place this rig does not have', choice.checkId, 'axle 3 left'],
  ['a check there is none of', 'hubs.colour', 'rig'],
])('%s is not answered', async (_what, checkId, position) => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  expect((await refusalOf(opened, 'surveys.answer', { surveyId, checkId, position, answer: {} })).code).toBe('answer.not-asked')
  expect((await refusalOf(opened, 'surveys.standAt', { surveyId, here: { checkId, position } })).code).toBe('answer.not-asked')
  await opened.close()
})

test('a discarded survey is gone from every list', async () => {
  const opened = await open(newFolder())
  const { id: surveyId, rigId } = await startSurvey(opened)
  await ask(opened, 'surveys.discard', { surveyId })
  expect((await ask(opened, 'surveys.list', {})).total).toBe(0)
  expect((await ask(opened, 'rigs.get', { rigId })).surveyCount).toBe(0)
  expect((await refusalOf(opened, 'surveys.get', { surveyId })).code).toBe('survey.not-found')
  await opened.close()
})

test('a survey under way is not opened again', async () => {
  const opened = await open(newFolder())
  const { id: surveyId } = await startSurvey(opened)
  expect((await refusalOf(opened, 'surveys.reopen', { surveyId })).code).toBe('survey.under-way')
  await opened.close()
})
