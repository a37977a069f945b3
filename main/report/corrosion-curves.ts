import type { SumsFigure } from '../../shared-logic/report/sums-document'
import { drawDrawing } from './drawing'
import type { Column, Sheet } from './page'
import { styles } from './styles'

const between = 20
const gap = 4

const rowsOf = (curves: readonly SumsFigure[]): SumsFigure[][] => Array.from({ length: Math.ceil(curves.length / 2) }, (_, row) => curves.slice(row * 2, row * 2 + 2))

const tallOf = ({ drawing: { viewBox: [, , width, height] } }: SumsFigure, across: number): number => (across * height) / width

const drawCurve = (sheet: Sheet, { drawing, caption, alternative }: SumsFigure, column: Column, tall: number): void => {
  const frame = { ...column, y: sheet.y, height: tall }
  sheet.tags.within('Figure', { alt: alternative, bbox: [frame.x, frame.y, frame.x + frame.width, frame.y + frame.height] }, () => sheet.tags.leaf(() => void drawDrawing(sheet, drawing, frame)))
  sheet.place(caption, styles.small, column, sheet.y + tall + gap, { tag: 'Caption' })
}

/** Curves over the surveys, two side by side, each with its caption; a row is never parted. */
export const drawCurves = (sheet: Sheet, curves: readonly SumsFigure[]): void => {
  const width = (sheet.whole.width - between) / 2
  for (const row of rowsOf(curves)) {
    const tall = Math.max(...row.map((curve) => tallOf(curve, width)))
    const captions = Math.max(...row.map(({ caption }) => sheet.heightOf(caption, styles.small, width)))
    sheet.skip(8)
    sheet.need(tall + gap + captions)
    row.forEach((curve, index) => drawCurve(sheet, curve, { x: sheet.whole.x + index * (width + between), width }, tall))
    sheet.y += tall + gap + captions
  }
}
