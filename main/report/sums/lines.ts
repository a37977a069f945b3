import type { SumsPrintedLine } from '../../../shared-logic/report/sums-document'
import { beginSection } from '../headings'
import type { Sheet } from '../page'
import { verdictShape } from '../shapes'
import { styles } from '../styles'

/** A sentence in the text column, its verdict's shape and word in the column before it. */
const drawLine = (sheet: Sheet, { text, verdict, word }: SumsPrintedLine): void => {
  const height = sheet.heightOf(text, styles.body, sheet.text.width)
  sheet.need(Math.min(height, styles.body.leading * 2))
  sheet.tags.within('LI', {}, () => {
    if (verdict !== undefined && word !== undefined) {
      const { y } = sheet
      sheet.tags.decoration(() => verdictShape(sheet.pdf, verdict, sheet.labels.x + 5, y + styles.body.leading / 2, 3.6))
      sheet.place(word, styles.small, { x: sheet.labels.x + 14, width: sheet.labels.width - 14 }, y + 1, { tag: 'Lbl' })
    }
    sheet.tags.within('LBody', {}, () => sheet.paragraph(text))
  })
  sheet.y += 3
}

/** What the sums say, line by line; a heading begins a list of its own. */
export const drawSumsLines = (sheet: Sheet, lines: readonly SumsPrintedLine[]): void => {
  const [first, ...rest] = lines
  if (first === undefined) return
  if (first.heading) beginSection(sheet, first.text)
  const own = first.heading ? rest : lines
  const next = own.findIndex(({ heading }) => heading)
  const listed = next === -1 ? own : own.slice(0, next)
  sheet.skip(first.heading ? 0 : 6)
  if (listed.length > 0) sheet.tags.within('L', {}, () => listed.forEach((line) => drawLine(sheet, line)))
  if (next !== -1) drawSumsLines(sheet, own.slice(next))
}
