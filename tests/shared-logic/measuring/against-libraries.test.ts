import { Polygon, point as flattenPoint } from '@flatten-js/core'
import type openCv from '@techstark/opencv-js'
import * as fc from 'fast-check'
import { createRequire } from 'node:module'
import { beforeAll, describe, expect, it } from 'vitest'
import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { contains, distanceToBorder, polygonArea } from '../../../shared-logic/measuring/polygon'
import { surfaceMapOf, toSurface } from '../../../shared-logic/measuring/surface-map'

// Required, not imported: the library has a `then` of its own, which an import would wait on for ever.
const cv: typeof openCv = createRequire(import.meta.url)('@techstark/opencv-js')

const coordinate = fc.double({ min: 0, max: 4000, noNaN: true })
const point = fc.tuple(coordinate, coordinate)

/** A star about a middle: it never crosses itself. */
const star = fc.tuple(point, fc.array(fc.double({ min: 20, max: 900, noNaN: true }), { minLength: 3, maxLength: 40 })).map(([[x, y], radii]) =>
  radii.map((radius, index): PixelPoint => [x + radius * Math.cos((index * 2 * Math.PI) / radii.length), y + radius * Math.sin((index * 2 * Math.PI) / radii.length)]))

describe('polygons, against a general-purpose geometry library', () => {
  it('enclose the same area', () => {
    fc.assert(fc.property(star, (points) => {
      const theirs = new Polygon(points.map(([x, y]) => flattenPoint(x, y))).area()
      expect(Math.abs(polygonArea(points) - theirs)).toBeLessThanOrEqual(1e-9 * theirs + 1e-6)
    }), { numRuns: 300 })
  })
  it('hold the same points, and stand as far from them', () => {
    fc.assert(fc.property(star, point, (points, [x, y]) => {
      const theirs = new Polygon(points.map(([a, b]) => flattenPoint(a, b)))
      const [far] = flattenPoint(x, y).distanceTo(theirs)
      fc.pre(far > 1e-3)
      const inside = theirs.contains(flattenPoint(x, y))
      expect(contains(points, [x, y])).toBe(inside)
      expect(distanceToBorder(points, [x, y])).toBeCloseTo(far, 6)
    }), { numRuns: 200 })
  })
})

describe('the map from four corners, against a general-purpose vision library', () => {
  beforeAll(async () => {
    if (cv.Mat) return
    await new Promise<void>((resolve) => { cv.onRuntimeInitialized = resolve })
  })

  const off = fc.double({ min: -150, max: 150, noNaN: true })
  const corners = fc.tuple(off, off, off, off, off, off, off, off).map(([a, b, c, d, e, f, g, h]): Extract<Scale, { kind: 'rectangle' }>['corners'] =>
    [[500 + a, 400 + b], [1100 + c, 400 + d], [1100 + e, 900 + f], [500 + g, 900 + h]])
  const side = fc.double({ min: 0.01, max: 2, noNaN: true })

  it('puts every point of the picture at the same place', () => {
    fc.assert(fc.property(corners, side, side, fc.array(fc.tuple(fc.double({ min: 400, max: 1200, noNaN: true }), fc.double({ min: 300, max: 1000, noNaN: true })), { minLength: 8, maxLength: 8 }), (four, widthM, heightM, points) => {
      const from = cv.matFromArray(4, 1, cv.CV_32FC2, four.flat())
      const to = cv.matFromArray(4, 1, cv.CV_32FC2, [0, 0, widthM, 0, widthM, heightM, 0, heightM])
      const transform = cv.getPerspectiveTransform(from, to)
      const theirs: number[] = [...transform.data64F]
      for (const mat of [from, to, transform]) mat.delete()
      const map = surfaceMapOf({ kind: 'rectangle', corners: four, widthM, heightM })
      for (const [x, y] of points) {
        const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0] = theirs
        const w = g * x + h * y + i
        // Theirs starts from 32-bit corners.
        if (Math.abs(w) < 0.2) continue
        const [u, v] = toSurface(map, [x, y])
        expect(Math.abs(u - (a * x + b * y + c) / w)).toBeLessThan(1e-4 * (widthM + Math.abs(u)))
        expect(Math.abs(v - (d * x + e * y + f) / w)).toBeLessThan(1e-4 * (heightM + Math.abs(v)))
      }
    }), { numRuns: 200 })
  })
})
