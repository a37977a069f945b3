import type { Page } from 'playwright-core'
import { en } from '../../shared-logic/words/en'
import { findChromium } from '../find-chromium'
import { MeasuringHand } from '../walk/measuring-hand'
import { makeYardFolder, startProgram } from '../walk/program'
import { scenePhotograph } from '../walk/scene-photograph'
import { openBrowser, openWindow, type ProgramWindow } from '../walk/window'
import { atShare, type BenchLine } from './bench-line'

/** The issue: what the slider of rust does shows within this. */
const budgetMs = 50
const moves = 40
const betweenMovesMs = 250
const { measuring, survey: said } = en.screens
const here = { checkId: 'frame.corrosion', position: 'left rail' }

/** To the measuring board, a rusty rail before it, scaled by its card and outlined by colour. Answers the slider. */
const openSlider = async ({ page, ask }: ProgramWindow, address: string) => {
  const photograph = await scenePhotograph('rail.jpg', 74, { member: 'close', rust: 'general' })
  const { scale, plan } = photograph.scene
  if (scale.kind !== 'rectangle') throw new Error('this scene has no card to scale by')
  await ask('settings.save', { settings: { ...(await ask('settings.get', {})).settings, units: 'metric' } })
  const { id } = await ask('rigs.save', { rig: { name: 'Curlew', trailer: { axleCount: 1, frame: 'painted steel', brakes: 'none', supports: 'bunks', lengthM: 5, widthM: 1.9 } } })
  const { today } = await ask('yard.about', {})
  const survey = await ask('surveys.start', { rigId: id, purpose: 'sale', surveyDate: today, ruleBook: 'us' })
  await ask('surveys.standAt', { surveyId: survey.id, here })
  await page.goto(`${new URL(address).origin}/#/surveys/${survey.id}`)
  await page.reload()
  await page.getByRole('article').getByRole('button', { name: said.spots.add, exact: true }).click()
  const hand = new MeasuringHand(page, plan)
  await hand.open()
  await hand.add(photograph.file)
  await hand.scaleByCard(scale.corners, `${(scale.widthM * 1000).toFixed(2)} mm`, `${(scale.heightM * 1000).toFixed(2)} mm`)
  await hand.step('outline')
  await hand.choose(measuring.outline.by, measuring.outline.ways.finder)
  await hand.result()
  return hand.board.getByRole('slider', { name: measuring.outline.sensitivity })
}

/** From the key's own time stamp until the frame after the one that drew the new outline, ms; undefined where the outline stayed as it was. */
const moveOnce = async (page: Page, key: string): Promise<number | undefined> => {
  const noted = await page.evaluateHandle(() => {
    const times: { key?: number; drawn?: number } = {}
    const outline = [...document.querySelectorAll('[role=dialog] svg pattern')].at(-1)?.closest('svg')
    if (!outline) throw new Error('no outline on the board')
    window.addEventListener('keydown', (event) => { times.key = event.timeStamp }, { capture: true, once: true })
    const watch = new MutationObserver(() => {
      watch.disconnect()
      requestAnimationFrame(() => requestAnimationFrame(() => { times.drawn = performance.now() }))
    })
    watch.observe(outline, { subtree: true, attributes: true, attributeFilter: ['d'] })
    return times
  })
  await page.keyboard.press(key)
  await page.waitForTimeout(betweenMovesMs)
  const { key: pressed, drawn } = await noted.jsonValue()
  return pressed === undefined || drawn === undefined ? undefined : drawn - pressed
}

/** The slider of rust in the window, moved by key on a 1600 px preview: from the key to the outline drawn anew. */
export const benchSlider = async (): Promise<BenchLine[]> => {
  const budget = `under ${budgetMs} ms`
  if (findChromium() === undefined) return [{ name: 'the slider of rust in the window, no Chromium was found', value: undefined, unit: '', budget, ok: undefined }]
  const { yard, remove } = await makeYardFolder()
  const program = await startProgram(yard)
  const browser = await openBrowser()
  try {
    const window = await openWindow(browser, program.address)
    const slider = await openSlider(window, program.address)
    await slider.focus()
    const times: number[] = []
    for (let move = 0; move < moves; move += 1) {
      const ms = await moveOnce(window.page, move % 10 < 5 ? 'ArrowRight' : 'ArrowLeft')
      if (ms !== undefined) times.push(ms)
    }
    const median = atShare(times, 0.5)
    return [
      { name: `the slider of rust in the window, key to outline drawn, middle of ${times.length}`, value: Math.round(median), unit: 'ms', budget, ok: times.length > moves / 2 && median < budgetMs },
      { name: 'nine of ten within', value: Math.round(atShare(times, 0.9)), unit: 'ms', budget: 'none', ok: true },
    ]
  } finally {
    await browser.close()
    await program.end('SIGTERM')
    await remove()
  }
}
