import type { Locator, Page } from 'playwright-core'
import { framePx } from '../../renderer/picture-board/view'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { en } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'
import type { PictureFile } from './pictures'

const said = en.screens.measuring
const { spots } = en.screens.survey

/** A surveyor at the spot sheet and the measuring board, by what is read on them; points in px of the photograph. */
export class MeasuringHand {
  readonly board: Locator
  readonly sheet: Locator
  readonly stage: Locator

  constructor(private readonly page: Page, private readonly size: { readonly widthPx: number; readonly heightPx: number }) {
    this.board = page.getByRole('dialog', { name: said.title })
    this.sheet = page.getByRole('dialog', { name: /^Corroded spot/ })
    this.stage = this.board.getByRole('application', { name: said.stage })
  }

  readonly press = (name: string): Promise<void> => this.board.getByRole('button', { name, exact: true }).click()
  readonly step = (step: keyof typeof said.steps): Promise<void> => this.board.getByRole('navigation').getByRole('button', { name: new RegExp(`^${said.steps[step]}`) }).click()
  readonly choose = (group: string, option: string): Promise<void> => this.board.getByRole('radiogroup', { name: group, exact: true }).getByText(option, { exact: true }).click()
  readonly write = async (label: string, text: string): Promise<void> => {
    const field = this.board.getByRole('textbox', { name: label, exact: true })
    await field.fill(text)
    await field.blur()
  }

  /** From the spot sheet to the board. */
  async open(): Promise<void> {
    await this.sheet.getByRole('button', { name: spots.measure, exact: true }).click()
    await this.board.waitFor()
  }

  /** The photograph through the board's own picker. */
  async add(file: PictureFile): Promise<void> {
    const chooser = this.page.waitForEvent('filechooser')
    await this.press(said.add)
    await (await chooser).setFiles([file])
    await this.stage.waitFor()
  }

  /** Where a point of the photograph shows on the screen, the whole picture being in the frame. */
  async onScreen([x, y]: PixelPoint): Promise<PixelPoint> {
    const box = await this.stage.boundingBox()
    if (box === null) throw new Error('no photograph to measure on')
    const scale = Math.min((box.width - 2 * framePx) / this.size.widthPx, (box.height - 2 * framePx) / this.size.heightPx)
    return [box.x + (box.width - this.size.widthPx * scale) / 2 + x * scale, box.y + (box.height - this.size.heightPx * scale) / 2 + y * scale]
  }

  async tapAt(points: readonly PixelPoint[]): Promise<void> {
    for (const point of points) await this.page.mouse.click(...(await this.onScreen(point)))
  }

  /** Scales by the card in the picture. */
  async scaleByCard(corners: readonly PixelPoint[], width: string, height: string): Promise<void> {
    await this.choose(said.scale.by, said.scale.kinds.rectangle)
    await this.tapAt(corners)
    await this.write(said.scale.width, width)
    await this.write(said.scale.height, height)
  }

  readonly handle = (kind: keyof typeof said.handles, number: number): Locator => this.board.getByRole('button', { name: new RegExp(`^${say(said.handles[kind], { number }, 'metric')}, at `) })

  /** What the board tells: m2 and its uncertainty, once it stands. */
  async result(): Promise<{ readonly areaM2: number; readonly uncertaintyM2: number }> {
    const line = this.board.getByRole('region', { name: said.result.title }).locator('dd').first()
    await line.waitFor()
    await this.page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null)
    const [, area, uncertainty] = /([\d.,]+) cm² ± ([\d.,]+) cm²/.exec(await line.innerText()) ?? []
    if (area === undefined || uncertainty === undefined) throw new Error(`no area in “${await line.innerText()}”`)
    return { areaM2: Number(area.replaceAll(',', '')) / 1e4, uncertaintyM2: Number(uncertainty.replaceAll(',', '')) / 1e4 }
  }

  readonly keepMeasurement = async (): Promise<void> => {
    await this.press(said.keep)
    await this.board.waitFor({ state: 'detached' })
  }

  readonly keepSpot = async (): Promise<void> => {
    await this.sheet.getByRole('button', { name: spots.keep, exact: true }).click()
    await this.sheet.waitFor({ state: 'detached' })
  }
}
