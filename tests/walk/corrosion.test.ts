import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { gradeSpots } from '../../shared-logic/corrosion/grade-spot'
import type { Survey } from '../../shared-logic/survey/records'
import type { Spot } from '../../shared-logic/survey/spot'
import { formatQuantity } from '../../shared-logic/units/convert'
import { sayShortGrade } from '../../shared-logic/words/corrosion/grade'
import { en } from '../../shared-logic/words/en'
import { issueFirstReport } from './issue'
import { lookAt } from './look'
import { MeasuringHand } from './measuring-hand'
import { Person } from './person'
import { makeYardFolder, startProgram, type Program } from './program'
import { scenePhotograph, type ScenePhotograph } from './scene-photograph'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { survey: said, measuring, pictureBoard } = en.screens
const { spots: spotWords } = said
const checkId = 'frame.corrosion'
const position = 'left rail'
/** A machine at other work measures slowly; nothing here is about speed. */
const patient = { timeout: 20_000 }

let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let person: Person
let rigId: string
let survey: Survey
let photograph: ScenePhotograph

/** Opens the survey at the corrosion check of the left rail. */
const standAtRail = async (surveyId: string): Promise<void> => {
  await window.ask('surveys.standAt', { surveyId, here: { checkId, position } })
  await window.page.goto(`${new URL(program.address).origin}/#/surveys/${surveyId}`)
  await person.article().getByRole('button', { name: spotWords.add, exact: true }).waitFor()
}

/** The spots of the left rail as the desk keeps them. */
const keptSpots = async (surveyId: string): Promise<readonly Spot[]> => {
  const { answers } = await window.ask('surveys.get', { surveyId })
  const spots = answers.find((each) => each.checkId === checkId && each.position === position)?.answer.values['spots']
  return Array.isArray(spots) ? spots : []
}

/** '85.6 mm' of a length in m, as a person types it. */
const typed = (lengthM: number): string => `${(lengthM * 1000).toFixed(2)} mm`

beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  person = new Person(window.page)
  await window.ask('settings.save', { settings: { ...(await window.ask('settings.get', {})).settings, units: 'metric' } })
  // Saved beside the window, which keeps what it has read for a while.
  await window.page.reload()
  const rig = await window.ask('rigs.save', {
    rig: { name: 'Curlew', trailer: { axleCount: 1, frame: 'painted steel', brakes: 'none', suspension: 'leaf springs', supports: 'bunks', lengthM: 5, widthM: 1.9, ballToAxleM: 3.4, exposure: 'coast' }, boat: { lengthM: 4.6, beamM: 1.8, engine: 'outboard' } },
  })
  rigId = rig.id
  const { today } = await window.ask('yard.about', {})
  survey = await window.ask('surveys.start', { rigId, purpose: 'sale', surveyDate: today, ruleBook: 'us' })
  photograph = await scenePhotograph('rail.jpg', 11, { member: 'rail', ground: 'painted grey', rust: 'spot', light: 'overcast', wet: false, shadow: false, tiltRadians: 0.35 })
}, 240_000)
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

