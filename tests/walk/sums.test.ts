import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { painted, singleAxle, tandem } from '../../main/example/rigs'
import { withStemAt } from '../../shared-logic/balance/moved-rig'
import { defaultSettings } from '../../shared-logic/survey/settings'
import { sumsOf, type Sums } from '../../shared-logic/sums/sums'
import type { Rig } from '../../shared-logic/rig/rig'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { issueFirstReport } from './issue'
import { lookAt, screensFolder } from './look'
import { countSurvey } from './pdf-tallies'
import { Person } from './person'
import { makeYardFolder, startProgram } from './program'
import { lineOf, sheetOf } from './sheet'
import { figure, printedOf, readSheet } from './sums-figures'
import { openBrowser, openWindow } from './window'

const { rig: rigWords, sums: said, survey, yard } = en.screens
const rigName = 'Curlew single'
const sums = (rig: Rig): Sums => sumsOf(rig, defaultSettings.ruleBook, defaultSettings.sums)
const shareOf = (rig: Rig): number => sums(rig).balance.lever?.share ?? Number.NaN
const inPercent = (share: number): string => `${Number((share * 100).toFixed(1))} %`
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const registered: readonly (readonly [string, string])[] = [
  ['name', rigName], ['trailer.maximumMassKg', '4400 lb'], ['trailer.massKg', '450 kg'], ['trailer.axleRatingKg', '2000 kg'], ['trailer.lengthM', '7.6 m'], ['trailer.widthM', '2.4 m'],
  ['trailer.ballToAxleM', '4.6 m'], ['trailer.axleCount', '1'], ['trailer.brakes', 'surge'], ['boat.lengthM', '6.4 m'], ['boat.dryMassKg', '1100 kg'],
]
const placed: readonly (readonly [string, string])[] = [['loading.stemAftOfBallM', '1.1 m'], ['loading.trailerCentreAftOfBallM', '3.6 m'], ['loading.boatCentreAftOfStemM', '12 ft']]

/** Drags a handle of the drawing to where its slider says this many metres are. */
const dragTo = async (page: Page, name: string, metres: number): Promise<void> => {
  const slider = page.getByRole('slider', { name })
  const [least, most, now] = await slider.evaluate((input) => (input instanceof HTMLInputElement ? [Number(input.min), Number(input.max), Number(input.value)] : [0, 0, 0]))
  const track = await slider.locator('xpath=../../..').boundingBox()
  const thumb = await slider.locator('xpath=../..').boundingBox()
  if (track === null || thumb === null || least === undefined || most === undefined || now === undefined) throw new Error('nothing here can be dragged')
  expect(Math.min(thumb.width, thumb.height)).toBeGreaterThanOrEqual(44)
  const [x, y] = [thumb.x + thumb.width / 2, thumb.y + thumb.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + ((metres - now) / (most - least)) * track.width, y, { steps: 12 })
}

