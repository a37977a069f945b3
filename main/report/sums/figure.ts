import type { SumsFigure } from '../../../shared-logic/report/sums-document'
import { drawDrawing } from '../drawing'
import type { Sheet } from '../page'
import { styles } from '../styles'

/** No drawing is taller than this, points, so that its caption and what follows find room on the page. */
const tallest = 380
const gap = 4

const tallOf = (sheet: Sheet, { drawing: { viewBox: [, , width, height] } }: SumsFigure): number => Math.min(tallest, (sheet.whole.width * height) / width)

const captionRoom = (sheet: Sheet, { caption }: SumsFigure): number => gap + sheet.heightOf(caption, styles.label, sheet.whole.width)

/** A figure may be drawn so much smaller, as a share, where only so much of the page is left. */
const leastScale = 0.9

/** Least room a figure takes with its caption, points. */
export const leastFigureRoom = (sheet: Sheet, figure: SumsFigure): number => tallOf(sheet, figure) * leastScale + captionRoom(sheet, figure)

/** A drawing across the page with its caption below, the two never parted. */
export const drawSumsFigure = (sheet: Sheet, figure: SumsFigure): void => {
  const { drawing, caption, alternative } = figure
  sheet.need(leastFigureRoom(sheet, figure))
  const tall = Math.min(tallOf(sheet, figure), sheet.room - captionRoom(sheet, figure))
  const frame = { x: sheet.whole.x, y: sheet.y, width: sheet.whole.width, height: tall }
  const bbox: [number, number, number, number] = [frame.x, frame.y, frame.x + frame.width, frame.y + frame.height]
  sheet.tags.within('Figure', { alt: alternative, bbox }, () => sheet.tags.leaf(() => void drawDrawing(sheet, drawing, frame)))
  sheet.y += tall + gap
  sheet.y += sheet.place(caption, styles.label, sheet.whole, sheet.y)
  sheet.y += 12
}
