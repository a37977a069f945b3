import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { polygonMask } from '../../../shared-logic/measuring/mask'
import { maskOutline } from '../../../shared-logic/measuring/mask-outline'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { contains, crossesItself, polygonArea } from '../../../shared-logic/measuring/polygon'

const picture = (width: number, height: number) => ({ widthPx: width * 2, heightPx: height * 2 })
const maskOf = (rows: readonly string[]) => ({ width: rows[0]?.length ?? 0, height: rows.length, data: Uint8Array.from(rows.join(''), (cell) => (cell === '#' ? 1 : 0)) })

describe('a mask’s border', () => {
  it('is one ring round a block and one in its hole, in px of the original', () => {
    expect(maskOutline(maskOf(['.....', '.###.', '.#.#.', '.###.']), picture(5, 4), 0)).toEqual([
      [[2, 2], [8, 2], [8, 8], [2, 8]], [[4, 4], [4, 6], [6, 6], [6, 4]],
    ])
  })
  it('keeps pixels that touch by a corner apart', () => expect(maskOutline(maskOf(['#.', '.#']), picture(2, 2), 0)).toHaveLength(2))
  it('filled by the even-odd rule gives every mask back', () => {
    const masks = fc.array(fc.array(fc.constantFrom('#', '.'), { minLength: 7, maxLength: 7 }).map((cells) => cells.join('')), { minLength: 6, maxLength: 6 })
    fc.assert(fc.property(masks, (rows) => {
      const rings = maskOutline(maskOf(rows), picture(7, 6), 0)
      rows.forEach((row, y) => Array.from(row).forEach((cell, x) => {
        const inside = rings.filter((ring) => contains(ring, [2 * x + 1, 2 * y + 1])).length % 2 === 1
        expect(inside).toBe(cell === '#')
      }))
    }), { numRuns: 200 })
  })
  it('let off the stairs, stands within a pixel of a disc and keeps its area within 1 %', () => {
    const disc = Array.from({ length: 200 }, (_, index): PixelPoint => [100 + 60 * Math.cos((index * Math.PI) / 100), 100 + 60 * Math.sin((index * Math.PI) / 100)])
    const [ring = [], ...others] = maskOutline(polygonMask({ width: 200, height: 200 }, disc), picture(200, 200))
    expect(others).toHaveLength(0)
    expect(ring.length).toBeLessThan(100)
    expect(crossesItself(ring)).toBe(false)
    expect(polygonArea(ring) / (Math.PI * 120 ** 2)).toBeCloseTo(1, 1.7)
  })
})