it('a spot is put on the drawing, scaled by a card, outlined by mouse, moved by key, graded and kept; its area is the true one within 4 %', async () => {
  const { page } = window
  const { scene, spot, spotAreaM2, file } = photograph
  const { scale } = scene
  if (scale.kind !== 'rectangle') throw new Error('this scene has no card to scale by')
  const wrong: string[] = []
  await standAtRail(survey.id)
  await person.press(spotWords.add)
  const hand = new MeasuringHand(page, scene.plan)
  const drawing = hand.sheet.getByRole('application', { name: spotWords.drawing.plan })
  await drawing.click({ position: { x: 300, y: 200 } })
  // By keys: ten steps aft, then put.
  for (let step = 0; step < 10; step += 1) await drawing.press('ArrowRight')
  await drawing.press('Enter')
  await hand.sheet.getByRole('textbox', { name: spotWords.place, exact: true }).fill('Left rail, outer face')
  wrong.push(...(await lookAt(page, 'spot-sheet')))

  await hand.open()
  wrong.push(...(await lookAt(page, 'measuring-empty')))
  await hand.add(file)
  await hand.scaleByCard(scale.corners, typed(scale.widthM), typed(scale.heightM))
  await hand.step('outline')
  await hand.tapAt(spot)
  const byMouse = await hand.result()
  expect(Math.abs(byMouse.areaM2 / spotAreaM2 - 1)).toBeLessThan(0.04)
  expect(byMouse.uncertaintyM2).toBeGreaterThan(0)

  // One corner by keyboard: ten px out and back again leaves the area as it was, and one step makes another.
  await hand.handle('polygon', 1).focus()
  await page.keyboard.press('Shift+ArrowRight')
  await expect.poll(async () => (await hand.result()).areaM2, patient).not.toBe(byMouse.areaM2)
  await page.keyboard.press('Shift+ArrowLeft')
  await expect.poll(async () => (await hand.result()).areaM2, patient).toBe(byMouse.areaM2)

  await hand.step('face')
  await hand.tapAt(scene.face)
  await hand.result()
  await hand.board.getByText(measuring.result.share, { exact: true }).waitFor()
  wrong.push(...(await lookAt(page, 'measuring-outlined')))
  await hand.keepMeasurement()
  wrong.push(...(await lookAt(page, 'spot-sheet-measured')))
  await hand.keepSpot()

  const [kept] = await keptSpots(survey.id)
  expect(kept?.measurement?.outline.by).toBe('polygon')
  expect(kept?.areaM2).toBe(kept?.measurement?.result.areaM2)
  expect(Math.abs((kept?.areaM2 ?? 0) / spotAreaM2 - 1)).toBeLessThan(0.04)
  expect(kept?.at).toMatchObject({ view: 'plan' })
  expect(kept?.component).toBe('rail')
  expect(kept?.material).toBe('painted steel')
  expect(wrong).toEqual([])
  expect(window.complaints).toEqual([])
})

it('rust is found by colour beside the window, its share told, and a stroke of the brush changes it', async () => {
  const { page } = window
  const { scene } = photograph
  const hand = new MeasuringHand(page, scene.plan)
  await hand.sheet.waitFor({ state: 'detached' })
  await person.press(spotWords.edit.replace('{place}', 'Left rail, outer face'))
  await hand.sheet.getByRole('button', { name: spotWords.measureAgain, exact: true }).click()
  await hand.board.waitFor()
  await hand.step('outline')
  await hand.choose(measuring.outline.by, measuring.outline.ways.finder)
  const found = await hand.result()
  expect(Math.abs(found.areaM2 / scene.rustAreaM2 - 1)).toBeLessThan(0.2)
  expect(await lookAt(page, 'measuring-found')).toEqual([])
  await hand.choose(measuring.outline.stroke, measuring.outline.does.adds)
  await hand.tapAt([[scene.plan.widthPx / 2, scene.plan.heightPx / 2]])
  await expect.poll(async () => (await hand.result()).areaM2, patient).toBeGreaterThan(found.areaM2)
  await hand.press(pictureBoard.undo)
  await expect.poll(async () => (await hand.result()).areaM2, patient).toBe(found.areaM2)
  await hand.press(measuring.cancel)
  await page.getByRole('alertdialog').getByRole('button', { name: measuring.discard, exact: true }).click()
  await hand.sheet.getByRole('button', { name: spotWords.cancel, exact: true }).click()
  await hand.sheet.waitFor({ state: 'detached' })
  expect(window.complaints).toEqual([])
})

it('the report says the spot’s grade and its area', async () => {
  const [kept] = await keptSpots(survey.id)
  const [grading] = gradeSpots(kept ? [kept] : [], { position })
  if (kept?.areaM2 === undefined || grading === undefined) throw new Error('no spot was kept')
  await window.page.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}/review`)
  const { text } = await issueFirstReport(person, { name: 'A. Surveyor', address: '1 Quay' }, place.folder)
  expect(text).toContain('Left rail, outer face')
  expect(text).toContain(formatQuantity('area', kept.areaM2, 'metric'))
  expect(text).toContain(sayShortGrade(en, grading))
})
