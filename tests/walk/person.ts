import { type Locator, type Page } from 'playwright-core'
import { optionLabel, wordsOf } from '../../shared-logic/words/check-sentences'
import { en } from '../../shared-logic/words/en'
import type { Verdict } from '../../shared-logic/survey/verdict'
import { say } from '../../shared-logic/words/say'
import { progressOn } from './progress'
import type { Line, Sheet } from './sheet'

const { survey } = en.screens

/** The window as a surveyor uses it, by what is read on it; pointer and typing. */
export class Person {
  constructor(readonly page: Page) {}

  readonly press = (name: string): Promise<void> => this.page.getByRole('button', { name, exact: true }).click()
  readonly follow = (name: string): Promise<void> => this.page.getByRole('link', { name, exact: true }).click()

  /** A field by its label, within the part of the screen that has it alone. */
  readonly write = (label: string, text: string, within: Page | Locator = this.page): Promise<void> => within.getByRole('textbox', { name: label, exact: true }).fill(text)

  /** One of few, in a group named by its label. */
  readonly choose = (label: string, option: string): Promise<void> =>
    this.page.getByRole('radiogroup', { name: label, exact: true }).getByText(option, { exact: true }).click()

  /** Registers facts of the rig by their path: figures and words are written, the rest is chosen. */
  async describe(path: string, value: string): Promise<void> {
    const label = en.fields[path] ?? path
    const place = this.page.locator(`[data-path="${path}"]`)
    const option = en.fieldOptions[path]?.[value]
    if (option === undefined) await this.write(label, value, place)
    else await place.getByRole('radiogroup', { name: label, exact: true }).getByText(option, { exact: true }).click()
  }

  readonly article = (): Locator => this.page.getByRole('article')

  /** The heading of the check that is open. */
  heading(): Promise<string> {
    return this.article().getByRole('heading', { level: 3 }).first().innerText().then((text) => text.replaceAll('\n', ''))
  }

  /** Waits until another check is open than the one of this heading. */
  async moved(from: string): Promise<void> {
    await this.page.waitForFunction((before) => document.querySelector('article h3')?.textContent !== before, from)
  }

  async pick(line: Line, fieldId: string, option: string): Promise<void> {
    const field = line.check.fields.find((each) => each.id === fieldId)
    if (field?.kind !== 'choice') throw new Error(`${line.key} has no choice ${fieldId}`)
    const label = line.check.fields.length === 1 ? undefined : (wordsOf(en, line.check).fields?.[fieldId]?.label ?? wordsOf(en, line.check).title)
    const groups = this.article().getByRole('radiogroup', label === undefined ? {} : { name: label, exact: true })
    await groups.getByRole('radio', { name: optionLabel(en, line.check, field, option), exact: true }).click()
  }

  readonly fieldOf = (line: Line, fieldId: string): Locator => {
    const own = wordsOf(en, line.check)
    return this.article().getByRole('textbox', { name: own.fields?.[fieldId]?.label ?? own.title, exact: true })
  }

  /** Does at the open check what the sheet says. */
  async fillIn(line: Line): Promise<void> {
    for (const [field, option] of Object.entries(line.entry.picked)) await this.pick(line, field, option)
    for (const [field, text] of Object.entries(line.entry.typed)) await this.fieldOf(line, field).fill(text)
    if (line.check.fields.some((field) => field.kind === 'spots')) await this.press(survey.spots.noneSeen)
  }

  /** Answers the open check and is at another. */
  async answer(line: Line): Promise<void> {
    await this.fillIn(line)
    if (!line.movesOn) await this.goOn()
    else await this.moved(line.heading)
  }

  /** Answers the last open check: there is nowhere to go on to but the review. */
  async answerLast(line: Line): Promise<void> {
    const [, asked] = await this.progress()
    await this.fillIn(line)
    await this.page.getByText(say(survey.walk.answered, { done: asked, asked }, 'us'), { exact: true }).waitFor()
  }

  /** What the open check came to, as soon as it can be read there. */
  readonly seesVerdict = (verdict: Verdict): Promise<void> => this.article().getByText(en.verdicts[verdict], { exact: true }).filter({ visible: true }).first().waitFor()

  /** Drags the drawn instrument of the open check to a share of its range. */
  async dragTo(share: number): Promise<void> {
    const track = await this.article().locator('[class*="track"]').boundingBox()
    const thumb = await this.article().locator('[class*="thumb"]').boundingBox()
    if (track === null || thumb === null) throw new Error('nothing here can be dragged')
    const y = thumb.y + thumb.height / 2
    await this.page.mouse.move(thumb.x + thumb.width / 2, y)
    await this.page.mouse.down()
    await this.page.mouse.move(track.x + track.width * share, y, { steps: 6 })
    await this.page.mouse.up()
  }

  async goOn(): Promise<void> {
    const from = await this.heading()
    await this.article().getByRole('button', { name: survey.check.goOn, exact: true }).click()
    await this.moved(from)
  }

  /** 'Works for all 14 still open', where it is offered. */
  async giveSameToAll(): Promise<void> {
    const from = await this.heading()
    await this.article().getByRole('button', { name: / still open$/ }).click()
    await this.moved(from)
  }

  readonly progress = (): Promise<readonly [done: number, asked: number]> => progressOn(this.page)

  /** Walks on from the open check until nothing is open, giving the same answer to fellows where that is offered. */
  async walkOn(sheet: Sheet): Promise<void> {
    let before = ''
    for (let [done, asked] = await this.progress(); done < asked; [done, asked] = await this.progress()) {
      const heading = await this.heading()
      const line = sheet.get(heading)
      if (line === undefined) throw new Error(`no check is headed ${heading}`)
      if (done === asked - 1) await this.answerLast(line)
      else if (before === line.check.id && line.movesOn && line.check.fields.every((field) => field.kind === 'choice')) await this.giveSameToAll()
      else await this.answer(line)
      before = line.check.id
    }
  }

  readonly saved = (): Promise<void> => this.page.getByText(survey.check.saved, { exact: true }).waitFor()
}
