import { describe, expect, it } from 'vitest'
import { measuredArea, outlinedMask, type MeasurementGiven } from '../../../shared-logic/measuring/area'
import { emptyMask, overlap, pixelCount, polygonMask } from '../../../shared-logic/measuring/mask'
import { measuredAreaSchema, type PixelPoint, type Scale } from '../../../shared-logic/measuring/measurement'
import { maskRegion, polygonRegion } from '../../../shared-logic/measuring/region'
import { areaPerPx2At, surfaceMapOf } from '../../../shared-logic/measuring/surface-map'

const picture = { widthPx: 4000, heightPx: 3000 }
const plate: Scale = { kind: 'rectangle', corners: [[900, 600], [2700, 640], [3050, 2400], [620, 2350]], widthM: 0.2, heightM: 0.15 }
const bar: Scale = { kind: 'length', from: [100, 2900], to: [2100, 2900], lengthM: 0.25 }
const round = (x: number, y: number, radius: number, corners = 72): PixelPoint[] =>
  Array.from({ length: corners }, (_, index): PixelPoint => [x + radius * Math.cos((2 * Math.PI * index) / corners), y + radius * Math.sin((2 * Math.PI * index) / corners)])
const square = (left: number, top: number, side: number): PixelPoint[] => [[left, top], [left + side, top], [left + side, top + side], [left, top + side]]
const drawn = (points: PixelPoint[], more: Partial<MeasurementGiven> = {}): MeasurementGiven => ({ ...picture, scale: bar, outline: { by: 'polygon', points }, ...more })

describe('pixels under a perspective', () => {
  const map = surfaceMapOf(plate)
  it('counts each with its own true area: a mask and its polygon come to the same within a tenth of a per cent', () => {
    const points = round(1800, 1500, 500)
    const mask = polygonMask({ width: 1600, height: 1200 }, points.map(([x, y]): PixelPoint => [x / 2.5, y / 2.5]))
    expect(maskRegion(mask, picture).areaM2(map) / polygonRegion(points).areaM2(map)).toBeCloseTo(1, 3)
  })
  it('adds up the Jacobian of the map over the pixels', () => {
    const mask = polygonMask({ width: 1600, height: 1200 }, square(500, 400, 40))
    let sum = 0
    for (let row = 400; row < 440; row += 1) for (let column = 500; column < 540; column += 1) sum += 2.5 ** 2 * areaPerPx2At(map, (column + 0.5) * 2.5, (row + 0.5) * 2.5)
    expect(maskRegion(mask, picture).areaM2(map) / sum).toBeCloseTo(1, 6)
  })
  it('knows its own plate: the four corners outlined are 200 × 150 mm', () => expect(polygonRegion(plate.kind === 'rectangle' ? plate.corners : []).areaM2(map)).toBeCloseTo(0.03, 12))
  it('moves a border by its length: a disc’s border from pixels is within 3 % of the outline’s', () => {
    const points = round(1800, 1500, 500)
    const mask = polygonMask({ width: 1600, height: 1200 }, points.map(([x, y]): PixelPoint => [x / 2.5, y / 2.5]))
    expect(maskRegion(mask, picture).borderM2PerPx(map) / polygonRegion(points).borderM2PerPx(map)).toBeCloseTo(1, 1.5)
  })
})

describe('the share of a face', () => {
  it('is the spot over the face, with a span for both borders', () => {
    const result = measuredArea(drawn(square(1000, 1000, 400), { face: square(800, 800, 1000) }))
    expect(result.share).toBeCloseTo(0.16, 10)
    expect(result.faceAreaM2).toBeCloseTo(0.125 ** 2, 10)
    expect(result.shareLow).toBeLessThan(0.16)
    expect(result.shareHigh).toBeGreaterThan(0.16)
    expect(measuredAreaSchema.parse(result)).toEqual(result)
  })
  it('is never over the whole, where the hand went a shade over the face', () => {
    const result = measuredArea(drawn(square(798, 798, 1004), { face: square(800, 800, 1000) }))
    expect(result.share).toBe(1)
    expect(result.shareHigh).toBe(1)
  })
  it('does not count what the brush painted off the face', () => {
    const strokes = [{ does: 'adds' as const, radiusPx: 150, points: [[700, 1300], [1900, 1300]] as PixelPoint[] }]
    const given: MeasurementGiven = { ...picture, scale: bar, outline: { by: 'brush', strokes }, face: square(800, 800, 1000) }
    expect(measuredArea(given).share).toBeCloseTo(0.3, 2)
    expect(pixelCount(outlinedMask(given))).toBe(400 * 120)
  })
})

