import { copyFile, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { stations, type StationId } from '../../shared-logic/survey/station'
import { lookAt, screensFolder } from './look'
import { countSurvey, readReport } from './pdf-tallies'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

/** One station of each kind: papers, spots, an instrument, many small places, straps. */
const lookedAt: ReadonlySet<StationId> = new Set(['papers', 'frame', 'hubs', 'lights', 'tie-down'])

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

it('the example yard opens from the empty yard; every screen is accessible at both sizes, by day and by night, and its finished survey has its PDF', async () => {
  const { folder, yard, remove } = await makeYardFolder()
  const program = await startProgram(yard)
  const { page, ask, complaints, close } = await openWindow(browser, program.address)
  const wrong: string[] = []
  const visit = async (name: string, route: string): Promise<void> => {
    await page.goto(`${new URL(program.address).origin}/#${route}`)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await page.waitForLoadState('networkidle')
    wrong.push(...(await lookAt(page, name)))
  }
  try {
    await visit('empty-yard', '/')
    await page.getByRole('button', { name: en.screens.yard.openExample }).click()
    const rigs = page.getByRole('list', { name: en.screens.yard.rigs })
    await rigs.waitFor({ timeout: 60_000 })
    expect(await rigs.getByRole('heading', { level: 2 }).count()).toBe(3)
    const { surveys } = await ask('surveys.list', {})
    const issued = surveys.find((survey) => survey.status === 'issued')
    const underWay = surveys.find((survey) => survey.status === 'under way')
    if (!issued || !underWay) throw new Error('the example has no issued survey, or none under way')

    await visit('yard', '/')
    await visit('rig', `/rigs/${issued.rigId}`)
    await visit('rig-edit', `/rigs/${issued.rigId}/edit`)
    await visit('rig-new', '/rigs/new')
    await visit('start', `/rigs/${issued.rigId}/survey`)
    await visit('settings', '/settings')
    await visit('review', `/surveys/${underWay.id}/review`)
    await visit('report', `/surveys/${issued.id}/report`)
    await visit('unknown-rig', '/rigs/0190a000-0000-7000-8000-000000000000')
    await visit('unknown-address', '/nowhere')
    for (const [index, station] of stations.entries()) {
      if (!lookedAt.has(station)) continue
      await page.goto(`${new URL(program.address).origin}/#/surveys/${underWay.id}`)
      await page.getByRole('figure').getByRole('button', { name: new RegExp(`^${index + 1}\\. ${en.stations[station]}`) }).click()
      await page.getByRole('heading', { level: 2, name: new RegExp(en.stations[station]) }).waitFor()
      wrong.push(...(await lookAt(page, `walk-${index + 1}-${station}`, { phoneHasOwnColours: true })))
    }
    await copyFile(`${screensFolder}walk-7-hubs-desktop-light.png`, `${screensFolder}readme.png`)

    await page.goto(`${new URL(program.address).origin}/#/`)
    await rigs.getByRole('link', { name: issued.rigName, exact: true }).click()
    await page.getByRole('link', { name: new RegExp(`^${en.screens.rig.openReport}`) }).first().click()
    const download = page.waitForEvent('download')
    await page.getByRole('link', { name: en.screens.reportPage.download }).click()
    const path = join(folder, 'report.pdf')
    await (await download).saveAs(path)
    const { counted, title } = await readReport(new Uint8Array(await readFile(path)))
    expect(counted).toEqual(countSurvey(await ask('surveys.get', { surveyId: issued.id })))
    expect(counted.photographs).toBeGreaterThanOrEqual(12)
    expect(title).toContain(issued.rigName)
    expect(wrong).toEqual([])
    // The rig that is not there is refused, and Chromium notes the status of that answer itself.
    expect(complaints).toEqual([expect.stringContaining('422')])
  } finally {
    await close()
    await program.end('SIGTERM')
    await remove()
  }
})
