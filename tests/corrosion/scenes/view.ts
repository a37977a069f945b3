import type { PixelPoint } from '../../../shared-logic/measuring/measurement'

/** A 3 by 3 matrix, row by row. */
export type Matrix = readonly [number, number, number, number, number, number, number, number, number]

/** How a plane, in mm, falls into the picture, in px; a pixel's middle lies at its whole number and a half. */
export interface View {
  readonly toPixel: Matrix
  readonly toPlane: Matrix
  /** Degrees between the lens axis and the plane's normal; 0 is flat. */
  readonly tiltDegrees: number
}

export function through(matrix: Matrix, x: number, y: number): PixelPoint {
  const [a, b, c, d, e, f, g, h, i] = matrix
  const w = g * x + h * y + i
  return [(a * x + b * y + c) / w, (d * x + e * y + f) / w]
}

/** How much the area round a point grows on its way through the matrix. */
export function areaFactor(matrix: Matrix, x: number, y: number): number {
  const [a, b, c, d, e, f, g, h, i] = matrix
  const w = g * x + h * y + i
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
  return Math.abs(determinant / (w * w * w))
}

function inverse([a, b, c, d, e, f, g, h, i]: Matrix): Matrix {
  const determinant = a * (e * i - f * h) + b * (f * g - d * i) + c * (d * h - e * g)
  const over = (value: number): number => value / determinant
  return [
    over(e * i - f * h), over(c * h - b * i), over(b * f - c * e),
    over(f * g - d * i), over(a * i - c * g), over(c * d - a * f),
    over(d * h - e * g), over(b * g - a * h), over(a * e - b * d),
  ]
}

/** A pinhole camera above the plane's origin: turned by `roll`, tilted about an axis that lies at `towards` in the plane. Angles in radians. */
export function viewOf(given: { widthPx: number, heightPx: number, mmPerPx: number, roll: number, tilt: number, towards: number, middle: PixelPoint }): View {
  const focalPx = 1.15 * given.widthPx
  const distance = focalPx * given.mmPerPx
  const [cosTilt, sinTilt] = [Math.cos(given.tilt), Math.sin(given.tilt)]
  const [cosAxis, sinAxis] = [Math.cos(given.towards), Math.sin(given.towards)]
  // Rotation by `tilt` about the axis (cos, sin, 0), its first two columns, after the roll within the plane.
  const tilted = (x: number, y: number): readonly [number, number, number] => {
    const along = x * cosAxis + y * sinAxis
    const across = y * cosAxis - x * sinAxis
    return [along * cosAxis - across * cosTilt * sinAxis, along * sinAxis + across * cosTilt * cosAxis, across * sinTilt]
  }
  const [cosRoll, sinRoll] = [Math.cos(given.roll), Math.sin(given.roll)]
  const right = tilted(cosRoll, sinRoll)
  const down = tilted(-sinRoll, cosRoll)
  const [middleX, middleY] = given.middle
  const toPixel: Matrix = [
    focalPx * right[0] + middleX * right[2], focalPx * down[0] + middleX * down[2], middleX * distance,
    focalPx * right[1] + middleY * right[2], focalPx * down[1] + middleY * down[2], middleY * distance,
    right[2], down[2], distance,
  ]
  return { toPixel, toPlane: inverse(toPixel), tiltDegrees: (given.tilt * 180) / Math.PI }
}

/** The part of a polygon that lies in the picture, `inset` px from its rim (one clip a side, after Sutherland and Hodgman). */
export function clipped(points: readonly PixelPoint[], widthPx: number, heightPx: number, inset: number): PixelPoint[] {
  const sides: readonly ((point: PixelPoint) => number)[] = [
    (point) => point[0] - inset, (point) => widthPx - inset - point[0], (point) => point[1] - inset, (point) => heightPx - inset - point[1],
  ]
  let polygon = [...points]
  for (const depth of sides) {
    const kept: PixelPoint[] = []
    polygon.forEach((to, index) => {
      const from = polygon[(index + polygon.length - 1) % polygon.length] ?? to
      const [before, after] = [depth(from), depth(to)]
      if (before >= 0 !== after >= 0) {
        const part = before / (before - after)
        kept.push([from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part])
      }
      if (after >= 0) kept.push(to)
    })
    polygon = kept
  }
  return polygon
}
