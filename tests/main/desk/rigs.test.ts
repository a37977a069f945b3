import { expect, test } from 'vitest'
import { ask, keepTandem, newFolder, open, refusalOf, startSurvey, tandem } from './yard-on-disk'

test('a rig is kept as it was written, its numbers as typed', async () => {
  const folder = newFolder()
  const opened = await open(folder)
  const rig = { ...tandem, boat: { ...tandem.boat, hullIdentificationNumber: 'abc 12345 d404' } }
  const { id } = await ask(opened, 'rigs.save', { rig })
  await opened.close()
  const again = await open(folder)
  expect(await ask(again, 'rigs.get', { rigId: id })).toEqual({ id, rig, surveyCount: 0, latest: undefined })
  await again.close()
})

const impossible: readonly { readonly what: string; readonly rig: unknown; readonly code: string; readonly says: RegExp }[] = [
  { what: 'a negative mass', rig: { ...tandem, trailer: { massKg: -1 } }, code: 'field.not-above-zero', says: /^Unladen mass has to be more than zero/ },
  { what: 'a mass of nothing', rig: { ...tandem, trailer: { massKg: 0 } }, code: 'field.not-above-zero', says: /Leave it out/ },
  { what: 'a mass beyond any trailer', rig: { ...tandem, trailer: { massKg: 1e6 } }, code: 'field.too-large', says: /40,000 kg \(88,18\d lb\) at most/ },
  { what: 'a mass in words', rig: { ...tandem, trailer: { massKg: 'heavy' } }, code: 'field.not-a-number', says: /^Unladen mass is not a number/ },
  { what: 'not a number', rig: { ...tandem, trailer: { massKg: Number.NaN } }, code: 'field.not-a-number', says: /not a number/ },
  { what: 'a strap led at 95 degrees', rig: { ...tandem, tieDown: { straps: [{ position: 'bow', place: 'bow tie', route: 'direct', angles: { downRad: 1.66, offRad: 0, leads: 'aft', side: 'left' } }] } }, code: 'field.too-large', says: /: 90 ?° at most/ },
  { what: 'a tank filled to 120 %', rig: { ...tandem, loading: { tanks: [{ fill: 1.2 }] } }, code: 'field.too-large', says: /: 100 % at most/ },
  { what: 'springs of hardly any rate', rig: { ...tandem, stance: { axleRateKgPerM: 100 } }, code: 'field.too-small', says: /kg\/mm \(28 lb\/in\) at least/ },
  { what: 'four axles', rig: { ...tandem, trailer: { axleCount: 4 } }, code: 'field.too-large', says: /3 at most/ },
  { what: 'one and a half axles', rig: { ...tandem, trailer: { axleCount: 1.5 } }, code: 'field.not-whole', says: /whole number/ },
  { what: 'a frame of cheese', rig: { ...tandem, trailer: { frame: 'cheese' } }, code: 'field.not-a-choice', says: /galvanized steel, painted steel, aluminium/ },
  { what: 'no name', rig: { trailer: {} }, code: 'field.missing', says: /is missing/ },
  { what: 'a name of spaces', rig: { name: '   ', trailer: {} }, code: 'field.empty', says: /is empty/ },
  { what: 'a name of 81 letters', rig: { name: 'x'.repeat(81), trailer: {} }, code: 'field.too-long', says: /80 characters at most/ },
  { what: 'a spare wheel that is perhaps', rig: { name: 'x', trailer: { spareWheel: 'perhaps' } }, code: 'field.not-yes-or-no', says: /yes or no/ },
  { what: 'no trailer', rig: { name: 'x' }, code: 'field.missing', says: /Trailer is missing/ },
]

test.each(impossible)('$what is refused, and nothing is kept', async ({ rig, code, says }) => {
  const opened = await open(newFolder())
  const refused = await refusalOf(opened, 'rigs.save', { rig })
  expect(refused.code).toBe(code)
  expect(refused.sentence).toMatch(says)
  expect((await ask(opened, 'rigs.list', {})).total).toBe(0)
  await opened.close()
})

test('saving a rig brings its surveys under way to it', async () => {
  const opened = await open(newFolder())
  const rigId = await keepTandem(opened)
  const before = await startSurvey(opened, rigId)
  await ask(opened, 'rigs.save', { rigId, rig: { ...tandem, name: 'Single', trailer: { ...tandem.trailer, axleCount: 1, brakes: 'none', spareWheel: false } } })
  const after = await ask(opened, 'surveys.get', { surveyId: before.id })
  expect(after.rigName).toBe('Single')
  expect(after.rig.trailer.axleCount).toBe(1)
  expect(after.summary.asked).toBeLessThan(before.summary.asked)
  expect((await ask(opened, 'surveys.list', { search: 'single' })).total).toBe(1)
  expect((await ask(opened, 'surveys.list', { search: 'north slip' })).total).toBe(0)
  await opened.close()
})

test('a rig with a survey under way is not removed; once that is discarded, it is', async () => {
  const opened = await open(newFolder())
  const rigId = await keepTandem(opened)
  const { id: surveyId } = await startSurvey(opened, rigId)
  expect((await refusalOf(opened, 'rigs.remove', { rigId })).code).toBe('rig.survey-under-way')
  await ask(opened, 'surveys.discard', { surveyId })
  await ask(opened, 'rigs.remove', { rigId })
  expect(await ask(opened, 'rigs.list', {})).toEqual({ rigs: [], total: 0 })
  expect((await refusalOf(opened, 'rigs.get', { rigId })).code).toBe('rig.not-found')
  await opened.close()
})

test('a page of rigs is as long as asked for and knows how many there are', async () => {
  const opened = await open(newFolder())
  for (const name of ['c', 'a', 'd', 'b', 'e']) await ask(opened, 'rigs.save', { rig: { name, trailer: {} } })
  const page = await ask(opened, 'rigs.list', { offset: 1, limit: 2 })
  expect(page.rigs.map(({ rig }) => rig.name)).toEqual(['b', 'c'])
  expect(page.total).toBe(5)
  await opened.close()
})
