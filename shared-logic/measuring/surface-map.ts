import { assertNever } from '../assert-never'
import type { PixelPoint, Scale } from './measurement'

/**
 * Projective map from px of the original (0,0 at the picture's top left corner, pixel centres at .5) to m in the surface, row by row.
 * The last row is positive on the side of the horizon where the scale lies. Source: plane geometry.
 */
export type SurfaceMap = readonly [number, number, number, number, number, number, number, number, number]

const flatMap = ({ from, to, lengthM }: Extract<Scale, { kind: 'length' }>): SurfaceMap => {
  const metrePerPx = lengthM / Math.hypot(to[0] - from[0], to[1] - from[1])
  return [metrePerPx, 0, 0, 0, metrePerPx, 0, 0, 0, 1]
}

/** Takes the unit square's corners (0,0) (1,0) (1,1) (0,1) to the four points; closed form of the eight equations. */
const squareToCorners = ([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: readonly [PixelPoint, PixelPoint, PixelPoint, PixelPoint]): SurfaceMap => {
  const restX = x0 - x1 + x2 - x3
  const restY = y0 - y1 + y2 - y3
  const turn = (x1 - x2) * (y3 - y2) - (x3 - x2) * (y1 - y2)
  const g = (restX * (y3 - y2) - (x3 - x2) * restY) / turn
  const h = ((x1 - x2) * restY - restX * (y1 - y2)) / turn
  return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1]
}

/** The inverse but for its factor, which a projective map does not need. */
export const adjugateOf = ([a, b, c, d, e, f, g, h, i]: SurfaceMap): SurfaceMap => [e * i - f * h, c * h - b * i, b * f - c * e, f * g - d * i, a * i - c * g, c * d - a * f, d * h - e * g, b * g - a * h, a * e - b * d]

const rectangleMap = ({ corners, widthM, heightM }: Extract<Scale, { kind: 'rectangle' }>): SurfaceMap => {
  const [a, b, c, d, e, f, g, h, i] = adjugateOf(squareToCorners(corners))
  // One where the corners' middle lies, so that signs and sizes of the last row mean the same in every picture.
  const middle = corners.reduce((sum, [x, y]) => sum + (g * x + h * y + i) / 4, 0)
  return [(a * widthM) / middle, (b * widthM) / middle, (c * widthM) / middle, (d * heightM) / middle, (e * heightM) / middle, (f * heightM) / middle, g / middle, h / middle, i / middle]
}

/**
 * The map that a scale gives. A known length gives the same scale everywhere, its tilt not taken out; four corners of a rectangle take the perspective out.
 * `checkScale` first: a scale that gives none makes a map of no numbers here.
 */
export const surfaceMapOf = (scale: Scale): SurfaceMap => {
  switch (scale.kind) {
    case 'length': return flatMap(scale)
    case 'rectangle': return rectangleMap(scale)
    default: return assertNever(scale)
  }
}

/** 1 at the scale, falling to 0 at the horizon, negative beyond it. */
export const nearnessAt = (map: SurfaceMap, x: number, y: number): number => map[6] * x + map[7] * y + map[8]

/** Where a point of the picture lies in the surface, m. */
export const toSurface = (map: SurfaceMap, [x, y]: PixelPoint): PixelPoint => {
  const nearness = nearnessAt(map, x, y)
  return [(map[0] * x + map[1] * y + map[2]) / nearness, (map[3] * x + map[4] * y + map[5]) / nearness]
}

/** Of the map's matrix, without sign: what the areas of all pixels share. */
export const determinant = ([a, b, c, d, e, f, g, h, i]: SurfaceMap): number => Math.abs(a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g))

/** True area of one px2 of the original at that place, m2: the Jacobian of the map. */
export const areaPerPx2At = (map: SurfaceMap, x: number, y: number): number => determinant(map) / Math.abs(nearnessAt(map, x, y)) ** 3
