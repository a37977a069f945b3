import { Box, point as flattenPoint, segment } from '@flatten-js/core'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf, distanceToMark, movedBy } from '../../../shared-logic/marking/mark-geometry'
import type { Mark } from '../../../shared-logic/marking/marks'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { evenly } from '../evenly'

const size = { widthPx: 4000, heightPx: 3000 }
const point: fc.Arbitrary<PixelPoint> = fc.tuple(evenly(0, 4000), evenly(0, 3000))
const freehand = fc.array(point, { minLength: 2, maxLength: 12 }).map((points): Mark => ({ kind: 'freehand', points }))

describe('a mark under the hand, against a general-purpose geometry library', () => {
  it('is as far from a finger as its nearest line', () => {
    fc.assert(fc.property(freehand, point, (mark, [x, y]) => {
      const points = mark.kind === 'freehand' ? mark.points : []
      const theirs = Math.min(...points.slice(1).map(([toX, toY], index) => {
        const [fromX, fromY] = points[index] ?? [toX, toY]
        return flattenPoint(x, y).distanceTo(segment(fromX, fromY, toX, toY))[0]
      }))
      expect(distanceToMark(mark, [x, y])).toBeCloseTo(theirs, 6)
    }), { numRuns: 300 })
  })

  it('spans what its points span', () => {
    fc.assert(fc.property(freehand, (mark) => {
      const points = mark.kind === 'freehand' ? mark.points : []
      const theirs = points.map(([x, y]) => flattenPoint(x, y).box).reduce((box, next) => box.merge(next), new Box(Infinity, Infinity, -Infinity, -Infinity))
      const { x, y, width, height } = boundsOf(mark)
      expect([x, y, x + width, y + height].map((value) => value.toFixed(6))).toEqual([theirs.xmin, theirs.ymin, theirs.xmax, theirs.ymax].map((value) => value.toFixed(6)))
    }), { numRuns: 200 })
  })
})

describe('a mark that is moved', () => {
  it('keeps its shape and stays on the picture, however far the hand goes', () => {
    fc.assert(fc.property(freehand, evenly(-5000, 5000), evenly(-5000, 5000), (mark, dx, dy) => {
      const moved = movedBy(mark, [dx, dy], size)
      if (mark.kind !== 'freehand' || moved.kind !== 'freehand') throw new Error('a line stays a line')
      const [stepX, stepY] = [(moved.points[0]?.[0] ?? 0) - (mark.points[0]?.[0] ?? 0), (moved.points[0]?.[1] ?? 0) - (mark.points[0]?.[1] ?? 0)]
      for (const [index, [x, y]] of moved.points.entries()) {
        expect(x >= -1e-6 && y >= -1e-6 && x <= 4000 + 1e-6 && y <= 3000 + 1e-6).toBe(true)
        expect(x - (mark.points[index]?.[0] ?? 0)).toBeCloseTo(stepX, 6)
        expect(y - (mark.points[index]?.[1] ?? 0)).toBeCloseTo(stepY, 6)
      }
      const { x, y, width, height } = boundsOf(mark)
      // All the way where there is room, else to the border.
      expect(stepX).toBeCloseTo(x + dx < 0 ? -x : x + width + dx > 4000 ? 4000 - x - width : dx, 6)
      expect(stepY).toBeCloseTo(y + dy < 0 ? -y : y + height + dy > 3000 ? 3000 - y - height : dy, 6)
    }), { numRuns: 300 })
  })

  it('a circle is taken hold of by its rim, not by its middle', () => {
    const circle: Mark = { kind: 'circle', from: [100, 100], to: [500, 300] }
    expect(distanceToMark(circle, [500, 200])).toBeLessThan(1)
    expect(distanceToMark(circle, [300, 100])).toBeLessThan(1)
    expect(distanceToMark(circle, [300, 200])).toBeGreaterThan(95)
    expect(distanceToMark(circle, [100, 100])).toBeGreaterThan(30)
  })
})
