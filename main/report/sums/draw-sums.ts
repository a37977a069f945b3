import type { ReportDocument } from '../../../shared-logic/report/document'
import type { SumsPart, SumsSheet, SumsTable } from '../../../shared-logic/report/sums-document'
import type { Bookmark } from '../bookmarks'
import { beginPart, beginSection } from '../headings'
import type { Sheet } from '../page'
import { styles } from '../styles'
import { Table } from '../tables'
import { drawSumsFigure, leastFigureRoom } from './figure'
import { drawSumsLines } from './lines'

/** So many rows of a table stay with its heading; the rest may go over the page. */
const rowsWithHeading = 4

/** A sheet's heading stays with the heading and first rows of the table that may come first. */
const beginningRoom = 200

/** A table with its heading. */
export const drawSumsTable = (sheet: Sheet, { heading, columns, rows }: SumsTable): void => {
  const right = new Set(columns.flatMap(({ align }, index) => (align === 'right' ? [index] : [])))
  const table = new Table(sheet, columns.map(({ heading: name, share, align }) => ({ heading: name, share, ...(align && { align }) })))
  const set = rows.map((cells) => ({
    cells: cells.map(({ text, verdict, bar, strong }, index) => ({
      text, style: styles[right.has(index) ? (strong ? 'figuresStrong' : 'figures') : strong ? 'smallStrong' : 'small'], ...(verdict && { verdict }), ...(bar && { bar }),
    })),
  }))
  if (heading !== undefined) beginSection(sheet, heading, table.beginning(set, rowsWithHeading))
  table.draw(set)
  sheet.skip(8)
}

/** What it was worked from, how, by whose word, and what to beware of. */
const drawGround = (sheet: Sheet, { inputs, formulas, sources, cautions }: SumsSheet, labels: SumsPart['labels']): void => {
  const rows: readonly (readonly [label: string, text: string, strong?: true])[] = [
    [labels.inputs, inputs.map(({ label, value }) => `${label}: ${value}`).join('; ')],
    ...formulas.map((formula, index) => [index === 0 ? labels.formula : '', formula] as const),
    [labels.sources, sources.join('; ')],
    ...cautions.map((caution, index) => [index === 0 ? labels.caution : '', caution, true] as const),
  ]
  sheet.skip(8)
  for (const [label, text, strong] of rows) {
    if (text === '') continue
    if (label === '') sheet.paragraph(text, strong ? styles.smallStrong : styles.small)
    else sheet.labelled(label, text, strong ? styles.smallStrong : styles.small)
    sheet.y += 4
  }
}

/** A drawing that would leave much of the page white comes after tables and lines, so that they fill it. */
const drawSheet = (sheet: Sheet, part: SumsSheet, labels: SumsPart['labels']): void => {
  const figures = (): void => part.figures.forEach((figure) => drawSumsFigure(sheet, figure))
  const [first] = part.figures
  const isLater = first !== undefined && leastFigureRoom(sheet, first) > sheet.room
  if (!isLater) figures()
  for (const table of part.tables) drawSumsTable(sheet, table)
  drawSumsLines(sheet, part.lines)
  if (isLater) {
    sheet.skip(12)
    figures()
  }
  drawGround(sheet, part, labels)
}

/** The sums of the rig, a part for each sheet; nothing where the report has none. */
export const drawSums = (sheet: Sheet, { sums }: ReportDocument, bookmarks: Bookmark): void => {
  sums?.sheets.forEach((part, index) => {
    beginPart(sheet, bookmarks, part.title, beginningRoom)
    if (index === 0) {
      sheet.paragraph(sums.introduction, styles.small, sheet.whole)
      sheet.y += 8
    }
    drawSheet(sheet, part, sums.labels)
  })
}
