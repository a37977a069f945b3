import type { Shape } from '../drawings/drawing'
import { box, label, type Point } from '../drawings/strokes'
import { lineWidth } from './letter-widths'
import { markSizes, pxPerPoint, type SeenCloser } from './mark-sizes'
import { writtenLines } from './written-lines'

/** Most of the picture's width that one line of writing takes. */
const mostOfWidth = 0.9
/** Height of the house face's capitals, of their size. */
const capitals = 0.668

/** Words on a light ground, px of the picture. `x`, `y` the upper left. */
export interface Plate {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly lines: readonly string[]
}

/** How large the words come out. */
export const plateSize = (text: string, picture: SeenCloser): Pick<Plate, 'width' | 'height' | 'lines'> => {
  const unit = pxPerPoint(picture)
  const lines = writtenLines(text, (picture.widthPx * mostOfWidth) / (markSizes.text * unit))
  const width = Math.max(...lines.map(lineWidth)) * markSizes.text
  return { lines, width: (width + 2 * markSizes.padding) * unit, height: (lines.length * markSizes.leading + markSizes.padding) * unit }
}

const held = (at: number, long: number, room: number): number => (long >= room ? 0 : Math.min(Math.max(at, 0), room - long))

/** The words with their middle at a point, moved as far as it takes to lie wholly on the picture. */
export const plateAt = (text: string, middle: Point, picture: SeenCloser): Plate => {
  const size = plateSize(text, picture)
  return { ...size, x: held(middle.x - size.width / 2, size.width, picture.widthPx), y: held(middle.y - size.height / 2, size.height, picture.heightPx) }
}

export const plateShapes = ({ x, y, width, height, lines }: Plate, picture: SeenCloser): Shape[] => {
  const unit = pxPerPoint(picture)
  const { text, leading, padding } = markSizes
  const foot = (index: number): number => y + (padding / 2 + index * leading + (leading + text * capitals) / 2) * unit
  return [
    box(x, y, width, height, { fill: 'casing', stroke: 'mark', weight: 0.5 * unit }, 1.5 * unit),
    ...lines.map((line, index) => label(x + padding * unit, foot(index), line, text * unit, { bold: true, fill: 'mark' })),
  ]
}
