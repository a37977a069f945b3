import type { ReportDocument } from '../../shared-logic/report/document'
import { calloutsOf, perRow, step, type Callout } from './callouts'
import { hairline } from './colours'
import { drawDrawing, type Frame } from './drawing'
import type { Sheet } from './page'
import { leaderDot, markRadius, numberedMark } from './shapes'
import { styles } from './styles'

/** Room beside the drawing for the marks. */
const marginWidth = perRow * step + 2

const verdictOf = (number: number, document: ReportDocument): 'fail' | 'advisory' => (document.findings[number - 1]?.verdict === 'fail' ? 'fail' : 'advisory')

const drawLeader = (sheet: Sheet, { from, top, height }: Callout, edge: number): void => {
  sheet.pdf.save().lineWidth(0.6).strokeColor(hairline).moveTo(from.x, from.y).lineTo(edge, top + height / 2).stroke().restore()
  leaderDot(sheet.pdf, from.x, from.y)
}

const drawNumbers = (sheet: Sheet, { numbers, more, top }: Callout, edge: number, outward: 1 | -1, document: ReportDocument): void => {
  const count = numbers.length + (more > 0 ? 1 : 0)
  const at = (index: number): { x: number; y: number } => {
    const row = Math.floor(index / perRow)
    const inRow = Math.min(count - row * perRow, perRow)
    const place = outward === 1 ? index % perRow : inRow - 1 - (index % perRow)
    return { x: edge + outward * (markRadius + 2 + place * step), y: top + row * step + step / 2 }
  }
  numbers.forEach((number, index) => numberedMark(sheet, number, verdictOf(number, document), at(index).x, at(index).y))
  if (more === 0) return
  const { x, y } = at(numbers.length)
  sheet.setLines(sheet.setter.lines(`+${more}`, styles.small, 40), styles.small, { x: x - markRadius + 2, width: 40 }, y - styles.small.leading / 2)
}

/** The rig from above with the findings' numbers beside it, each led to its place. */
export const drawPlan = (sheet: Sheet, document: ReportDocument, frame: Frame): void => {
  const { plan } = document
  const bbox: [number, number, number, number] = [frame.x, frame.y, frame.x + frame.width, frame.y + frame.height]
  sheet.tags.within('Figure', { alt: plan.alternative, bbox }, () =>
    sheet.tags.leaf(() => {
      const fitted = drawDrawing(sheet, plan.drawing, { ...frame, x: frame.x + marginWidth, width: frame.width - marginWidth * 2 })
      const middle = frame.x + frame.width / 2
      const reach = Math.min(fitted.width / 2 + 2, frame.width / 2 - marginWidth)
      const { left, right } = calloutsOf(plan.marks, fitted, frame)
      for (const callout of [...left, ...right]) drawLeader(sheet, callout, left.includes(callout) ? middle - reach : middle + reach)
      for (const callout of left) drawNumbers(sheet, callout, middle - reach, -1, document)
      for (const callout of right) drawNumbers(sheet, callout, middle + reach, 1, document)
    }),
  )
}
