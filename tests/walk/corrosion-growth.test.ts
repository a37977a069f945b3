import type { Browser, Locator } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { contract } from '../../shared-logic/contract/contract'
import { inputHeader, replySchema } from '../../shared-logic/contract/reply'
import { dateAfter } from '../../shared-logic/corrosion/calendar'
import { trailsOf } from '../../shared-logic/corrosion/trails'
import { measuredArea } from '../../shared-logic/measuring/area'
import type { Spot } from '../../shared-logic/survey/spot'
import { sayForecast } from '../../shared-logic/words/corrosion/trail'
import { en } from '../../shared-logic/words/en'
import { say, sayDate } from '../../shared-logic/words/say'
import { lookAt } from './look'
import { makeYardFolder, startProgram, type Program } from './program'
import { scenePhotograph, type ScenePhotograph } from './scene-photograph'
import { openBrowser, openWindow, type ProgramWindow } from './window'

const { corrosion: said } = en.screens
const [checkId, position] = ['frame.corrosion', 'left rail']

let browser: Browser
let place: Awaited<ReturnType<typeof makeYardFolder>>
let program: Program
let window: ProgramWindow
let rigId: string
let before: ScenePhotograph
let after: ScenePhotograph

const hash = (route: string): string => `${new URL(program.address).origin}/#${route}`

const keepPhotograph = async (surveyId: string, { file }: ScenePhotograph): Promise<string> => {
  const { origin } = new URL(program.address)
  const response = await window.page.context().request.post(`${origin}/api/photographs.add`, {
    data: file.buffer, headers: { origin, 'content-type': 'application/octet-stream', [inputHeader]: encodeURIComponent(JSON.stringify({ surveyId, checkId, position, fileName: file.name })) },
  })
  const reply = replySchema.parse(await response.json())
  if (!reply.ok) throw new Error(`the photograph was refused: ${reply.refusal.code}`)
  return contract['photographs.add'].output.parse(reply.value).photograph.sha256
}

/** The spot as the measuring board keeps it, measured on its photograph. */
const measuredSpot = async (surveyId: string, photograph: ScenePhotograph, id: string): Promise<Spot> => {
  const { scene: { plan: { widthPx, heightPx }, scale }, spot } = photograph
  const given = { widthPx, heightPx, scale, outline: { by: 'polygon' as const, points: [...spot] } }
  const result = measuredArea(given)
  return {
    id, trail: 'trail-1', place: 'Left rail, outer face', component: 'rail', material: 'painted steel', kind: 'red rust', at: { view: 'plan', aftOfBallM: 2.6, toRightM: -0.6 }, faceAreaM2: 0.4,
    areaM2: result.areaM2, areaUncertaintyM2: result.uncertaintyM2, measurement: { sha256: await keepPhotograph(surveyId, photograph), ...given, result },
  }
}

const survey = async (surveyDate: string, spotsFor: (surveyId: string) => Promise<readonly Spot[]>): Promise<void> => {
  const { id } = await window.ask('surveys.start', { rigId, purpose: 'yearly', surveyDate, ruleBook: 'us' })
  await window.ask('surveys.answer', { surveyId: id, checkId, position, answer: { values: { spots: [...(await spotsFor(id))] } } })
}

beforeAll(async () => {
  browser = await openBrowser()
  place = await makeYardFolder()
  program = await startProgram(place.yard)
  window = await openWindow(browser, program.address)
  await window.ask('settings.save', { settings: { ...(await window.ask('settings.get', {})).settings, units: 'metric' } })
  await window.page.reload()
  const rig = await window.ask('rigs.save', {
    rig: { name: 'Sandpiper', trailer: { axleCount: 1, frame: 'painted steel', brakes: 'none', suspension: 'leaf springs', supports: 'bunks', lengthM: 5, widthM: 1.9, ballToAxleM: 3.4, exposure: 'coast', builtYear: 2015 }, boat: { lengthM: 4.6, beamM: 1.8 } },
  })
  rigId = rig.id
  const scene = { member: 'rail', ground: 'painted grey', light: 'overcast', wet: false, shadow: false } as const
  // Nearer and flat, then further off and askew: only the scale makes the two comparable.
  before = await scenePhotograph('rail-before.jpg', 21, { ...scene, mmPerPx: 0.14, tiltRadians: 0 }, 0.06)
  after = await scenePhotograph('rail-after.jpg', 23, { ...scene, mmPerPx: 0.22, tiltRadians: 0.4 }, 0.07)
}, 240_000)
afterAll(async () => {
  await browser.close()
  await program.end('SIGTERM')
  await place.remove()
})

