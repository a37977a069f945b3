import type { Verdict } from '../../shared-logic/survey/verdict'
import { drawBar, type Bar } from './bar'
import type { Line } from './lines'
import type { Sheet } from './page'
import { verdictShape } from './shapes'
import { styles, type Style } from './styles'
import type { Tag } from './tags'

export interface TableColumn {
  readonly heading: string
  /** Share of the table's width; the shares of all columns add up to 1. */
  readonly share: number
  readonly align?: 'right'
}

/** A cell's text; with a verdict its shape stands before the word. Lines after the first paragraph may be softer. */
export interface Cell {
  readonly text: string
  readonly verdict?: Verdict
  readonly style?: Style
  /** A bar in the room left of the text, as shares of its post: `used` may run past it; from `wanted` on the reserve is broken into. */
  readonly bar?: Bar
}

export interface TableRow {
  readonly cells: readonly Cell[]
  /** The last row, of sums. */
  readonly sum?: true
}

interface SetCell {
  readonly lines: readonly Line[]
  readonly style: Style
  readonly verdict: Verdict | undefined
  readonly bar: Bar | undefined
  readonly x: number
  readonly width: number
  readonly align: 'left' | 'right'
}

const gap = 10
/** Room at the right of a bar for its figure. */
const barTextRoom = 40
const padding = 4
const indent = 14

/** A table with hairlines between its rows, its head repeated on each page. Long rows go on over the page. */
export class Table {
  readonly #left: readonly number[]
  readonly #widths: readonly number[]

  constructor(readonly sheet: Sheet, readonly columns: readonly TableColumn[]) {
    const { x, width } = sheet.whole
    this.#left = columns.map((_, index) => x + width * columns.slice(0, index).reduce((sum, { share }) => sum + share, 0))
    this.#widths = columns.map(({ share }, index) => width * share - (index === columns.length - 1 ? 0 : gap))
  }

  /** What head and first rows take, so that a heading is kept with them. */
  beginning(rows: readonly TableRow[], count = 2): number {
    return rows.slice(0, count).reduce((sum, { cells }) => sum + this.#height(this.#set(cells)), this.#headHeight())
  }

  draw(rows: readonly TableRow[]): void {
    const { sheet } = this
    sheet.tags.within('Table', {}, () => {
      const set = rows.map((row) => this.#set(row.cells))
      sheet.need(this.beginning(rows))
      this.#head('TH')
      set.forEach((cells) => this.#row(cells))
    })
    sheet.rule()
    sheet.y += padding
  }

  #set(cells: readonly Cell[]): SetCell[] {
    return cells.map(({ text, verdict, bar, style = styles.small }, index) => {
      const shift = verdict === undefined ? 0 : indent
      const width = (this.#widths[index] ?? 0) - shift
      return { lines: this.sheet.setter.lines(text, style, width), style, verdict, bar, x: (this.#left[index] ?? 0) + shift, width, align: this.columns[index]?.align ?? 'left' }
    })
  }

  #headCells(): SetCell[] {
    return this.#set(this.columns.map(({ heading }) => ({ text: heading, style: styles.label })))
  }

  #height(cells: readonly SetCell[]): number {
    return Math.max(0, ...cells.map(({ lines, style }) => lines.length * style.leading)) + padding * 2
  }

  #headHeight(): number {
    return this.#height(this.#headCells())
  }

  #head(tag: 'TH' | 'repeated'): void {
    const { sheet } = this
    const cells = this.#headCells()
    const height = this.#height(cells) - padding
    const top = sheet.y
    const draw = ({ lines, style, x, width, align }: SetCell): void => {
      sheet.setLines(lines, style, { x, width }, top + height - padding - lines.length * style.leading, align)
    }
    if (tag === 'repeated') sheet.tags.decoration(() => cells.forEach(draw), 'Pagination')
    else sheet.tags.within('TR', {}, () => cells.forEach((cell) => sheet.tags.within('TH', { scope: 'Column' }, () => sheet.tags.leaf(() => draw(cell)))))
    sheet.y = top + height
  }

  #row(cells: readonly SetCell[]): void {
    const { sheet } = this
    const row = sheet.tags.add('TR')
    const tags = cells.map(() => {
      let tag: Tag | undefined
      sheet.tags.inside(row, () => {
        tag = sheet.tags.add('TD')
      })
      return tag
    })
    const height = this.#height(cells)
    if (height > sheet.room && (height < (sheet.bottom - sheet.top) / 3 || sheet.room < 60)) this.#turn()
    let from = 0
    const last = Math.max(...cells.map(({ lines }) => lines.length), 1)
    while (from < last) {
      if (from > 0) this.#turn()
      const leading = Math.max(...cells.map(({ style }) => style.leading))
      const to = Math.min(last, from + Math.max(1, Math.floor((sheet.room - padding * 2 + 0.01) / leading)))
      this.#part(cells, tags, from, to)
      from = to
    }
    for (const tag of tags) tag?.end()
    row.end()
  }

  #turn(): void {
    this.sheet.rule()
    this.sheet.newPage()
    this.#head('repeated')
  }

  #part(cells: readonly SetCell[], tags: readonly (Tag | undefined)[], from: number, to: number): void {
    const { sheet } = this
    sheet.rule()
    const top = sheet.y + padding
    let height = 0
    cells.forEach(({ lines, style, x, width, align, verdict, bar }, index) => {
      const part = lines.slice(from, to)
      height = Math.max(height, part.length * style.leading)
      if (verdict !== undefined && from === 0) sheet.tags.decoration(() => verdictShape(sheet.pdf, verdict, x - indent + 4, top + style.leading / 2, 3.6))
      if (bar !== undefined && from === 0) sheet.tags.decoration(() => drawBar(sheet.pdf, bar, { x, y: top + 2, width: width - barTextRoom, height: style.leading - 4 }))
      const tag = tags[index]
      if (part.length > 0 && tag !== undefined) sheet.tags.inside(tag, () => sheet.tags.leaf(() => sheet.setLines(part, style, { x, width }, top, align)))
    })
    sheet.y = top + height + padding
  }
}