describe('what the finder found', () => {
  const asSet = polygonMask({ width: 1600, height: 1200 }, square(400, 400, 200))
  const tight = polygonMask(asSet, square(420, 420, 160))
  const loose = polygonMask(asSet, square(380, 380, 240))
  const given: MeasurementGiven = { ...picture, scale: bar, outline: { by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes: [] }, face: square(800, 800, 1000) }

  it('is measured at the working size, with the tight and loose reading as the span of its share', () => {
    const result = measuredArea(given, { asSet, tight, loose })
    expect(result.share).toBeCloseTo(0.25, 6)
    expect(result.shareLow).toBeCloseTo(0.16, 6)
    expect(result.shareHigh).toBeCloseTo(0.36, 6)
    expect(measuredAreaSchema.parse(result)).toEqual(result)
  })
  it('is no surer than the span between the two readings', () => {
    const sure = measuredArea(given, { asSet, tight: asSet, loose: asSet })
    const unsure = measuredArea(given, { asSet, tight, loose })
    expect(unsure.uncertaintyM2).toBeGreaterThan(sure.uncertaintyM2)
    expect(unsure.uncertaintyM2).toBeGreaterThan((2 * (0.36 - 0.16) * (unsure.faceAreaM2 ?? 0)) / 2 / Math.sqrt(3))
  })
  it('is corrected by the brush in all three readings: what stays is the hand’s own error, the same to either side', () => {
    const strokes = [{ does: 'erases' as const, radiusPx: 4000, points: [[1250, 1250]] as PixelPoint[] }, { does: 'adds' as const, radiusPx: 100, points: [[1250, 1250]] as PixelPoint[] }]
    const result = measuredArea({ ...given, outline: { by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes } }, { asSet, tight, loose })
    const { share = 0, shareLow = 0, shareHigh = 0 } = result
    expect(share).toBeGreaterThan(shareLow)
    expect(shareHigh - share).toBeCloseTo(share - shareLow, 12)
    expect((result.share ?? 0) / ((Math.PI * 100 ** 2) / 1000 ** 2)).toBeCloseTo(1, 1.5)
  })
  it('is the same again from the same input', () => expect(measuredArea(given, { asSet, tight, loose })).toEqual(measuredArea(given, { asSet, tight, loose })))
  it('is needed for an outline by the finder', () => expect(() => measuredArea(given)).toThrow(/finder/))
})

describe('a brush', () => {
  const brushed = (radiusPx: number, points: PixelPoint[], does: 'adds' | 'erases' = 'adds') => ({ does, radiusPx, points })
  it.each<[number, PixelPoint[]]>([[100, [[2000, 1500]]], [60, [[1000, 1000], [3000, 1700]]], [60, [[1000, 1000], [1000, 2000]]], [60, [[1000, 1000], [2000, 1000]]]])('of %i px covers the round end and the pull of %j', (radius, points) => {
    const mask = outlinedMask({ ...picture, scale: bar, outline: { by: 'brush', strokes: [brushed(radius, points)] } })
    const [from = [0, 0], to = from] = [points.at(0), points.at(-1)]
    const truth = Math.PI * radius ** 2 + 2 * radius * Math.hypot(to[0] - from[0], to[1] - from[1])
    expect((pixelCount(mask) * 2.5 ** 2) / truth).toBeCloseTo(1, 1.7)
  })
  it('takes exactly the pixels whose middle it covers', () => {
    const points: PixelPoint[] = [[333, 777], [1234, 1001]]
    const mask = outlinedMask({ ...picture, scale: bar, outline: { by: 'brush', strokes: [brushed(91, points)] } })
    const pull = emptyMask(mask)
    for (let row = 0; row < mask.height; row += 1) {
      for (let column = 0; column < mask.width; column += 1) {
        const [x, y] = [(column + 0.5) * 2.5 - 333, (row + 0.5) * 2.5 - 777]
        const along = Math.max(0, Math.min(1, (x * 901 + y * 224) / (901 ** 2 + 224 ** 2)))
        if (Math.hypot(x - along * 901, y - along * 224) <= 91) pull.data[row * mask.width + column] = 1
      }
    }
    expect(pixelCount(overlap(mask, pull))).toBe(pixelCount(pull))
    expect(pixelCount(mask)).toBe(pixelCount(pull))
  })
})
