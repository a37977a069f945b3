import type { Page } from 'playwright-core'
import { en } from '../../shared-logic/words/en'
import { wordsOf } from '../../shared-logic/words/check-sentences'
import { progressOn } from './progress'
import type { Line, Sheet } from './sheet'

type Way = 'Tab' | 'Shift+Tab'

/** More than any screen has stops for the Tab key. */
const farthest = 220

/** The window as it is used without a pointer: nothing here ever moves a mouse or names a place on the screen. */
export class Keyboard {
  constructor(private readonly page: Page) {}

  /** What the focused thing is called: its label, or what it says. */
  private readonly focused = (): Promise<string> =>
    this.page.evaluate(() => {
      const here = document.activeElement
      if (!(here instanceof HTMLElement) || here === document.body) return ''
      const labels = here instanceof HTMLInputElement || here instanceof HTMLTextAreaElement ? [...(here.labels ?? [])].map((label) => label.textContent.trim()) : []
      const named = (here.getAttribute('aria-labelledby') ?? '').split(' ').map((id) => document.getElementById(id)?.textContent.trim() ?? '').filter((text) => text !== '')
      return labels[0] ?? here.getAttribute('aria-label') ?? named[0] ?? here.textContent.trim()
    })

  /** Tabs until the thing of this name has the focus. */
  async tabTo(name: string, way: Way = 'Tab'): Promise<void> {
    const passed: string[] = []
    for (let count = 0; count < farthest; count += 1) {
      await this.page.keyboard.press(way)
      const here = await this.focused()
      if (here === name) return
      passed.push(here)
    }
    throw new Error(`the Tab key never comes to “${name}”; it passes ${[...new Set(passed)].join(', ')}`)
  }

  /** Tabs to a button or a link and presses Enter. */
  async strike(name: string, way: Way = 'Tab'): Promise<void> {
    await this.tabTo(name, way)
    await this.page.keyboard.press('Enter')
  }

  /** Tabs to a field and types. */
  async write(label: string, text: string): Promise<void> {
    if ((await this.focused()) !== label) await this.tabTo(label)
    await this.page.keyboard.type(text)
  }

  /** Tabs into a group of answers of which 'Not known' or none is chosen, and walks with the arrows to one of them. */
  async arrowTo(option: string): Promise<void> {
    for (let count = 0; count < farthest; count += 1) {
      await this.page.keyboard.press('Tab')
      const isHere = await this.page.evaluate((wanted) => {
        const here = document.activeElement
        if (!(here instanceof HTMLInputElement) || here.type !== 'radio') return false
        return [...document.querySelectorAll<HTMLInputElement>(`input[type=radio][name="${here.name}"]`)].some((each) => each.closest('label')?.textContent.trim() === wanted)
      }, option)
      if (isHere) return this.choose(option)
    }
    throw new Error(`the Tab key never comes to the answers with “${option}”`)
  }

  /** Walks with the arrows within the group that has the focus. */
  private async choose(option: string): Promise<void> {
    for (let count = 0; count < 12; count += 1) {
      const isChosen = await this.page.evaluate((wanted) => {
        const chosen = document.activeElement
        return chosen instanceof HTMLInputElement && chosen.checked && chosen.closest('label')?.textContent.trim() === wanted
      }, option)
      if (isChosen) return
      await this.page.keyboard.press(await this.isFirstOf(option) ? 'Space' : 'ArrowRight')
    }
    throw new Error(`the arrows never come to “${option}”`)
  }

  private readonly isFirstOf = (option: string): Promise<boolean> =>
    this.page.evaluate((wanted) => {
      const here = document.activeElement
      return here instanceof HTMLInputElement && !here.checked && here.closest('label')?.textContent.trim() === wanted
    }, option)

  private readonly heading = (): Promise<string> => this.page.evaluate(() => document.querySelector('article h3')?.textContent ?? '')

  /** Answers the open check by number keys, typing and Enter. */
  private async answer(line: Line): Promise<void> {
    const own = wordsOf(en, line.check)
    // Choices first: in a field that is written in, a number is a figure.
    for (const field of line.check.fields) {
      const option = line.entry.picked[field.id]
      if (field.kind === 'choice' && option !== undefined) await this.page.keyboard.press(String(field.options.indexOf(option) + 1))
      if (field.kind === 'spots') await this.strike(en.screens.survey.spots.noneSeen)
    }
    for (const [field, text] of Object.entries(line.entry.typed)) await this.write(own.fields?.[field]?.label ?? own.title, text)
  }

  /** Walks on from the open check until nothing is open. */
  async walkOn(sheet: Sheet): Promise<void> {
    for (let count = 0; count < sheet.size * 2; count += 1) {
      const heading = await this.heading()
      const line = sheet.get(heading)
      if (line === undefined) throw new Error(`no check is headed ${heading}`)
      const [done, asked] = await progressOn(this.page)
      await this.answer(line)
      if (done >= asked - 1) return
      if (!line.movesOn) await this.page.keyboard.press('Enter')
      await this.page.waitForFunction((before) => document.querySelector('article h3')?.textContent !== before, heading)
    }
    throw new Error('the walk comes to no end')
  }
}