it('before any spot is noted the page says what it is for and what to do first', async () => {
  const { page } = window
  await page.goto(hash(`/rigs/${rigId}`))
  await page.getByRole('link', { name: said.link, exact: true }).click()
  await page.getByRole('heading', { name: said.empty.title }).waitFor()
  expect(await lookAt(page, 'corrosion-empty')).toEqual([])
})

/** Area of the outline laid over a photograph, in square units of its frame, by the shoelace formula. */
const outlinedUnits = async (photograph: Locator): Promise<number> => {
  const path = photograph.locator('path[fill-rule="evenodd"]').first()
  await path.waitFor()
  const points = [...((await path.getAttribute('d')) ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
  return Math.abs(points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y]
    return sum + x * nextY - nextX * y
  }, 0) / 2)
}

it('a second survey shows growth: both photographs at one scale, the curve, and the range of days in which the next grade is reached', async () => {
  const { page } = window
  const { today } = await window.ask('yard.about', {})
  await survey(dateAfter(today, -2), async (id) => [await measuredSpot(id, before, 'a')])
  await survey(today, async (id) => [await measuredSpot(id, after, 'b'), { id: 'c', place: 'Left rail, rear end', material: 'painted steel', kind: 'red rust', areaM2: 0.0002, faceAreaM2: 0.4 }])
  const { rig, surveys } = await window.ask('corrosion.history', { rigId })
  const trail = trailsOf(surveys, { trailer: rig.trailer }).find((each) => each.trail === 'trail-1')
  if (trail?.forecast.kind !== 'date' || trail.forecast.latestDate === undefined) throw new Error('a forecast with both ends was expected')

  // The surveys came from beside the window, which does not know of them.
  await page.goto(hash(`/rigs/${rigId}/corrosion`))
  await page.reload()
  await page.getByText(say(said.summary.fresh, { places: '2 Left rail, rear end' }, 'metric')).waitFor()
  const wrong = await lookAt(page, 'corrosion')
  const table = page.getByRole('table', { name: said.table.label })
  expect(await table.getByRole('row').count()).toBe(3)
  await page.getByRole('radiogroup', { name: said.view.label }).getByText(said.view.side, { exact: true }).click()
  wrong.push(...(await lookAt(page, 'corrosion-side')))
  const opener = table.getByRole('button', { name: /Left rail, outer face/ })
  await opener.focus()
  await page.keyboard.press('Enter')

  const panel = page.getByRole('region', { name: /Left rail, outer face/ })
  await panel.getByText(new RegExp(`^${en.corrosion.standings.grown} since`)).waitFor()
  await panel.getByText(sayForecast(en, trail.forecast, 'metric')).waitFor()
  const curve = panel.getByRole('img', { name: /^Corroded area over the surveys/ })
  expect(await curve.locator('text').allTextContents()).toContain(`${sayDate(trail.forecast.earliestDate)} – ${sayDate(trail.forecast.latestDate)}`)

  const photographs = panel.getByRole('figure').filter({ hasText: '±' }).locator('[data-mm-across]')
  expect(await photographs.count()).toBe(2)
  const across = await photographs.evaluateAll((frames) => frames.map((frame) => frame.getAttribute('data-mm-across')))
  expect(new Set(across).size).toBe(1)
  const perMm = 400 / Number(across[0])
  for (const [index, { spotAreaM2 }] of [before, after].entries()) expect(Math.abs((await outlinedUnits(photographs.nth(index))) / perMm ** 2 / 1e6 / spotAreaM2 - 1)).toBeLessThan(0.04)

  wrong.push(...(await lookAt(page, 'corrosion-spot')))
  for (const light of ['light', 'dark'] as const) for (const [name, width] of [['desktop', 1280], ['phone', 390]] as const) {
    await page.emulateMedia({ colorScheme: light })
    await page.setViewportSize({ width, height: 800 })
    await page.screenshot({ path: `tests/output/screens/corrosion-whole-${name}-${light}.png`, fullPage: true, animations: 'disabled' })
  }
  await page.setViewportSize({ width: 1280, height: 800 })
  await page.getByRole('button', { name: said.spot.close, exact: true }).click()
  expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true)
  expect(wrong).toEqual([])
  expect(window.complaints).toEqual([])
})
