import { assertNever } from '../assert-never'
import type { PixelPoint, Scale } from './measurement'
import type { PictureSize } from './picture-size'
import { originalPxPerWorkingPx } from './picture-size'
import { readingErrors } from './reading-errors'
import { surfaceMapOf, type SurfaceMap } from './surface-map'

type Corners = Extract<Scale, { kind: 'rectangle' }>['corners']

/** One thing read off the picture or the rule: its standard uncertainty, and the scale as it would be had it been read otherwise. */
interface Reading {
  readonly standard: number
  readonly moved: (by: number) => Scale
}

const pointReadings = (point: PixelPoint, standard: number, put: (point: PixelPoint) => Scale): Reading[] => [
  { standard, moved: (by) => put([point[0] + by, point[1]]) },
  { standard, moved: (by) => put([point[0], point[1] + by]) },
]

const withCorner = (corners: Corners, index: number, point: PixelPoint): Corners => {
  const [a, b, c, d] = corners
  return [index === 0 ? point : a, index === 1 ? point : b, index === 2 ? point : c, index === 3 ? point : d]
}

const readingsOf = (scale: Scale, pointPx: number): Reading[] => {
  const ruleM = readingErrors.knownLengthM
  switch (scale.kind) {
    case 'length': return [
      ...pointReadings(scale.from, pointPx, (from) => ({ ...scale, from })),
      ...pointReadings(scale.to, pointPx, (to) => ({ ...scale, to })),
      { standard: ruleM, moved: (by) => ({ ...scale, lengthM: scale.lengthM + by }) },
    ]
    case 'rectangle': return [
      ...scale.corners.flatMap((corner, index) => pointReadings(corner, pointPx, (point) => ({ ...scale, corners: withCorner(scale.corners, index, point) }))),
      { standard: ruleM, moved: (by) => ({ ...scale, widthM: scale.widthM + by }) },
      { standard: ruleM, moved: (by) => ({ ...scale, heightM: scale.heightM + by }) },
    ]
    default: return assertNever(scale)
  }
}

/**
 * Standard uncertainty that the scale leaves in `ofMap`, in its unit: every reading moved to either side by its own standard uncertainty, the halves of the changes added as squares.
 * Source: JCGM 100:2008 (GUM), 5.1.2 with the numerical sensitivities of 5.1.3, note 2.
 */
export const fromScale = (scale: Scale, picture: PictureSize, ofMap: (map: SurfaceMap) => number): number =>
  Math.hypot(...readingsOf(scale, readingErrors.pointPx * originalPxPerWorkingPx(picture)).map(({ standard, moved }) =>
    (ofMap(surfaceMapOf(moved(standard))) - ofMap(surfaceMapOf(moved(-standard)))) / 2))
