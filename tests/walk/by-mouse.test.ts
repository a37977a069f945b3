import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { placeKey } from '../../shared-logic/survey/keys'
import { say } from '../../shared-logic/words/say'
import { issueFirstReport } from './issue'
import { answerIn } from './kept-answer'
import { screensFolder } from './look'
import { Person } from './person'
import { countSurvey } from './pdf-tallies'
import { addByDrop, addByPaste, addByPicker, photographsShown } from './photographs'
import { photographFile, textNamedJpeg, truncatedJpeg } from './pictures'
import { makeYardFolder, startProgram } from './program'
import { lineOf, sheetOf } from './sheet'
import { openBrowser, openWindow } from './window'

const { rig: rigWords, survey: said, yard } = en.screens
const rigName = 'Marram tandem'
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const facts: readonly (readonly [string, string])[] = [
  ['name', rigName], ['owner.name', 'Wiebke Thorén'], ['trailer.maximumMassKg', '5000 lb'], ['trailer.frame', 'galvanized steel'], ['trailer.lengthM', '24 ft'], ['trailer.widthM', '8 ft'],
  ['trailer.ballToAxleM', '16 ft'], ['trailer.axleCount', '2'], ['trailer.suspension', 'leaf springs'], ['trailer.hubLubrication', 'oil bath'], ['trailer.brakes', 'surge'], ['trailer.brakeForm', 'disc'],
  ['trailer.ballDiameterM', '2 in'], ['trailer.tyre.loadIndex', '100'], ['trailer.tyre.placardPressurePa', '50 psi'], ['trailer.supports', 'bunks'], ['trailer.winch', 'hand, strap'], ['boat.lengthM', '20 ft'],
]

