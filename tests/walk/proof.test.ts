import { appendFile, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { pictureFromTheCamera } from '../main/desk/proven-yard'
import { beginSurvey } from './desk-beside'
import { lookAt, smallTargets } from './look'
import { addByPicker } from './photographs'
import { readPdf, pageTexts } from '../main/report/read-pdf'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const { panel } = en.proof
const { review } = en.screens.survey

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

it('the surveyor sees that all photographs are as they came in, issues without places or with them, and is told of the one that was changed and of the copy that was, before issuing again too', async () => {
  const { folder, yard, remove } = await makeYardFolder()
  const program = await startProgram(yard)
  const { page, ask, complaints, close } = await openWindow(browser, program.address)
  const at = (route: string): Promise<unknown> => page.goto(`${new URL(program.address).origin}/#${route}`)
  const wrong: string[] = []
  try {
    const { settings } = await ask('settings.get', {})
    await ask('settings.save', { settings: { ...settings, surveyorName: 'Ada Quillfeather' } })
    // The window asked for the settings when it opened.
    await page.reload()
    const { id } = await beginSurvey(ask)
    await at(`/surveys/${id}`)
    await addByPicker(page, [{ name: 'hub.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(await pictureFromTheCamera(30)) }, { name: 'strap.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(await pictureFromTheCamera(160)) }])
    await at(`/surveys/${id}/review`)
    await page.getByRole('button', { name: panel.verify }).click()
    await page.getByText('2 photographs, all as they came in.').waitFor()
    await page.getByText(panel.details).click()
    await page.getByRole('heading', { name: panel.title }).evaluate((heading) => heading.scrollIntoView())
    wrong.push(...(await lookAt(page, 'proof')))
    await page.setViewportSize({ width: 390, height: 844 })
    await expect.poll(() => smallTargets(page)).toEqual([])
    await page.setViewportSize({ width: 1280, height: 800 })

    await page.getByRole('button', { name: review.issue, exact: true }).click()
    const dialog = page.getByRole('alertdialog')
    const places = dialog.getByRole('switch', { name: review.withPlaces })
    expect(await places.isChecked()).toBe(false)
    wrong.push(...(await lookAt(page, 'issue-with-places')))
    await page.keyboard.press('Tab')
    await places.focus()
    await page.keyboard.press('Space')
    expect(await places.isChecked()).toBe(true)
    const download = page.waitForEvent('download')
    await dialog.getByRole('button', { name: review.confirm, exact: true }).click()
    await page.getByRole('link', { name: en.screens.reportPage.download }).click()
    await (await download).saveAs(join(folder, 'report.pdf'))
    const text = (await pageTexts(await readPdf(join(folder, 'report.pdf')))).join(' ').replaceAll(/\s/g, '')
    const { reports: [{ end } = {}] } = await ask('proof.verify', { surveyId: id })
    expect(text.split('38.70710°N,9.13550°W')).toHaveLength(3)
    expect(end?.lastSha256).toMatch(/^[0-9a-f]{64}$/)
    expect(text).toContain(end?.lastSha256)
    expect(text).toContain('everyoriginalwasreadanewwhenthisreportwasissued,andfoundso.')

    // On the report's own page, without going back to the review.
    await page.getByRole('button', { name: panel.verify }).click()
    await page.getByText('2 photographs, all as they came in.').waitFor()
    wrong.push(...(await lookAt(page, 'proof-on-the-report-page')))

    const originals = join(yard, 'photographs', 'originals')
    const [first = '', other = ''] = (await readdir(originals, { recursive: true })).filter((name) => name.endsWith('.jpg'))
    await appendFile(join(originals, first), 'x')
    expect((await readFile(join(originals, first))).at(-1)).toBe('x'.charCodeAt(0))
    await at(`/surveys/${id}/review`)
    await page.getByRole('button', { name: panel.verify }).click()
    await page.getByText('One thing is not as it was recorded.').waitFor()
    await page.getByText(/“(hub|strap)\.jpg”: the original was changed\./).waitFor()
    await page.getByRole('heading', { name: panel.title }).evaluate((heading) => heading.scrollIntoView())
    wrong.push(...(await lookAt(page, 'proof-of-a-changed-one')))

    await writeFile(join(yard, 'photographs', 'previews', 'large', other), await pictureFromTheCamera(240))
    await page.getByRole('button', { name: panel.again }).click()
    await page.getByText('2 things are not as they were recorded.').waitFor()
    await page.getByText(/“(hub|strap)\.jpg”: the large copy, which is shown and printed, was changed\. The original is as it came in/).waitFor()
    await page.getByRole('heading', { name: panel.title }).evaluate((heading) => heading.scrollIntoView())
    wrong.push(...(await lookAt(page, 'proof-of-a-changed-copy')))

    await ask('surveys.reopen', { surveyId: id })
    await page.reload()
    await page.getByRole('button', { name: review.issue, exact: true }).click()
    await page.getByRole('alertdialog').getByRole('button', { name: review.confirm, exact: true }).click()
    const told = page.getByRole('alertdialog', { name: review.harmedTitle })
    await told.getByText(/Original changed: “(hub|strap)\.jpg”\./).waitFor()
    wrong.push(...(await lookAt(page, 'issue-with-a-changed-original')))
    const second = page.waitForEvent('download')
    await told.getByRole('button', { name: review.harmedConfirm }).click()
    await page.getByRole('link', { name: en.screens.reportPage.download }).click()
    await (await second).saveAs(join(folder, 'second.pdf'))
    await page.getByText('Of one photograph the original was not found as it came in: see “Method and limits”.').waitFor()
    wrong.push(...(await lookAt(page, 'report-with-a-changed-original')))
    const later = (await pageTexts(await readPdf(join(folder, 'second.pdf')))).join(' ').replaceAll(/\s/g, '')
    expect(later).toContain('Originalchanged:photograph')
    expect(later).not.toContain('keptunaltered')
    expect(wrong).toEqual([])
    // The browser's own line for the one call refused.
    expect(complaints).toEqual([expect.stringContaining('422')])
  } finally {
    await close()
    await program.end('SIGTERM')
    await remove()
  }
})
