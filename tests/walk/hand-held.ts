import { createHash } from 'node:crypto'
import { connect } from 'node:tls'
import jsQR from 'jsqr'
import type { Browser, Locator, Page } from 'playwright-core'
import sharp from 'sharp'
import { phonePageWords as words } from '../../shared-logic/words/en/screens/phone'
import { overflowOn, screensFolder, violationsOn } from './look'
import type { PictureFile } from './pictures'

export const sha256Of = ({ buffer }: PictureFile): string => createHash('sha256').update(buffer).digest('hex')

/** A photograph of some megabytes, as noise does not shrink: it takes a moment on the line. */
export const heavyPhotograph = async (name: string, seed: number): Promise<PictureFile> => {
  const [width, height] = [1500, 1125]
  let state = seed * 2_654_435_761 + 1
  const noise = Buffer.alloc(width * height * 3)
  for (let at = 0; at < noise.length; at += 1) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    noise[at] = state >>> 24
  }
  return { name, mimeType: 'image/jpeg', buffer: await sharp(noise, { raw: { width, height, channels: 3 } }).jpeg({ quality: 80 }).toBuffer() }
}

/** What a phone's camera reads from a code on a screen. */
export const readCode = async (code: Locator): Promise<string | undefined> => {
  const { data, info } = await sharp(await code.screenshot()).ensureAlpha().raw().toBuffer({ resolveWithObject: true })
  return jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data
}

/** SHA-256 of the certificate that is really served there. */
export const fingerprintAt = ({ hostname, port }: URL): Promise<string> =>
  new Promise((resolve, reject) => {
    const socket = connect({ host: hostname, port: Number(port), rejectUnauthorized: false }, () => {
      resolve(socket.getPeerCertificate().fingerprint256)
      socket.destroy()
    })
    socket.on('error', reject)
  })

/** A phone: a browser of its own with a touch screen, on a line that can be cut. */
export const openPhone = async (browser: Browser, { line, ...more }: { readonly line?: string; readonly ignoreHTTPSErrors?: boolean } = {}) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2, reducedMotion: 'reduce',
    userAgent: 'Mozilla/5.0 (Linux; Slipway 14; SW-220) Web/537.36',
    // The door may stand on this machine's own loopback, which a browser would not ask a proxy for.
    ...(line !== undefined && { proxy: { server: line, bypass: '<-loopback>' } }),
    ...more,
  })
  context.setDefaultTimeout(30_000)
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('pageerror', (error) => complaints.push(String(error)))
  page.on('console', (message) => {
    // A cut line and a refusal are the test's own doing, and the browser notes each.
    if ((message.type() === 'error' || message.type() === 'warning') && !message.text().startsWith('Failed to load resource')) complaints.push(message.text())
  })
  return { context, page, complaints }
}

/** The page by day and by night, upright and across; what is wrong with it, a line each. */
export const lookAtPhone = async (page: Page, name: string): Promise<string[]> => {
  const wrong: string[] = []
  for (const [held, width, height] of [['upright', 390, 844], ['across', 844, 390]] as const) {
    await page.setViewportSize({ width, height })
    for (const light of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: light })
      await page.screenshot({ path: `${screensFolder}${name}-${held}-${light}.png`, animations: 'disabled' })
      const over = await overflowOn(page)
      wrong.push(...(await violationsOn(page)).map((line) => `${name}, ${held}, ${light}: ${line}`), ...(over > 0 ? [`${name}, ${held}: ${over} px too wide`] : []))
    }
    wrong.push(...(await smallTargetsOn(page)).map((target) => `${name}, ${held}: ${target}`))
  }
  await page.setViewportSize({ width: 390, height: 844 })
  await page.emulateMedia({ colorScheme: 'light' })
  return wrong
}

const targetPx = 56

/** What a thumb in a wet glove would miss. An input that its label stands for is measured as that label. */
const smallTargetsOn = (page: Page): Promise<string[]> =>
  page.evaluate((least) => [...document.querySelectorAll<HTMLElement>('button, input, a[href]')].flatMap((each) => {
    const target = each.classList.contains('visually-hidden') ? (each.closest('label') ?? each) : each
    const { width, height } = target.getBoundingClientRect()
    return target.checkVisibility() && (width < least - 0.5 || height < least - 0.5) ? [`${target.tagName} “${target.textContent.trim().slice(0, 40)}” ${Math.round(width)} × ${Math.round(height)}`] : []
  }), targetPx)

/** Chooses a check by its title and place, as they stand in the list. */
export const chooseCheck = async (page: Page, find: string): Promise<void> => {
  await page.getByRole('searchbox', { name: words.checks.find }).fill(find)
  await page.getByRole('radio', { name: new RegExp(find.split(' ')[0] ?? '', 'i') }).first().locator('xpath=ancestor::label').tap()
  await page.getByRole('searchbox', { name: words.checks.find }).fill('')
}

/** A picture by the phone's own camera, or several that it has already, through what the thumb taps. */
export const takePicture = async (page: Page, file: PictureFile): Promise<void> => {
  const chooser = page.waitForEvent('filechooser')
  await page.getByText(words.hand.take, { exact: true }).tap()
  await (await chooser).setFiles(file)
}
export const choosePictures = async (page: Page, files: readonly PictureFile[]): Promise<void> => {
  const chooser = page.waitForEvent('filechooser')
  await page.getByText(words.hand.choose, { exact: true }).tap()
  await (await chooser).setFiles([...files])
}
