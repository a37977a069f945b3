import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import type { AxeResults, RunOptions } from 'axe-core'
import type { Page } from 'playwright-core'

declare global {
  interface Window {
    readonly axe: { readonly run: (options: RunOptions) => Promise<AxeResults> }
  }
}

export const screensFolder = fileURLToPath(new URL('../output/screens/', import.meta.url))
mkdirSync(screensFolder, { recursive: true })
const axeText = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

const tags = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice']
/** What day and night can differ in. */
const ofLight: RunOptions = { runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] } }

interface Looked {
  /** The stylesheets of this screen give things other colours where it is narrow. */
  readonly phoneHasOwnColours?: boolean
}

/** Night differs from day in colours alone: they are judged at one size where both have the same. */
const rulesFor = (size: 'desktop' | 'phone', light: 'light' | 'dark', { phoneHasOwnColours = false }: Looked): RunOptions | undefined => {
  if (light === 'light') return { runOnly: tags }
  return size === 'desktop' || phoneHasOwnColours ? ofLight : undefined
}

/** What axe-core holds against the screen as it stands, a line each. */
export const violationsOn = async (page: Page, options: RunOptions = { runOnly: tags }): Promise<string[]> => {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeText)
  const results = await page.evaluate((chosen) => window.axe.run(chosen), { resultTypes: ['violations' as const], selectors: false, ...options })
  return results.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`))
}

const widths = [['desktop', 1280, 800], ['phone', 390, 844]] as const

/** Nothing may be wider than the window. Answers by how many pixels it is. */
export const overflowOn = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

const targetPx = 44

/** Things to tap on the screen that are smaller than a gloved thumb wants; a link within a sentence is none. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const tappable = [...document.querySelectorAll<HTMLElement>('button, a[href], [role=radio], input:not([type=hidden], [type=file], [type=radio], [type=range]), textarea, summary')]
    return tappable.flatMap((target) => {
      // A link whose after-image covers its row is as large as the row.
      const isStretched = getComputedStyle(target, '::after').position === 'absolute'
      const { width, height } = ((isStretched ? target.offsetParent : null) ?? target).getBoundingClientRect()
      const isShown = target.checkVisibility({ visibilityProperty: true }) && width > 1 && height > 1 && target.closest('.visually-hidden') === null && target.tabIndex >= 0
      const isSkip = target.getAttribute('href') === '#main'
      const isInSentence = target.closest('p') !== null
      return isShown && !isSkip && !isInSentence && (width < least - 0.5 || height < least - 0.5) ? [`${target.tagName} “${target.getAttribute('aria-label') ?? target.textContent.trim().slice(0, 40)}” ${Math.round(width)} × ${Math.round(height)}`] : []
    })
  }, targetPx)

/** The colours of one light may still stand a frame or two after the other is asked for. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    // oxlint-disable-next-line unicorn/consistent-function-scoping -- it runs in the page, where nothing outside is known
    const frame = (): Promise<unknown> => new Promise((resolve) => { requestAnimationFrame(resolve) })
    await frame()
    await frame()
    await Promise.allSettled(document.getAnimations().map((animation) => animation.finished))
    await frame()
  })

/** Gives the window a size and waits until the screen is laid out in it: the browser takes both a moment. */
const resize = async (page: Page, width: number, height: number): Promise<void> => {
  await page.setViewportSize({ width, height })
  await page.waitForFunction((wide) => window.matchMedia(`(width: ${wide}px)`).matches, width)
  await settled(page)
}

/** The screen at both sizes by day and by night: a picture of each is kept, and what is wrong is answered, a line each. */
export const lookAt = async (page: Page, name: string, looked: Looked = {}): Promise<string[]> => {
  const wrong: string[] = []
  for (const [size, width, height] of widths) {
    await resize(page, width, height)
    for (const light of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: light })
      await settled(page)
      // The picture first: with it the browser has drawn what is judged.
      await page.screenshot({ path: `${screensFolder}${name}-${size}-${light}.png`, animations: 'disabled' })
      const rules = rulesFor(size, light, looked)
      const found = rules ? await violationsOn(page, rules) : []
      const over = await overflowOn(page)
      wrong.push(...found.map((line) => `${name}, ${size}, ${light}: ${line}`), ...(over > 0 ? [`${name}, ${size}: ${over} px wider than the window`] : []))
    }
  }
  await page.emulateMedia({ colorScheme: 'light' })
  await resize(page, 1280, 800)
  return wrong
}