it('a rig is entered, its axle dragged until the share lies in the band, and the issued report prints the very figures of the screen', async () => {
  const { folder, yard: yardFolder, remove } = await makeYardFolder()
  const program = await startProgram(yardFolder)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  const person = new Person(page)
  const wrong: string[] = []
  try {
    await person.follow(yard.register)
    for (const [path, value] of registered) await person.describe(path, value)
    await person.press(rigWords.save)
    await person.follow(said.link)
    // What the pending button of the form had announced still stands for seconds, its button gone.
    await page.reload()
    await page.getByRole('heading', { level: 1, name: say(said.title, { rig: rigName }, 'us') }).waitFor()
    const rigId = /rigs\/([^/]+)\//.exec(page.url())?.[1] ?? ''
    const kept = async (): Promise<Rig> => (await ask('rigs.get', { rigId })).rig

    // What the balance waits for is said, and the way there leads to the field.
    const balance = page.getByRole('region', { name: said.sheets.balance })
    await balance.getByRole('button', { name: en.fields['loading.stemAftOfBallM'] ?? '' }).click()
    expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('loading.stemAftOfBallM')
    wrong.push(...(await lookAt(page, 'sums-waiting')))
    for (const [path, value] of placed) await person.write(en.fields[path] ?? '', value)

    // An impossible place is refused at its field, and not kept.
    const axleField = en.fields['trailer.ballToAxleM'] ?? ''
    await person.write(axleField, '-2 m')
    await page.getByText(/^More than 0/).waitFor()
    await page.getByText(said.openProblems.one).waitFor()
    wrong.push(...(await lookAt(page, 'sums-refused')))
    expect((await kept()).trailer.ballToAxleM).toBeCloseTo(4.6, 6)
    await person.write(axleField, '4.6 m')

    // Too little on the coupling: a fail, and what to move.
    const share = figure(page, said.share)
    await share.getByText(en.verdicts.fail).waitFor()
    await page.getByText(said.saved, { exact: true }).waitFor()
    const target = sums(await kept()).balance.goal?.moves.find(({ what }) => what === 'axle')?.axleM ?? Number.NaN
    expect(target).toBeGreaterThan(4.8)

    // Dragged: the figures follow before anything is kept; let go: kept.
    await page.getByRole('img', { name: /^The rig from the side/ }).scrollIntoViewIfNeeded()
    await dragTo(page, said.handles.axle, target)
    await share.getByText(en.verdicts.pass).waitFor()
    expect((await kept()).trailer.ballToAxleM).toBeCloseTo(4.6, 6)
    await page.mouse.up()
    await page.getByText(said.saved, { exact: true }).waitFor()
    await expect.poll(async () => (await kept()).trailer.ballToAxleM).toBeCloseTo(target, 1)
    const dragged = await kept()
    expect(shareOf(dragged)).toBeGreaterThan(0.07)
    expect(shareOf(dragged)).toBeLessThan(0.15)
    await share.getByText(inPercent(shareOf(dragged))).waitFor()

    // The boat by keyboard, as far as it says.
    await page.getByRole('slider', { name: said.handles.boat }).focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('Shift+ArrowRight')
    await share.getByText(inPercent(shareOf(withStemAt(dragged, 1.21)))).waitFor()
    await share.getByText(en.verdicts.pass).waitFor()
    await expect.poll(async () => (await kept()).loading?.stemAftOfBallM).toBeCloseTo(1.21, 6)
    const read = await readSheet(page)

    // Surveyed and issued: the report is worked from the same rig.
    await person.follow(rigName)
    await person.follow(rigWords.startSurvey)
    await person.choose(survey.start.purpose, en.purposes['before tow'])
    await person.press(survey.start.begin)
    await person.article().waitFor()
    const surveyId = new URL(page.url()).hash.split('/').at(-1) ?? ''
    const sheet = sheetOf(await ask('surveys.get', { surveyId }))
    await person.answer(lineOf(sheet, 'papers.registration'))
    await person.saved()
    await person.follow(survey.walk.review)
    const report = await issueFirstReport(person, { name: 'Ilse Marwick-Ødegård', address: '4 Slipway Lane' }, folder)
    for (const printed of printedOf(read)) expect(report.text).toContain(printed)
    const issued = await ask('surveys.get', { surveyId })
    expect(report.counted).toEqual(countSurvey(issued))
    expect(issued.summary.tallies).toMatchObject({ pass: 1, 'not seen': sheet.size - 1 })
    expect(wrong).toEqual([])
    expect(window.complaints).toEqual([])
  } catch (error) {
    await page.screenshot({ path: `${screensFolder}failed-sums.png` })
    throw error
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})

it('the sums of the example are readable and accessible at both sizes, by day and by night', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  try {
    const wrong: string[] = []
    for (const [index, rig] of [tandem, singleAxle, painted].entries()) {
      const { id } = await ask('rigs.save', { rig })
      await page.goto(`${new URL(program.address).origin}/#/rigs/${id}/sums`)
      await page.getByRole('heading', { level: 1, name: say(said.title, { rig: rig.name }, 'us') }).waitFor()
      for (const summary of await page.locator('summary').all()) await summary.click()
      wrong.push(...(await lookAt(page, `sums-${index + 1}`)))
    }
    expect(wrong).toEqual([])
    expect(window.complaints).toEqual([])
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
