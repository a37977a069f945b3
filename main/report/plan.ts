import type { PlanMark, ReportDocument } from '../../shared-logic/report/document'
import { hairline } from './colours'
import { drawDrawing, type Fitted, type Frame } from './drawing'
import type { Sheet } from './page'
import { leaderDot, markRadius, numberedMark } from './shapes'

/** Room beside the drawing for the marks, and marks in a row there. */
const marginWidth = 62
const perRow = 3
const step = markRadius * 2 + 3

interface Callout {
  readonly mark: PlanMark
  readonly from: { readonly x: number; readonly y: number }
  height: number
  top: number
}

const rowsOf = (mark: PlanMark): number => Math.ceil(mark.numbers.length / perRow)

/** Moves callouts apart, down first and then up, so that none covers another and all stay in the frame; more than fit are drawn closer. */
const spread = (callouts: Callout[], frame: Frame): void => {
  callouts.sort((a, b) => a.from.y - b.from.y)
  const total = callouts.reduce((sum, { height }) => sum + height + 2, 0)
  for (const callout of callouts) callout.height *= Math.min(1, frame.height / total)
  let floor = frame.y
  for (const callout of callouts) {
    callout.top = Math.max(callout.from.y - callout.height / 2, floor)
    floor = callout.top + callout.height + 2
  }
  let ceiling = frame.y + frame.height
  for (const callout of callouts.toReversed()) {
    callout.top = Math.min(callout.top, ceiling - callout.height)
    ceiling = callout.top - 2
  }
}

/** Marks of the left half go left, of the right half right; those of the middle where there is more room. */
const bySide = (marks: readonly PlanMark[], fitted: Fitted): { left: Callout[]; right: Callout[] } => {
  const sides: { left: Callout[]; right: Callout[] } = { left: [], right: [] }
  const load = (list: Callout[]): number => list.reduce((sum, { height }) => sum + height, 0)
  for (const mark of marks.toSorted((a, b) => Math.abs(b.x) - Math.abs(a.x))) {
    const side = mark.x < -1 ? sides.left : mark.x > 1 ? sides.right : load(sides.left) <= load(sides.right) ? sides.left : sides.right
    side.push({ mark, from: fitted.at(mark.x, mark.y), height: rowsOf(mark) * step, top: 0 })
  }
  return sides
}

const verdictOf = (number: number, document: ReportDocument): 'fail' | 'advisory' => (document.findings[number - 1]?.verdict === 'fail' ? 'fail' : 'advisory')

const drawCallout = (sheet: Sheet, { mark, from, top, height }: Callout, edge: number, outward: 1 | -1, document: ReportDocument): void => {
  const middle = top + height / 2
  sheet.pdf.save().lineWidth(0.6).strokeColor(hairline).moveTo(from.x, from.y).lineTo(edge, middle).stroke().restore()
  leaderDot(sheet.pdf, from.x, from.y)
  const { numbers } = mark
  const squeezed = height / (rowsOf(mark) * step)
  numbers.forEach((number, index) => {
    const row = Math.floor(index / perRow)
    const inRow = Math.min(numbers.length - row * perRow, perRow)
    const place = outward === 1 ? index % perRow : inRow - 1 - (index % perRow)
    const x = edge + outward * (markRadius + 2 + place * step)
    numberedMark(sheet, number, verdictOf(number, document), x, top + row * step * squeezed + step / 2)
  })
}

/** The rig from above with the findings' numbers beside it, each led to its place. */
export const drawPlan = (sheet: Sheet, document: ReportDocument, frame: Frame): void => {
  const { plan } = document
  const bbox: [number, number, number, number] = [frame.x, frame.y, frame.x + frame.width, frame.y + frame.height]
  sheet.tags.within('Figure', { alt: plan.alternative, bbox }, () =>
    sheet.tags.leaf(() => {
      const fitted = drawDrawing(sheet, plan.drawing, { ...frame, x: frame.x + marginWidth, width: frame.width - marginWidth * 2 })
      const middle = frame.x + frame.width / 2
      const { left, right } = bySide(plan.marks, fitted)
      const reach = Math.min(fitted.width / 2 + 2, frame.width / 2 - marginWidth)
      spread(left, frame)
      spread(right, frame)
      for (const callout of left) drawCallout(sheet, callout, middle - reach, -1, document)
      for (const callout of right) drawCallout(sheet, callout, middle + reach, 1, document)
    }),
  )
}
