import { readFile } from 'node:fs/promises'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { Keyboard } from './keyboard'
import { screensFolder } from './look'
import { countSurvey, readReport } from './pdf-tallies'
import { makeYardFolder, startProgram } from './program'
import { sheetOf } from './sheet'
import { openBrowser, openWindow } from './window'

const { rig: rigWords, survey: said, yard, reportPage } = en.screens
let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

it('from an empty yard to an issued PDF by keyboard alone', async () => {
  const { folder, yard: yardFolder, remove } = await makeYardFolder()
  const program = await startProgram(yardFolder)
  const window = await openWindow(browser, program.address)
  const { page, ask } = window
  const keyboard = new Keyboard(page)
  try {
    await page.getByRole('link', { name: yard.register }).waitFor()
    await keyboard.strike(yard.register)
    await page.getByRole('heading', { level: 1, name: rigWords.newTitle }).waitFor()
    await keyboard.write(en.fields['name'] ?? '', 'Sedge single')
    await keyboard.write(en.fields['trailer.maximumMassKg'] ?? '', '1500 kg')
    await keyboard.arrowTo(en.fieldOptions['trailer.frame']?.['aluminium'] ?? '')
    await keyboard.arrowTo(en.fieldOptions['trailer.axleCount']?.['1'] ?? '')
    await keyboard.arrowTo(en.fieldOptions['trailer.suspension']?.['torsion arms'] ?? '')
    await keyboard.arrowTo(en.fieldOptions['trailer.hubLubrication']?.['grease'] ?? '')
    await keyboard.arrowTo(en.fieldOptions['trailer.brakes']?.['none'] ?? '')
    await keyboard.write(en.fields['trailer.ballDiameterM'] ?? '', '2 in')
    await keyboard.arrowTo(en.fieldOptions['trailer.winch']?.['hand, strap'] ?? '')
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { level: 1, name: 'Sedge single' }).waitFor()
    const [row] = (await ask('rigs.list', {})).rigs
    expect(row?.rig.trailer).toMatchObject({ axleCount: 1, brakes: 'none', frame: 'aluminium', hubLubrication: 'grease', maximumMassKg: 1500 })

    await keyboard.strike(rigWords.startSurvey)
    await page.getByRole('heading', { level: 1, name: said.start.title }).waitFor()
    await page.getByRole('radiogroup', { name: said.start.purpose }).waitFor()
    await keyboard.arrowTo(en.purposes['before tow'])
    await keyboard.strike(said.start.begin)
    await page.getByRole('article').waitFor()
    const surveyId = new URL(page.url()).hash.split('/').at(-1) ?? ''
    const sheet = sheetOf(await ask('surveys.get', { surveyId }))

    // One set aside and one overruled, by their keys
    await page.keyboard.press('s')
    await page.getByRole('dialog').waitFor()
    await keyboard.write(said.aside.reason, 'Papers are at the office')
    await page.keyboard.press('Enter')
    await page.getByRole('dialog').waitFor({ state: 'detached' })
    await page.keyboard.press('4')
    await page.getByRole('article').getByText(en.verdicts.fail, { exact: true }).filter({ visible: true }).first().waitFor()
    await page.keyboard.press('o')
    await keyboard.arrowTo(en.verdicts.advisory)
    await keyboard.write(said.overrule.reason, 'Plate number read from the frame')
    await page.keyboard.press('Enter')
    await page.getByRole('dialog').waitFor({ state: 'detached' })
    await page.keyboard.press('n')
    await page.keyboard.type('Frame number agrees with the papers.')
    await keyboard.strike(said.check.goOn, 'Shift+Tab')

    const asked = sheet.size
    await keyboard.walkOn(sheet)
    await page.getByText(say(said.walk.answered, { done: asked, asked }, 'us'), { exact: true }).waitFor()
    await page.getByText(said.check.saved, { exact: true }).waitFor()

    await keyboard.strike(said.walk.review, 'Shift+Tab')
    await page.getByText(said.review.noOpen).waitFor()
    await keyboard.strike(said.review.issue)
    await keyboard.write(said.review.name, 'Josefin Årlund')
    await page.keyboard.press('Enter')
    await page.getByRole('alertdialog').waitFor()
    await keyboard.strike(said.review.confirm)
    await page.getByRole('link', { name: reportPage.download }).waitFor()
    const download = page.waitForEvent('download')
    await keyboard.strike(reportPage.download)
    const path = `${folder}/report.pdf`
    await (await download).saveAs(path)

    const survey = await ask('surveys.get', { surveyId })
    const report = await readReport(new Uint8Array(await readFile(path)))
    expect(report.counted).toEqual(countSurvey(survey))
    expect(survey.summary.open).toBe(0)
    for (const text of ['Sedge single', 'Josefin Årlund', 'Papers are at the office', 'Plate number read from the frame', 'Frame number agrees with the papers.', survey.reportNumber ?? 'no number'])
      expect(report.text).toContain(text)
    expect(window.complaints).toEqual([])
  } catch (error) {
    await page.screenshot({ path: `${screensFolder}failed-by-keyboard.png` })
    throw error
  } finally {
    await window.close()
    await program.end('SIGTERM')
    await remove()
  }
})
