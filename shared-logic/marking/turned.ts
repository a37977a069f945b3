import type { PixelPoint } from '../measuring/measurement'
import type { PictureSize } from '../measuring/picture-size'
import { assertNever } from '../assert-never'
import type { Mark, MarkLayer } from './marks'

/** Quarter turns, clockwise, 0 to 3. */
const isSideways = (quarterTurns: number): boolean => quarterTurns % 2 === 1

export const turnedSize = <Size extends PictureSize>(size: Size, quarterTurns: number): Size =>
  isSideways(quarterTurns) ? { ...size, widthPx: size.heightPx, heightPx: size.widthPx } : size

/** Where a point of a picture of that size lies after the turns. */
export const turnedPoint = ([x, y]: PixelPoint, { widthPx, heightPx }: PictureSize, quarterTurns: number): PixelPoint => {
  switch (quarterTurns) {
    case 1: return [heightPx - y, x]
    case 2: return [widthPx - x, heightPx - y]
    case 3: return [y, widthPx - x]
    default: return [x, y]
  }
}

/** A mark with each of its points put elsewhere. */
export const withPointsOf = (mark: Mark, put: (point: PixelPoint) => PixelPoint): Mark => {
  switch (mark.kind) {
    case 'arrow':
    case 'circle':
    case 'box':
    case 'length': return { ...mark, from: put(mark.from), to: put(mark.to) }
    case 'freehand': return { ...mark, points: mark.points.map(put) }
    case 'text': return { ...mark, at: put(mark.at) }
    default: return assertNever(mark)
  }
}

/** The layer as it lies on the picture turned clockwise. What is written is set upright wherever its point comes to lie. */
export const turnedLayer = (layer: MarkLayer, quarterTurns: number): MarkLayer => {
  const put = (point: PixelPoint): PixelPoint => turnedPoint(point, layer, quarterTurns)
  return {
    ...turnedSize(layer, quarterTurns),
    ...(layer.scale && { scale: { ...layer.scale, from: put(layer.scale.from), to: put(layer.scale.to) } }),
    marks: layer.marks.map((mark) => withPointsOf(mark, put)),
  }
}
