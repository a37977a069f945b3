import { describe, expect, it } from 'vitest'
import { commonWidthM, levelPicture, toFrame, type LevelPicture } from '../../../shared-logic/measuring/level-picture'
import type { Measurement, PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { toSurface } from '../../../shared-logic/measuring/surface-map'

const measured = (scale: Scale, points: PixelPoint[]): Measurement => ({
  sha256: 'a'.repeat(64), widthPx: 2000, heightPx: 1500, scale, outline: { by: 'polygon', points }, result: { areaM2: 0.001, uncertaintyM2: 0.0001 },
})
const level = (measurement: Measurement): LevelPicture => {
  const picture = levelPicture(measurement)
  if (picture === undefined) throw new Error('not level')
  return picture
}
const apart = ([x1, y1]: PixelPoint, [x2, y2]: PixelPoint): number => Math.hypot(x1 - x2, y1 - y2)

const near = measured({ kind: 'length', from: [0, 100], to: [1000, 100], lengthM: 0.1 }, [[800, 600], [1200, 600], [1200, 900], [800, 900]])
const far = measured({ kind: 'length', from: [0, 100], to: [400, 100], lengthM: 0.1 }, [[900, 700], [1100, 700], [1100, 800], [900, 800]])
const card: [PixelPoint, PixelPoint, PixelPoint, PixelPoint] = [[700, 500], [1300, 560], [1250, 1000], [650, 900]]
const askew = measured({ kind: 'rectangle', corners: card, widthM: 0.09, heightM: 0.05 }, [[900, 650], [1000, 650], [1000, 750]])

describe('photographs laid level', () => {
  it('show a length as long in a near picture as in a far one', () => {
    const frame = { width: 400, height: 300 }
    const widthM = commonWidthM([level(near), level(far)], 0.75)
    const [nearMap, farMap] = [toFrame(level(near), widthM, frame), toFrame(level(far), widthM, frame)]
    // 30 mm are 300 px in the near picture and 120 px in the far one.
    expect(apart(toSurface(nearMap, [900, 700]), toSurface(nearMap, [1200, 700]))).toBeCloseTo((0.03 / widthM) * 400, 6)
    expect(apart(toSurface(farMap, [900, 700]), toSurface(farMap, [1020, 700]))).toBeCloseTo((0.03 / widthM) * 400, 6)
  })

  it('take the perspective out: the sides of the known rectangle are as long as they are, and at right angles', () => {
    const { map } = level(askew)
    const [a, b, c, d] = card.map((corner) => toSurface(map, corner))
    if (!a || !b || !c || !d) throw new Error('four corners')
    for (const [from, to, lengthM] of [[a, b, 0.09], [b, c, 0.05], [c, d, 0.09], [d, a, 0.05]] as const) expect(apart(from, to)).toBeCloseTo(lengthM, 9)
    expect(apart(a, c)).toBeCloseTo(Math.hypot(0.09, 0.05), 9)
  })

  it('keep the picture’s right to the right and its foot down, whichever way round the corners were put', () => {
    for (const corners of [card, [card[1], card[0], card[3], card[2]], [card[2], card[3], card[0], card[1]]] as const) {
      const { map } = level(measured({ kind: 'rectangle', corners: [...corners], widthM: 0.09, heightM: 0.05 }, [[900, 650], [1000, 650], [1000, 750]]))
      const [middle, right, below] = [toSurface(map, [950, 700]), toSurface(map, [960, 700]), toSurface(map, [950, 710])]
      expect(right[0]).toBeGreaterThan(middle[0])
      expect(right[1]).toBeCloseTo(middle[1], 9)
      expect(below[1]).toBeGreaterThan(middle[1])
    }
  })

  it('set the middle of the spot in the middle of the frame, and the whole spot into it', () => {
    const frame = { width: 400, height: 300 }
    const map = toFrame(level(near), commonWidthM([level(near), level(far)], 0.75), frame)
    expect(toSurface(map, [1000, 750])).toEqual([expect.closeTo(200, 6), expect.closeTo(150, 6)])
    for (const corner of [[800, 600], [1200, 900]] as const) {
      const [x, y] = toSurface(map, [...corner])
      expect(x > 0 && x < 400 && y > 0 && y < 300).toBe(true)
    }
  })

  it('are none where the scale gives no map', () => {
    expect(levelPicture(measured({ kind: 'length', from: [5, 5], to: [5, 5], lengthM: 0.1 }, [[800, 600], [1200, 600], [1200, 900]]))).toBeUndefined()
  })
})
