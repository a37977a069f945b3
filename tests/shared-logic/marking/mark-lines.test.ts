import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { arrowOutlines, ellipseIn, knownLines, markLines } from '../../../shared-logic/marking/mark-lines'
import { markSizes, pxPerPoint } from '../../../shared-logic/marking/mark-sizes'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { evenly } from '../evenly'

const coordinate = evenly(0, 4000)
const point: fc.Arbitrary<PixelPoint> = fc.tuple(coordinate, coordinate)
/** The numbers of path data, two by two. */
const pairs = (d: string): PixelPoint[] => [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)])
const apart = ([ax, ay]: PixelPoint = [NaN, NaN], [bx, by]: PixelPoint = [NaN, NaN]): number => Math.hypot(ax - bx, ay - by)
/** Path data is written to a tenth of a px. */
const written = 0.15

describe('an arrow', () => {
  it('has its tip where it points, its head alike on both sides, and its shaft from its tail to the head', () => {
    fc.assert(fc.property(point, point, evenly(1, 20), (from, to, unit) => {
      fc.pre(apart(from, to) > 20 * unit)
      const [shaft, head] = arrowOutlines(from, to, unit)
      const [tip, left, right] = pairs(head.d)
      const [tail, base] = pairs(shaft.d)
      expect(apart(tip, to)).toBeLessThanOrEqual(written)
      expect(apart(tail, from)).toBeLessThanOrEqual(written)
      expect(Math.abs(apart(tip, left) - apart(tip, right))).toBeLessThanOrEqual(2 * written)
      expect(Math.abs(apart(left, right) - markSizes.headWide * unit)).toBeLessThanOrEqual(2 * written)
      expect(Math.abs(apart(tip, base) - markSizes.headLong * unit)).toBeLessThanOrEqual(2 * written)
      // The base stands on the line between tail and tip.
      expect(Math.abs(apart(tail, base) + apart(base, tip) - apart(from, to))).toBeLessThanOrEqual(3 * written)
    }), { numRuns: 300 })
  })

  it('shorter than a head is all head, in its shape', () => {
    const [shaft, head] = arrowOutlines([100, 100], [110, 100], 10)
    expect(pairs(shaft.d)).toEqual([[100, 100], [100, 100]])
    const [tip, left, right] = pairs(head.d)
    expect(tip).toEqual([110, 100])
    expect(apart(left, right) / 10).toBeCloseTo(markSizes.headWide / markSizes.headLong, 2)
  })
})

describe('a circle', () => {
  /** Places along the cubic curves of path data that begins 'M' and goes on in 'C'. */
  const along = (d: string): PixelPoint[] => {
    const [start = [0, 0], ...rest] = pairs(d)
    let from = start
    const places: PixelPoint[] = []
    for (let index = 0; index < rest.length; index += 3) {
      const [a, b, to] = [rest[index] ?? from, rest[index + 1] ?? from, rest[index + 2] ?? from]
      for (let step = 0; step <= 20; step += 1) {
        const t = step / 20
        const on = (axis: 0 | 1): number => (1 - t) ** 3 * from[axis] + 3 * (1 - t) ** 2 * t * a[axis] + 3 * (1 - t) * t * t * b[axis] + t ** 3 * to[axis]
        places.push([on(0), on(1)])
      }
      from = to
    }
    return places
  }

  it('is the ellipse in the box of its two corners: x²/a² + y²/b² = 1 within what four cubic curves leave', () => {
    fc.assert(fc.property(point, point, (one, other) => {
      const [a, b] = [Math.abs(one[0] - other[0]) / 2, Math.abs(one[1] - other[1]) / 2]
      fc.pre(a > 50 && b > 50)
      const places = along(ellipseIn(one, other))
      expect(places).toHaveLength(84)
      for (const [x, y] of places) {
        const radius = Math.hypot((x - (one[0] + other[0]) / 2) / a, (y - (one[1] + other[1]) / 2) / b)
        // A quarter circle in one cubic curve is off by 0.027 % at the most (worked out from its formula); the rest is the tenth of a px it is written to.
        expect(Math.abs(radius - 1)).toBeLessThanOrEqual(0.000_28 + 0.2 / Math.min(a, b))
      }
    }), { numRuns: 200 })
  })
})

describe('every line', () => {
  it('has its casing below its core, and grows with the picture: the same on the page whatever the camera', () => {
    for (const [widthPx, heightPx] of [[800, 600], [4000, 3000], [3000, 4000], [6000, 1000]] as const) {
      const unit = pxPerPoint({ widthPx, heightPx })
      // The largest it stands in the report is 240 × 180 points.
      expect(Math.max(widthPx / unit / 240, heightPx / unit / 180)).toBeCloseTo(1, 9)
      for (const mark of [{ kind: 'arrow', from: [10, 10], to: [500, 400] }, { kind: 'box', from: [10, 10], to: [500, 400] }, { kind: 'length', from: [10, 10], to: [500, 400] }] as const) {
        const strokes = markLines({ ...mark, from: [...mark.from], to: [...mark.to] }, unit).map(({ stroke, weight }) => [stroke, (weight ?? 0) / unit])
        const half = strokes.length / 2
        expect(strokes.slice(0, half).every(([stroke, weight]) => stroke === 'casing' && Math.abs(Number(weight) - markSizes.casing) < 1e-9)).toBe(true)
        expect(strokes.slice(half).every(([stroke, weight]) => stroke === 'mark' && Math.abs(Number(weight) - markSizes.core) < 1e-9)).toBe(true)
      }
    }
  })

  it('of a measured length has a bar across either end, at right angles', () => {
    const [casing] = markLines({ kind: 'length', from: [100, 100], to: [400, 500] }, 10)
    const [from, to, a, b, c, d] = casing?.kind === 'path' ? pairs(casing.d) : []
    expect([from, to]).toEqual([[100, 100], [400, 500]])
    for (const [one, other, end] of [[a, b, from], [c, d, to]] as const) {
      expect(apart(one, other)).toBeCloseTo(2 * markSizes.endBar * 10, 0)
      expect(apart(one, end)).toBeCloseTo(apart(other, end), 0)
      expect(((one?.[0] ?? 0) - (other?.[0] ?? 0)) * 300 + ((one?.[1] ?? 0) - (other?.[1] ?? 0)) * 400).toBeCloseTo(0, -2)
    }
  })

  it('drawn by hand begins and ends where the hand did', () => {
    const points: PixelPoint[] = [[10, 10], [60, 90], [120, 20], [200, 200]]
    const [casing] = markLines({ kind: 'freehand', points }, 5)
    const places = casing?.kind === 'path' ? pairs(casing.d) : []
    expect([places[0], places.at(-1)]).toEqual([points[0], points.at(-1)])
  })

  it('of the known length is a staff: as long as what is known, half of it dark', () => {
    const [, core] = knownLines({ from: [0, 0], to: [1000, 0] }, 1)
    const dark = core?.kind === 'path' ? core.d.split('M').slice(1).map((part) => pairs(part)).slice(2) : []
    expect(dark).toEqual([[[0, 0], [200, 0]], [[400, 0], [600, 0]], [[800, 0], [1000, 0]]])
  })
})