it('from an empty yard to an issued PDF by mouse, and the PDF says what the survey says', async () => {
  const { folder, yard: yardFolder, remove } = await makeYardFolder()
  const program = await startProgram(yardFolder)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  const person = new Person(page)
  try {
    // Register
    await person.follow(yard.register)
    for (const [path, value] of facts) await person.describe(path, value)
    await person.press(rigWords.save)
    await page.getByRole('heading', { level: 1, name: rigName }).waitFor()
    const [row] = (await ask('rigs.list', {})).rigs
    expect(row?.rig.trailer).toMatchObject({ axleCount: 2, frame: 'galvanized steel', hubLubrication: 'oil bath', brakes: 'surge', brakeForm: 'disc' })
    expect(row?.rig.trailer.maximumMassKg).toBeCloseTo(2267.96, 1)

    // Start
    await person.follow(rigWords.startSurvey)
    await person.choose(said.start.purpose, en.purposes['before tow'])
    await page.getByText(/^A walk-round: \d+ checks/).waitFor()
    await person.press(said.start.begin)
    await person.article().waitFor()
    const surveyId = new URL(page.url()).hash.split('/').at(-1) ?? ''
    const sheet = sheetOf(await ask('surveys.get', { surveyId }))
    const kept = async (key: string) => answerIn(await ask('surveys.get', { surveyId }), key)
    const drawing = page.getByRole('figure')

    // A finding: a station tapped on the drawing, its verdict at once, photographs, an overrule and a note
    await drawing.getByRole('button', { name: new RegExp(`^\\d+\\. ${en.stations.winch}`) }).click()
    await page.getByRole('heading', { level: 2, name: new RegExp(en.stations.winch) }).waitFor()
    await person.answer(lineOf(sheet, 'winch.post'))
    const strap = lineOf(sheet, 'winch.strap')
    expect(await person.heading()).toBe(strap.heading)
    await person.pick(strap, 'damage', 'cut')
    await person.fieldOf(strap, 'length').fill('3/8 in')
    await person.fieldOf(strap, 'width').fill('2 in')
    await person.seesVerdict('fail')
    await person.saved()
    const news = await addByPicker(page, [await photographFile('strap 1.jpg', 1), textNamedJpeg, await truncatedJpeg(), await photographFile('strap 2.jpg', 2)])
    expect(news).toContain(say(en.refusals['photograph.not-a-photograph'] ?? '', { name: 'notes.jpg' }, 'us'))
    expect(news).toContain(say(en.refusals['photograph.damaged'] ?? '', { name: 'cut-off.jpg' }, 'us'))
    expect(await addByPicker(page, [await photographFile('strap 1 again.jpg', 1)])).toContain(say(en.refusals['photograph.already-there'] ?? '', { name: 'strap 1 again.jpg', kept: 'strap 1.jpg' }, 'us'))
    expect(await photographsShown(page)).toBe(2)
    await page.getByText(said.photographs.drop, { exact: true }).waitFor()
    await addByDrop(page, await photographFile('dropped.jpg', 3))
    await addByPaste(page)
    expect(await photographsShown(page)).toBe(4)
    await person.press(said.more.overrule)
    await person.choose(said.overrule.verdict, en.verdicts.advisory)
    await person.write(said.overrule.reason, 'New strap is on board and goes on today')
    await page.getByRole('dialog').getByRole('button', { name: said.overrule.confirm, exact: true }).click()
    await page.getByText(/overruled to Advisory: New strap is on board/).waitFor()
    await person.press(said.more.note)
    await person.write(said.more.note, 'Cut at the roller, port side.')
    await person.goOn()
    expect(await kept(placeKey('winch.strap', 'rig'))).toMatchObject({
      overrule: { verdict: 'advisory', reason: 'New strap is on board and goes on today' }, note: 'Cut at the roller, port side.', values: { damage: 'cut' },
    })
    expect((await kept(placeKey('winch.strap', 'rig')))?.values['length']).toBeCloseTo(0.009525, 6)
    expect((await ask('surveys.get', { surveyId })).photographs).toHaveLength(4)

    // A hub tapped on the drawing, and its oil level dragged
    await drawing.getByRole('button', { name: new RegExp(`^\\d+\\. ${en.stations.hubs}`) }).click()
    await drawing.getByRole('button', { name: /right rear/ }).click()
    const condition = lineOf(sheet, 'hubs.oil-condition', 'axle 2 right')
    expect(await person.heading()).toBe(condition.heading)
    await person.answer(condition)
    await drawing.getByRole('button', { name: /right rear/ }).click()
    const oil = lineOf(sheet, 'hubs.oil-level', 'axle 2 right')
    expect(await person.heading()).toBe(oil.heading)
    await person.dragTo(0.3)
    await person.seesVerdict('advisory')
    await person.goOn()
    expect((await kept(oil.key))?.values['level']).toBeCloseTo(0.3, 1)

    // Not seen, with a reason
    await drawing.getByRole('button', { name: new RegExp(`^\\d+\\. ${en.stations['tie-down']}`) }).click()
    const unseen = sheet.get(await person.heading())
    await person.press(said.more.notSeen)
    await page.getByRole('dialog').getByRole('button', { name: said.aside.commonReasons['not seen'][0], exact: true }).click()
    await person.moved(unseen?.heading ?? '')
    expect(await kept(unseen?.key ?? '')).toMatchObject({ aside: { as: 'not seen', reason: said.aside.commonReasons['not seen'][0] } })

    // The rest of the walk, in its own order
    await person.walkOn(sheet)
    await person.saved()

    // Review and issue
    await person.follow(said.walk.review)
    await page.getByText(said.review.noOpen).waitFor()
    const report = await issueFirstReport(person, { name: 'Ilse Marwick-Ødegård', address: '4 Slipway Lane' }, folder)

    // The PDF against the survey
    const survey = await ask('surveys.get', { surveyId })
    expect(survey.status).toBe('issued')
    expect(report.counted).toEqual(countSurvey(survey))
    expect(survey.summary).toMatchObject({ open: 0, tallies: { 'not seen': 1 } })
    expect(report.title).toContain(survey.reports[0]?.number ?? 'no number')
    for (const name of [rigName, 'Ilse Marwick-Ødegård', 'Wiebke Thorén', 'New strap is on board and goes on today', 'Cut at the roller, port side.', 'strap 2.jpg', 'dropped.jpg', survey.reports[0]?.number ?? 'no number'])
      expect(report.text).toContain(name)
    // Chromium itself notes the two files that were refused, and nothing else.
    expect(window.complaints).toEqual(Array.from({ length: 2 }, () => expect.stringContaining('422')))
  } catch (error) {
    await page.screenshot({ path: `${screensFolder}failed-by-mouse.png` })
    throw error
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
