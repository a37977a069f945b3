import type { PixelPoint } from '../measuring/measurement'
import type { PictureSize } from '../measuring/picture-size'
import { distanceToBorder, distanceToEdge } from '../measuring/polygon'
import { pointsOf } from './check-layer'
import type { Mark } from './marks'
import { withPointsOf } from './turned'

/** A rectangle of the picture, px. */
export interface Bounds {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export const boundsOf = (mark: Mark): Bounds => {
  const points = pointsOf(mark)
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

export const middleOf = ({ x, y, width, height }: Bounds): PixelPoint => [x + width / 2, y + height / 2]

/** As far as the whole stays on the picture. */
const heldStep = (by: number, from: number, long: number, room: number): number => Math.min(Math.max(by, -from), room - from - long)

/** A mark moved by so much, and no further than it stays whole on the picture. */
export const movedBy = (mark: Mark, [byX, byY]: PixelPoint, { widthPx, heightPx }: PictureSize): Mark => {
  const { x, y, width, height } = boundsOf(mark)
  const [dx, dy] = [heldStep(byX, x, width, widthPx), heldStep(byY, y, height, heightPx)]
  return withPointsOf(mark, ([pointX, pointY]) => [pointX + dx, pointY + dy])
}

/** Points along an ellipse, near enough together for a finger. */
const roundOf = ({ x, y, width, height }: Bounds): PixelPoint[] =>
  Array.from({ length: 48 }, (_, index) => {
    const angle = (index / 48) * 2 * Math.PI
    return [x + (width / 2) * (1 + Math.cos(angle)), y + (height / 2) * (1 + Math.sin(angle))]
  })

const cornersOf = ({ x, y, width, height }: Bounds): PixelPoint[] => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]]

/** How far a point lies from a mark's lines, px; words have none. */
export const distanceToMark = (mark: Mark, point: PixelPoint): number => {
  if (mark.kind === 'circle') return distanceToBorder(roundOf(boundsOf(mark)), point)
  if (mark.kind === 'box') return distanceToBorder(cornersOf(boundsOf(mark)), point)
  const points = mark.kind === 'text' ? [] : pointsOf(mark)
  return Math.min(...points.slice(1).map((to, index) => distanceToEdge(point, points[index] ?? to, to)))
}
