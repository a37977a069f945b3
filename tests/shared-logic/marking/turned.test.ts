import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { markSchema, type Mark, type MarkLayer } from '../../../shared-logic/marking/marks'
import { turnedLayer, turnedSize } from '../../../shared-logic/marking/turned'
import { measuredLength } from '../../../shared-logic/marking/length-of'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { evenly } from '../evenly'

const size = { widthPx: 4000, heightPx: 3000 }
const point: fc.Arbitrary<PixelPoint> = fc.tuple(evenly(0, size.widthPx), evenly(0, size.heightPx))
const span = (kind: 'arrow' | 'circle' | 'box' | 'length') => fc.record({ kind: fc.constant(kind), from: point, to: point })
const anyMark: fc.Arbitrary<Mark> = fc.oneof(
  span('arrow'), span('circle'), span('box'), span('length'),
  fc.record({ kind: fc.constant('freehand' as const), points: fc.array(point, { minLength: 2, maxLength: 20 }) }),
  fc.record({ kind: fc.constant('text' as const), at: point, text: fc.constant('crack') }),
)
const anyLayer: fc.Arbitrary<MarkLayer> = fc.record({ from: point, to: point, marks: fc.array(anyMark, { maxLength: 6 }), hasScale: fc.boolean() })
  .map(({ from, to, marks, hasScale }) => ({ ...size, ...(hasScale && { scale: { kind: 'length' as const, from, to, lengthM: 0.1 } }), marks }))

/** All points of a layer in a row. */
const pointsIn = ({ scale, marks }: MarkLayer): PixelPoint[] => [
  ...(scale ? [scale.from, scale.to] : []),
  ...marks.flatMap((mark): readonly PixelPoint[] => (mark.kind === 'freehand' ? mark.points : mark.kind === 'text' ? [mark.at] : [mark.from, mark.to])),
]
const lies = (layer: MarkLayer): unknown => ({ ...layer, scale: undefined, marks: layer.marks.map(({ kind }) => kind), points: pointsIn(layer).map(([x, y]) => [Math.round(x * 1e6), Math.round(y * 1e6)]) })

describe('a layer turned with its picture', () => {
  it('four quarter turns come to none, one after the other and at once', () => {
    fc.assert(fc.property(anyLayer, (layer) => {
      expect(turnedLayer(layer, 0)).toEqual(layer)
      const round = [1, 1, 1, 1].reduce(turnedLayer, layer)
      expect(lies(round)).toEqual(lies(layer))
      for (const turns of [1, 2, 3]) expect(lies(turnedLayer(turnedLayer(layer, turns), 4 - turns))).toEqual(lies(layer))
      expect(lies([1, 1].reduce(turnedLayer, layer))).toEqual(lies(turnedLayer(layer, 2)))
      expect(lies([1, 1, 1].reduce(turnedLayer, layer))).toEqual(lies(turnedLayer(layer, 3)))
    }), { numRuns: 200 })
  })

  it('a quarter turn clockwise takes the upper left corner to the upper right, and so round', () => {
    const corners: PixelPoint[] = [[0, 0], [4000, 0], [4000, 3000], [0, 3000]]
    const layer: MarkLayer = { ...size, marks: [{ kind: 'freehand', points: corners }] }
    const turned = turnedLayer(layer, 1)
    expect([turned.widthPx, turned.heightPx]).toEqual([3000, 4000])
    expect(pointsIn(turned)).toEqual([[3000, 0], [3000, 4000], [0, 4000], [0, 0]])
    expect(turnedSize(size, 2)).toEqual(size)
  })

  it('stays on the picture, keeps every length, and is still a layer', () => {
    fc.assert(fc.property(anyLayer, fc.integer({ min: 0, max: 3 }), (layer, turns) => {
      const turned = turnedLayer(layer, turns)
      for (const [x, y] of pointsIn(turned)) expect(x >= 0 && y >= 0 && x <= turned.widthPx && y <= turned.heightPx).toBe(true)
      for (const mark of turned.marks) expect(markSchema.safeParse(mark).success).toBe(true)
      for (const [index, mark] of layer.marks.entries()) {
        const after = turned.marks[index]
        if (mark.kind !== 'length' || after?.kind !== 'length' || !layer.scale || !turned.scale) continue
        if (Math.hypot(layer.scale.to[0] - layer.scale.from[0], layer.scale.to[1] - layer.scale.from[1]) < 20) continue
        expect(measuredLength(turned.scale, turned, after.from, after.to).lengthM).toBeCloseTo(measuredLength(layer.scale, layer, mark.from, mark.to).lengthM, 9)
      }
    }), { numRuns: 200 })
  })
})
