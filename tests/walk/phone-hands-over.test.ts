import { networkInterfaces } from 'node:os'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import { sayWarnings } from '../../shared-logic/words/say-photograph'
import { openLine, type CuttableLine } from './cuttable-line'
import { beginSurvey } from './desk-beside'
import { chooseCheck, choosePictures, fingerprintAt, heavyPhotograph, lookAtPhone, openPhone, readCode, sha256Of, takePicture } from './hand-held'
import { lookAt } from './look'
import { textNamedJpeg, type PictureFile } from './pictures'
import { makeYardFolder, startProgram } from './program'
import { openBrowser, openWindow } from './window'

const panel = en.screens.phone.panel
const phoneWords = en.screens.phone.page
const fill = (phrase: string, values: Record<string, string | number>): string => say(phrase, values, 'metric')

let browser: Browser
let line: CuttableLine
beforeAll(async () => {
  browser = await openBrowser()
  line = await openLine()
})
afterAll(async () => {
  await browser.close()
  await line.close()
})

/** The machine's own address on its network, as a phone would reach it; loopback where it is on none. */
const address = Object.values(networkInterfaces()).flat().find((each) => each?.family === 'IPv4' && !each.internal)?.address ?? '127.0.0.1'

it('a phone is let in by the code on the screen and hands its pictures over a line that is cut and restored: none lost, none doubled', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder, ['--phone-on', address])
  const desk = await openWindow(browser, program.address)
  const { page: desktop, ask } = desk
  const wrong: string[] = []
  const survey = await beginSurvey(ask)
  const kept = async () => (await ask('surveys.get', { surveyId: survey.id })).photographs
  const phone = await openPhone(browser, { line: line.address })
  const { page } = phone
  const sent: PictureFile[] = []
  const arrived = async (count: number): Promise<void> => page.getByText(fill(phoneWords.pictures.arrivedOf, { arrived: count, total: count }), { exact: true }).waitFor({ state: 'attached' })
  try {
    // The desktop opens the door; a camera reads its code.
    await desktop.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
    await desktop.getByRole('article').waitFor()
    await desktop.keyboard.press('u')
    await desktop.getByRole('dialog', { name: panel.title }).waitFor()
    wrong.push(...(await lookAt(desktop, 'phone-panel-shut')))
    await desktop.getByRole('button', { name: panel.openDoor, exact: true }).click()
    const code = desktop.getByRole('img', { name: panel.code })
    await code.waitFor()
    wrong.push(...(await lookAt(desktop, 'phone-panel-code')))
    const codes: (string | undefined)[] = []
    for (const colorScheme of ['light', 'dark'] as const) {
      await desktop.emulateMedia({ colorScheme })
      codes.push(await readCode(code))
    }
    await desktop.emulateMedia({ colorScheme: 'light' })
    const [read = ''] = codes
    const { door } = await ask('phone.state', { surveyId: survey.id })
    expect(codes).toEqual([door?.pairingAddress, door?.pairingAddress])
    expect(new URL(read).hostname).toBe(address)

    // The phone opens what it read. The secret leaves the address, and the desktop hears who came.
    await page.goto(read)
    await page.getByText(phoneWords.states.open, { exact: true }).waitFor()
    expect(page.url()).toBe(`${new URL(read).origin}/`)
    expect(await page.title()).toBe(phoneWords.title)
    await desktop.getByText(fill(panel.connected, { phone: 'Slipway 14, SW-220' })).first().waitFor()
    await chooseCheck(page, 'oil level')
    wrong.push(...(await lookAtPhone(page, 'phone-page-checks')))

    // One whole, one cut in the middle, one that arrived unheard.
    const send = async (file: PictureFile): Promise<void> => {
      sent.push(file)
      await takePicture(page, file)
      await arrived(sent.length)
    }
    await send(await heavyPhotograph('first.jpg', 1))
    // What is wrong with it is said while the person still stands there; it is kept either way.
    const warning = page.getByRole('alert').getByText(sayWarnings(en, { widthPx: 1500, heightPx: 1125, checkId: 'hubs.oil-level' })[0] ?? 'no warning', { exact: true })
    await warning.waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-warned')))
    await page.getByRole('button', { name: phoneWords.pictures.keep, exact: true }).tap()
    await warning.waitFor({ state: 'detached' })
    line.weather = { cutMidwayAfter: 300_000 }
    await send(await heavyPhotograph('cut.jpg', 2))
    expect(line.uploads).toMatchObject({ begun: 3, cut: 1, whole: 2 })
    line.weather = 'cut before the reply'
    await send(await heavyPhotograph('unheard.jpg', 3))
    expect(line.uploads).toMatchObject({ begun: 4, cut: 2, whole: 2 })

    // Several at once as the network goes away in the middle, and comes back.
    const many = await Promise.all([4, 5, 6, 7].map((seed) => heavyPhotograph(`many-${seed}.jpg`, seed)))
    line.weather = { cutMidwayAfter: 500_000 }
    sent.push(...many)
    await choosePictures(page, many)
    await phone.context.setOffline(true)
    await page.getByText(phoneWords.notices.silent).waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-no-signal')))
    await phone.context.setOffline(false)
    await arrived(sent.length)

    // Taken without signal for uploads, the page loaded anew with them waiting.
    line.weather = 'no uploads'
    const queued = await Promise.all([8, 9, 10].map((seed) => heavyPhotograph(`queued-${seed}.jpg`, seed)))
    sent.push(...queued)
    await choosePictures(page, queued)
    await page.getByText(fill(phoneWords.hand.count, { arrived: 7, total: 10 })).waitFor()
    expect(await kept()).toHaveLength(7)
    await page.reload()
    await page.getByText(fill(phoneWords.hand.count, { arrived: 7, total: 10 })).waitFor()
    // The code read once more opens another tab: it goes on with them, and the one behind stands back until it is loaded anew.
    const beside = await phone.context.newPage()
    await beside.goto(read)
    await beside.getByText(fill(phoneWords.hand.count, { arrived: 7, total: 10 })).waitFor()
    expect(await beside.getByText(phoneWords.earlier.title, { exact: true }).count()).toBe(0)
    await page.bringToFront()
    await page.getByText(phoneWords.notices.elsewhere, { exact: true }).waitFor()
    await beside.close()
    await page.reload()
    await page.getByText(fill(phoneWords.hand.count, { arrived: 7, total: 10 })).waitFor()
    // And in the same tab.
    await page.goto(read)
    await page.getByText(phoneWords.states.open, { exact: true }).waitFor()
    await page.getByText(fill(phoneWords.hand.count, { arrived: 7, total: 10 })).waitFor()
    line.weather = 'carry'
    await page.evaluate(() => window.dispatchEvent(new Event('online')))
    await arrived(sent.length)

    // The same picture once more is one picture, on the phone as on the desktop.
    const trouble = page.getByRole('alert')
    await choosePictures(page, sent.slice(0, 1))
    await trouble.getByText(phoneWords.pictures.alreadyThere.one, { exact: true }).waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-already-there')))
    await trouble.getByRole('button', { name: phoneWords.pictures.understood, exact: true }).tap()
    await page.getByText(fill(phoneWords.hand.count, { arrived: sent.length, total: sent.length })).waitFor()

    // What is no picture is refused in a sentence at once, and the rest goes on.
    await choosePictures(page, [textNamedJpeg, { name: 'empty.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(0) }])
    await trouble.getByText(fill(phoneWords.pictures.notTaken.many, { count: 2 }), { exact: true }).waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-not-taken')))
    await trouble.getByRole('button', { name: phoneWords.pictures.look, exact: true }).tap()
    await page.getByRole('listitem').getByText('“notes.jpg” is not a photograph', { exact: false }).waitFor()
    await page.getByRole('listitem').filter({ hasText: phoneWords.pictures.why.empty }).getByRole('button', { name: phoneWords.pictures.remove, exact: true }).tap()
    await page.getByRole('button', { name: phoneWords.hand.checks, exact: true }).tap()
    const last = await heavyPhotograph('last.jpg', 11)
    sent.push(last)
    await takePicture(page, last)
    await page.getByText(fill(phoneWords.hand.count, { arrived: sent.length, total: sent.length })).waitFor()
    await page.getByText(fill(phoneWords.hand.notTaken, { count: 1 })).waitFor()
    await page.getByRole('button', { name: new RegExp(`^${phoneWords.hand.pictures}`) }).tap()
    wrong.push(...(await lookAtPhone(page, 'phone-page-pictures')))

    // None lost, none doubled: by count and by every byte.
    const photographs = await kept()
    expect(photographs.map(({ sha256 }) => sha256).toSorted()).toEqual(sent.map(sha256Of).toSorted())
    expect(new Set(photographs.map(({ checkId, source }) => `${checkId ?? 'none'} ${source}`))).toEqual(new Set(['hubs.oil-level phone']))
    const dialog = desktop.getByRole('dialog', { name: panel.title })
    await dialog.getByRole('img', { name: 'last.jpg' }).waitFor()
    expect(await dialog.getByRole('img').count()).toBe(sent.length)
    wrong.push(...(await lookAt(desktop, 'phone-panel-paired')))
    await desktop.getByRole('button', { name: panel.back, exact: true }).click()
    const said = desktop.getByRole('region', { name: panel.line })
    await said.getByText(fill(panel.arrivedCount.many, { count: sent.length })).waitFor()
    wrong.push(...(await lookAt(desktop, 'phone-line')))

    // Somebody else with the code that has been used.
    const stranger = await openPhone(browser)
    await stranger.page.goto(read)
    await stranger.page.getByText(en.refusals['phone.used-secret'] ?? 'no such sentence', { exact: true }).waitFor()
    expect(await stranger.page.getByRole('radio', { name: /oil level/i }).count()).toBe(0)
    wrong.push(...(await lookAtPhone(stranger.page, 'phone-page-used-code')))
    expect(stranger.complaints).toEqual([])
    await stranger.context.close()
    expect(await kept()).toHaveLength(sent.length)

    // The desktop closes the door with a picture still on the phone, and the phone is told.
    line.weather = 'no uploads'
    const left = await heavyPhotograph('left.jpg', 12)
    await page.getByRole('button', { name: phoneWords.hand.checks, exact: true }).tap()
    await takePicture(page, left)
    await page.getByText(fill(phoneWords.hand.count, { arrived: sent.length, total: sent.length + 1 })).waitFor()
    await said.getByRole('button', { name: panel.show, exact: true }).click()
    await desktop.getByRole('button', { name: panel.closeDoor, exact: true }).click()
    await desktop.getByText(fill(panel.closedNews.many, { count: sent.length })).waitFor()
    await page.getByText(phoneWords.states.closed, { exact: true }).waitFor()
    await page.getByText(en.refusals['phone.closed'] ?? 'no such sentence', { exact: true }).waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-closed')))

    // Another code, read in the same tab: what was left is sent when the person says that it belongs here.
    line.weather = 'carry'
    await desktop.getByRole('button', { name: panel.open, exact: true }).click()
    await desktop.getByRole('button', { name: panel.openDoor, exact: true }).click()
    await code.waitFor()
    await page.goto((await readCode(code)) ?? '')
    await page.getByText(phoneWords.earlier.text.one, { exact: true }).waitFor()
    wrong.push(...(await lookAtPhone(page, 'phone-page-earlier')))
    expect(await kept()).toHaveLength(sent.length)
    await page.getByRole('button', { name: phoneWords.earlier.send, exact: true }).tap()
    await arrived(1)
    expect((await kept()).map(({ sha256 }) => sha256).toSorted()).toEqual([...sent, left].map(sha256Of).toSorted())
    expect(wrong).toEqual([])
    expect(desk.complaints).toEqual([])
    expect(phone.complaints).toEqual([])
  } finally {
    await phone.context.close()
    await desk.close()
    await program.end('SIGTERM')
    await remove()
  }
})

it('an encrypted door, and a phone whose browser keeps nothing: the certificate is the one announced, and the pictures arrive', async () => {
  const { yard: folder, remove } = await makeYardFolder()
  const program = await startProgram(folder, ['--phone-on', address])
  const desk = await openWindow(browser, program.address)
  const { page: desktop, ask } = desk
  const survey = await beginSurvey(ask)
  const phone = await openPhone(browser, { ignoreHTTPSErrors: true })
  const { page } = phone
  try {
    await phone.context.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
    await desktop.goto(`${new URL(program.address).origin}/#/surveys/${survey.id}`)
    await desktop.getByRole('button', { name: panel.open, exact: true }).click()
    await desktop.getByRole('dialog').getByText(panel.encrypt, { exact: true }).click()
    await desktop.getByRole('button', { name: panel.openDoor, exact: true }).click()
    const code = desktop.getByRole('img', { name: panel.code })
    await code.waitFor()
    expect(await lookAt(desktop, 'phone-panel-encrypted')).toEqual([])
    const read = (await readCode(code)) ?? ''
    expect(read).toMatch(/^https:/)
    const shown = await desktop.getByText(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/).innerText()
    expect(shown).toBe(await fingerprintAt(new URL(read)))
    await page.goto(read)
    await page.getByText(phoneWords.notices.onlyThisPage, { exact: true }).waitFor()
    const picture = await heavyPhotograph('kept-nowhere.jpg', 20)
    await takePicture(page, picture)
    await page.getByText(fill(phoneWords.pictures.arrivedOf, { arrived: 1, total: 1 }), { exact: true }).waitFor({ state: 'attached' })
    const { photographs } = await ask('surveys.get', { surveyId: survey.id })
    expect(photographs.map(({ sha256, checkId }) => [sha256, checkId])).toEqual([[sha256Of(picture), undefined]])
    // Another phone may be let in, and the focus stays in the panel.
    await desktop.getByRole('button', { name: panel.another, exact: true }).click()
    await code.waitFor()
    await expect.poll(() => desktop.evaluate(() => document.activeElement?.closest('[role=dialog]') !== null)).toBe(true)
    await page.getByText(phoneWords.states.closed, { exact: true }).waitFor()
    expect(desk.complaints).toEqual([])
    expect(phone.complaints).toEqual([])
  } finally {
    await phone.context.close()
    await desk.close()
    await program.end('SIGTERM')
    await remove()
  }
})
