import type { PixelPoint } from './measurement'
import { runsOf, stepsOf } from './mask'
import type { PictureSize } from './picture-size'
import type { Mask } from './pixels'
import { edgesOf, polygonArea } from './polygon'
import { areaPerPx2At, determinant, nearnessAt, toSurface, type SurfaceMap } from './surface-map'

/** A part of the picture, however it was outlined. */
export interface Region {
  /** True area under the map, m2. */
  readonly areaM2: (map: SurfaceMap) => number
  /** Area gained when the whole border moves outwards by one px of the original, m2. */
  readonly borderM2PerPx: (map: SurfaceMap) => number
  /** The least nearness of it under the map; 0 or less touches the horizon. */
  readonly leastNearness: (map: SurfaceMap) => number
}

/** Simpson's rule along an edge: the true area of a strip one px wide. */
const edgeStripM2 = (map: SurfaceMap, [x1, y1]: PixelPoint, [x2, y2]: PixelPoint): number =>
  (Math.hypot(x2 - x1, y2 - y1) * (areaPerPx2At(map, x1, y1) + 4 * areaPerPx2At(map, (x1 + x2) / 2, (y1 + y2) / 2) + areaPerPx2At(map, x2, y2))) / 6

/** Straight lines stay straight under the map, so the corners are enough. */
export const polygonRegion = (points: readonly PixelPoint[]): Region => ({
  areaM2: (map) => polygonArea(points.map((point) => toSurface(map, point))),
  borderM2PerPx: (map) => edgesOf(points).reduce((sum, [from, to]) => sum + edgeStripM2(map, from, to), 0),
  leastNearness: (map) => Math.min(...points.map(([x, y]) => nearnessAt(map, x, y))),
})

/**
 * True area of an upright rectangle of the picture, exact: the Jacobian integrated over it in closed form. Pixels of one row lying side by side are such a rectangle.
 * Its corners’ map, by the determinant of each half: the triangle p q r has the area det(M) · (area in px) / (n(p) n(q) n(r)), n the nearness.
 */
const rectangleM2 = (map: SurfaceMap, scale: number, left: number, top: number, right: number, bottom: number): number => {
  const nearLeftTop = nearnessAt(map, left, top)
  const nearRightTop = nearLeftTop + map[6] * (right - left)
  const nearLeftBottom = nearLeftTop + map[7] * (bottom - top)
  const nearRightBottom = nearRightTop + map[7] * (bottom - top)
  return ((scale * (right - left) * (bottom - top)) / 2) * (1 / nearLeftTop + 1 / nearRightBottom) / (nearRightTop * nearLeftBottom)
}

/** A border of pixel sides is longer than the border it stands for: by 4/π, averaged over all directions (Cauchy–Crofton). */
const sidesToBorder = Math.PI / 4

const borderOf = (mask: Mask, picture: PictureSize, map: SurfaceMap): number => {
  const { width, height, data } = mask
  const [stepX, stepY] = stepsOf(picture, mask)
  let sum = 0
  for (let row = 0; row <= height; row += 1) {
    for (let column = 0; column <= width; column += 1) {
      const here = row < height && column < width ? data[row * width + column] : 0
      const left = row < height && column > 0 ? data[row * width + column - 1] : 0
      const above = row > 0 && column < width ? data[(row - 1) * width + column] : 0
      if (here !== left) sum += stepY * areaPerPx2At(map, column * stepX, (row + 0.5) * stepY)
      if (here !== above) sum += stepX * areaPerPx2At(map, (column + 0.5) * stepX, row * stepY)
    }
  }
  return sum * sidesToBorder
}

/** The pixels of a mask, each with its own true area. */
export const maskRegion = (mask: Mask, picture: PictureSize): Region => {
  const runs = runsOf(mask)
  const [stepX, stepY] = stepsOf(picture, mask)
  const overRuns = (start: number, join: (before: number, left: number, top: number, right: number) => number): number => {
    let value = start
    for (let index = 0; index < runs.length; index += 3) value = join(value, (runs[index + 1] ?? 0) * stepX, (runs[index] ?? 0) * stepY, (runs[index + 2] ?? 0) * stepX)
    return value
  }
  return {
    areaM2: (map) => {
      const scale = determinant(map)
      return overRuns(0, (sum, left, top, right) => sum + rectangleM2(map, scale, left, top, right, top + stepY))
    },
    borderM2PerPx: (map) => borderOf(mask, picture, map),
    leastNearness: (map) => overRuns(Infinity, (least, left, top, right) =>
      Math.min(least, nearnessAt(map, left, top), nearnessAt(map, right, top), nearnessAt(map, left, top + stepY), nearnessAt(map, right, top + stepY))),
  }
}
