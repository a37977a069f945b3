import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { Pixels } from '../../shared-logic/measuring/pixels'

/** Brightness between pixels, linear light, so that the middle of a soft edge is its middle (IEC 61966-2-1, green alone). */
function brightnessAt(pixels: Pixels, x: number, y: number): number {
  const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)]
  const [partX, partY] = [x - 0.5 - left, y - 0.5 - top]
  const at = (column: number, row: number): number => {
    const [inX, inY] = [Math.min(pixels.width - 1, Math.max(0, column)), Math.min(pixels.height - 1, Math.max(0, row))]
    const value = (pixels.data[(inY * pixels.width + inX) * 4 + 1] ?? 0) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }
  return (at(left, top) * (1 - partX) + at(left + 1, top) * partX) * (1 - partY) + (at(left, top + 1) * (1 - partX) + at(left + 1, top + 1) * partX) * partY
}

/** How far along `inward` from a point the picture turns bright, px, or nothing where it does not. */
function edgeAlong(pixels: Pixels, [x, y]: PixelPoint, inward: PixelPoint, reachPx: number): number | undefined {
  const step = 0.25
  const rises: { readonly at: number, readonly rise: number }[] = []
  for (let at = -reachPx; at <= reachPx; at += step) {
    const bright = (d: number): number => brightnessAt(pixels, x + inward[0] * d, y + inward[1] * d)
    rises.push({ at, rise: bright(at + 0.5) - bright(at - 0.5) })
  }
  const steepest = rises.reduce((best, next) => (next.rise > best.rise ? next : best))
  if (steepest.rise < 0.03) return undefined
  const near = rises.filter(({ at, rise }) => Math.abs(at - steepest.at) <= 2 && rise > steepest.rise * 0.2)
  return near.reduce((sum, { at, rise }) => sum + at * rise, 0) / near.reduce((sum, { rise }) => sum + rise, 0)
}

/** A line as a point and a direction, through the edge between two roughly known corners; points far off the first fit are left out. */
function sideBetween(pixels: Pixels, from: PixelPoint, to: PixelPoint, reachPx: number): { readonly point: PixelPoint, readonly slope: number, readonly along: PixelPoint, readonly inward: PixelPoint } {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const along: PixelPoint = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const inward: PixelPoint = [-along[1], along[0]]
  let points: { readonly s: number, readonly d: number }[] = []
  for (let s = length * 0.1; s <= length * 0.9; s += Math.max(1, length / 60)) {
    const d = edgeAlong(pixels, [from[0] + along[0] * s, from[1] + along[1] * s], inward, reachPx)
    if (d !== undefined) points.push({ s, d })
  }
  let line = { offset: 0, slope: 0 }
  for (const allowance of [3, 1, 0.5]) {
    line = fitted(points)
    points = points.filter(({ s, d }) => Math.abs(d - line.offset - line.slope * s) < allowance)
  }
  line = fitted(points)
  return { point: [from[0] + inward[0] * line.offset, from[1] + inward[1] * line.offset], slope: line.slope, along, inward }
}

/** Least squares. */
function fitted(points: readonly { readonly s: number, readonly d: number }[]): { offset: number, slope: number } {
  const count = points.length
  const meanS = points.reduce((sum, { s }) => sum + s, 0) / count
  const meanD = points.reduce((sum, { d }) => sum + d, 0) / count
  const slope = points.reduce((sum, { s, d }) => sum + (s - meanS) * (d - meanD), 0) / points.reduce((sum, { s }) => sum + (s - meanS) ** 2, 0)
  return { offset: meanD - slope * meanS, slope }
}

type Side = ReturnType<typeof sideBetween>

function crossing(one: Side, other: Side): PixelPoint {
  const direction = (side: Side): PixelPoint => [side.along[0] + side.inward[0] * side.slope, side.along[1] + side.inward[1] * side.slope]
  const [a, b] = [direction(one), direction(other)]
  const t = ((other.point[0] - one.point[0]) * b[1] - (other.point[1] - one.point[1]) * b[0]) / (a[0] * b[1] - a[1] * b[0])
  return [one.point[0] + a[0] * t, one.point[1] + a[1] * t]
}

/**
 * The corners of a bright rectangle in a dark frame as the picture itself shows them, from corners pointed at roughly:
 * a line fitted to each edge, crossed with its neighbour.
 */
export function readCorners(pixels: Pixels, rough: readonly [PixelPoint, PixelPoint, PixelPoint, PixelPoint], reachPx: number): [PixelPoint, PixelPoint, PixelPoint, PixelPoint] {
  const [a, b, c, d] = rough
  const [top, right, bottom, left] = [sideBetween(pixels, a, b, reachPx), sideBetween(pixels, b, c, reachPx), sideBetween(pixels, c, d, reachPx), sideBetween(pixels, d, a, reachPx)]
  return [crossing(left, top), crossing(top, right), crossing(right, bottom), crossing(bottom, left)]
}
