import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { withStemAt } from '../../shared-logic/balance/moved-rig'
import { defaultSettings } from '../../shared-logic/survey/settings'
import { sumsOf, type Sums } from '../../shared-logic/sums/sums'
import type { Rig } from '../../shared-logic/rig/rig'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { lookAt } from './look'
import { Person } from './person'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const { rig: rigWords, sums: said, yard } = en.screens
const sums = (rig: Rig): Sums => sumsOf(rig, defaultSettings.ruleBook, defaultSettings.sums)
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

const registered: readonly (readonly [string, string])[] = [
  ['name', 'Curlew single'], ['trailer.maximumMassKg', '4400 lb'], ['trailer.massKg', '450 kg'], ['trailer.axleRatingKg', '2000 kg'], ['trailer.lengthM', '7.6 m'], ['trailer.widthM', '2.4 m'],
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

it('a rig is entered, its axle dragged until the share lies in the band, and the place is kept', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder)
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
    await page.getByRole('heading', { level: 1, name: say(said.title, { rig: 'Curlew single' }, 'us') }).waitFor()
    const rigId = /rigs\/([^/]+)\//.exec(page.url())?.[1] ?? ''

    // What the balance waits for is said, and the way there leads to the field.
    const balance = page.getByRole('region', { name: said.sheets.balance })
    await balance.getByRole('button', { name: en.fields['loading.stemAftOfBallM'] ?? '' }).click()
    expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('loading.stemAftOfBallM')
    wrong.push(...(await lookAt(page, 'sums-waiting')))
    for (const [path, value] of placed) await person.write(en.fields[path] ?? '', value)

    // Too little on the coupling: a fail, and what to move.
    const figures = page.getByText(said.share, { exact: true }).locator('xpath=..')
    await figures.getByText(en.verdicts.fail).waitFor()
    await page.getByText(said.saved, { exact: true }).waitFor()
    const before = (await ask('rigs.get', { rigId })).rig
    const target = sums(before).balance.goal?.moves.find(({ what }) => what === 'axle')?.axleM ?? Number.NaN
    expect(target).toBeGreaterThan(4.8)

    // Dragged: the figures follow before anything is kept; let go: kept.
    await page.getByRole('img', { name: /^The rig from the side/ }).scrollIntoViewIfNeeded()
    await dragTo(page, said.handles.axle, target)
    await figures.getByText(en.verdicts.pass).waitFor()
    expect((await ask('rigs.get', { rigId })).rig.trailer.ballToAxleM).toBeCloseTo(4.6, 6)
    await page.mouse.up()
    await page.getByText(said.saved, { exact: true }).waitFor()
    await expect.poll(async () => (await ask('rigs.get', { rigId })).rig.trailer.ballToAxleM).toBeCloseTo(target, 1)
    const after = (await ask('rigs.get', { rigId })).rig
    const share = sums(after).balance.lever?.share ?? 0
    expect(share).toBeGreaterThan(0.07)
    expect(share).toBeLessThan(0.15)
    await figures.getByText(`${Number((share * 100).toFixed(1))} %`).waitFor()

    // The boat by keyboard, as far as it says.
    const stem = page.getByRole('slider', { name: said.handles.boat })
    await stem.focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('Shift+ArrowRight')
    const moved = withStemAt(after, 1.21)
    await figures.getByText(`${Number(((sums(moved).balance.lever?.share ?? 0) * 100).toFixed(1))} %`).waitFor()
    await expect.poll(async () => (await ask('rigs.get', { rigId })).rig.loading?.stemAftOfBallM).toBeCloseTo(1.21, 6)

    // An impossible place is refused at its field, and not kept.
    await person.write(en.fields['trailer.ballToAxleM'] ?? '', '-2 m')
    await page.getByText(/^More than 0/).waitFor()
    await page.getByText(said.openProblems.one).waitFor()
    wrong.push(...(await lookAt(page, 'sums-refused')))
    expect((await ask('rigs.get', { rigId })).rig.trailer.ballToAxleM).toBe(after.trailer.ballToAxleM)
    expect(wrong).toEqual([])
    expect(window.complaints).toEqual([])
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
    await page.getByRole('button', { name: yard.openExample }).click()
    await page.getByRole('list', { name: yard.rigs }).waitFor({ timeout: 60_000 })
    const wrong: string[] = []
    for (const [index, { id, rig }] of (await ask('rigs.list', {})).rigs.entries()) {
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
