import { fromScale } from '../measuring/uncertainty'
import type { PixelPoint, Scale } from '../measuring/measurement'
import { originalPxPerWorkingPx, type PictureSize } from '../measuring/picture-size'
import { readingErrors } from '../measuring/reading-errors'
import { toSurface } from '../measuring/surface-map'
import { surfaceMapOf, type SurfaceMap } from '../measuring/surface-map'

/** `uncertaintyM` is the half width of the interval of about 95 %. */
export interface MeasuredLength {
  readonly lengthM: number
  readonly uncertaintyM: number
}

const lengthOn = (map: SurfaceMap, from: PixelPoint, to: PixelPoint): number => {
  const [[u1, v1], [u2, v2]] = [toSurface(map, from), toSurface(map, to)]
  return Math.hypot(u2 - u1, v2 - v1)
}

/** What reading the two ends leaves: each coordinate moved to either side by its own standard uncertainty. Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.3, note 2. */
const fromEnds = (map: SurfaceMap, [x1, y1]: PixelPoint, [x2, y2]: PixelPoint, standardPx: number): number => {
  const change = (dx1: number, dy1: number, dx2: number, dy2: number): number =>
    (lengthOn(map, [x1 + dx1, y1 + dy1], [x2 + dx2, y2 + dy2]) - lengthOn(map, [x1 - dx1, y1 - dy1], [x2 - dx2, y2 - dy2])) / 2
  return Math.hypot(change(standardPx, 0, 0, 0), change(0, standardPx, 0, 0), change(0, 0, standardPx, 0), change(0, 0, 0, standardPx))
}

/** A length in the surface the scale lies in. `checkScale` first. Tilt is not taken out by a known length, nor counted in. */
export const measuredLength = (scale: Scale, picture: PictureSize, from: PixelPoint, to: PixelPoint): MeasuredLength => {
  const map = surfaceMapOf(scale)
  const ends = fromEnds(map, from, to, readingErrors.pointPx * originalPxPerWorkingPx(picture))
  const standard = Math.hypot(ends, fromScale(scale, picture, (moved) => lengthOn(moved, from, to)))
  return { lengthM: lengthOn(map, from, to), uncertaintyM: readingErrors.coverage * standard }
}
