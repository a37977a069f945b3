import type { Paper } from '../../shared-logic/survey/settings'
import { hairline } from './colours'
import { Setter, type Line } from './lines'
import { styles, type Style } from './styles'
import { Tags } from './tags'
import { Faces } from './type'

/** Points. The one grid: a margin, a column for labels, a column for text; heights in steps of 4. */
const margin = { side: 50, top: 48, foot: 60 }
const labelWidth = 96
const gutter = 16

/** Height and width of a sheet, points. */
const papers: Readonly<Record<Paper, { width: number; height: number }>> = { A4: { width: 595.28, height: 841.89 }, Letter: { width: 612, height: 792 } }

export interface Column {
  readonly x: number
  readonly width: number
}

/** Where the pen stands on which page, and how text flows down it. */
export class Sheet {
  readonly tags: Tags
  readonly setter: Setter
  readonly whole: Column
  readonly labels: Column
  readonly text: Column
  readonly top = margin.top
  readonly bottom: number
  y = margin.top

  constructor(readonly pdf: PDFKit.PDFDocument, paper: Paper) {
    const { width, height } = papers[paper]
    this.tags = new Tags(pdf)
    this.setter = new Setter(new Faces(pdf))
    this.whole = { x: margin.side, width: width - margin.side * 2 }
    this.labels = { x: margin.side, width: labelWidth }
    this.text = { x: margin.side + labelWidth + gutter, width: this.whole.width - labelWidth - gutter }
    this.bottom = height - margin.foot
  }

  get room(): number {
    return this.bottom - this.y
  }

  newPage(): void {
    this.pdf.addPage()
    this.y = this.top
  }

  /** Turns the page unless so much is left on it; never leaves a page empty. */
  need(height: number): void {
    if (height > this.room && this.y > this.top) this.newPage()
  }

  /** White space, dropped at the top of a page. */
  skip(height: number): void {
    if (this.y > this.top) this.y += height
  }

  rule({ x, width }: Column = this.whole, y: number = this.y): void {
    this.tags.decoration(() => {
      this.pdf.lineWidth(0.5).strokeColor(hairline).moveTo(x, y).lineTo(x + width, y).stroke()
    })
  }

  /** Draws set lines from `top` down, inside the tag now open; answers their height. */
  setLines(lines: readonly Line[], style: Style, { x, width }: Column, top: number, align: 'left' | 'right' = 'left'): number {
    lines.forEach((line, index) => {
      let at = align === 'right' ? x + width - line.width : x
      const baseline = top + index * style.leading + (style.leading + style.size * 0.668) / 2
      for (const run of line.runs) at += this.setter.faces.draw(run, style, at, baseline)
    })
    return lines.length * style.leading
  }

  /** Text at a fixed place, tagged; answers its height. The pen stays where it is. */
  place(text: string, style: Style, column: Column, top: number, { tag = 'P', align = 'left' }: { tag?: string; align?: 'left' | 'right' } = {}): number {
    const lines = this.setter.lines(text, style, column.width)
    this.tags.within(tag, {}, () => this.tags.leaf(() => this.setLines(lines, style, column, top, align)))
    return lines.length * style.leading
  }

  heightOf(text: string, style: Style, width: number): number {
    return this.setter.lines(text, style, width).length * style.leading
  }

  /** Flowing text, at least two lines of it on either side of a page's end. */
  paragraph(text: string, style: Style = styles.body, column: Column = this.text, tag = 'P'): void {
    let lines = this.setter.lines(text, style, column.width)
    this.tags.within(tag, {}, () => {
      while (lines.length > 0) {
        const count = this.#fitting(lines.length, style.leading)
        if (count === 0) {
          this.newPage()
          continue
        }
        const part = lines.slice(0, count)
        this.tags.leaf(() => {
          this.y += this.setLines(part, style, column, this.y)
        })
        lines = lines.slice(count)
      }
    })
  }

  #fitting(count: number, leading: number): number {
    const fit = Math.floor((this.room + 0.01) / leading)
    if (count <= fit) return count
    const kept = count - fit === 1 ? fit - 1 : fit
    return kept < 2 && this.y > this.top ? 0 : Math.max(kept, 1)
  }

  /** A label in its column and text beside it. */
  labelled(label: string, text: string, style: Style = styles.body, column: Column = this.text): void {
    const lines = this.setter.lines(text, style, column.width).length
    // Three lines are never parted, for one of them would stand alone.
    this.need((lines === 3 ? 3 : Math.min(lines, 2)) * style.leading)
    const top = this.y + (style.leading - styles.label.leading) / 2
    const labelHeight = this.heightOf(label, styles.label, this.labels.width)
    this.need(labelHeight)
    this.place(label, styles.label, this.labels, this.y === this.top ? this.top : top)
    const bottom = this.y + labelHeight
    const page = this.pdf.page
    this.paragraph(text, style, column)
    if (this.pdf.page === page) this.y = Math.max(this.y, bottom)
  }
}
