import { describe, expect, it } from 'vitest'
import { Refusal } from '../../../shared-logic/contract/refusal'
import { measuredArea, type FoundMasks, type MeasurementGiven } from '../../../shared-logic/measuring/area'
import { emptyMask } from '../../../shared-logic/measuring/mask'
import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { sayRefusal } from '../../../shared-logic/words/say-refusal'
import { en } from '../../../shared-logic/words/en'

const square = (left: number, top: number, side: number): PixelPoint[] => [[left, top], [left + side, top], [left + side, top + side], [left, top + side]]
const length: Scale = { kind: 'length', from: [100, 100], to: [900, 100], lengthM: 0.1 }
const rectangle = (...corners: [PixelPoint, PixelPoint, PixelPoint, PixelPoint]): Scale => ({ kind: 'rectangle', corners, widthM: 0.2, heightM: 0.15 })
const plate = rectangle([300, 200], [900, 200], [1000, 800], [200, 800])
const given = (more: Partial<MeasurementGiven>): MeasurementGiven => ({ widthPx: 1600, heightPx: 1200, scale: length, outline: { by: 'polygon', points: square(200, 200, 300) }, ...more })
const points = (list: PixelPoint[]): Partial<MeasurementGiven> => ({ outline: { by: 'polygon', points: list } })

const refusalOf = (input: MeasurementGiven, found?: FoundMasks): Refusal | undefined => {
  try { measuredArea(input, found) } catch (problem) { if (problem instanceof Refusal) return problem; throw problem }
  return undefined
}

describe('no area is given', () => {
  it.each<[string, string, Partial<MeasurementGiven>]>([
    ['an outline that crosses itself', 'measure.outline-crossed', points([[100, 100], [400, 400], [400, 100], [100, 400]])],
    ['an outline that touches itself in a corner', 'measure.outline-crossed', points([[100, 100], [400, 100], [250, 300], [400, 500], [100, 500], [250, 300]])],
    ['an outline outside the picture', 'measure.outline-outside-picture', points(square(1400, 1000, 300))],
    ['an outline that encloses nothing', 'measure.outline-empty', points([[100, 100], [300, 300], [200, 200]])],
    ['an outline of one point thrice', 'measure.outline-empty', points([[100, 100], [100, 100], [100, 100]])],
    ['a brush that was wiped away again', 'measure.outline-empty', { outline: { by: 'brush', strokes: [{ does: 'adds', radiusPx: 10, points: [[300, 300]] }, { does: 'erases', radiusPx: 20, points: [[300, 300]] }] } }],
    ['a scale of no length', 'measure.scale-zero-length', { scale: { ...length, to: [100, 100] } }],
    ['a known length of nothing', 'measure.scale-no-length', { scale: { ...length, lengthM: 0 } }],
    ['a known length below nothing', 'measure.scale-no-length', { scale: { ...length, lengthM: -0.1 } }],
    ['a known length under a millimetre', 'measure.scale-no-length', { scale: { ...length, lengthM: 0.000_999 } }],
    ['a known length over 20 m', 'measure.scale-no-length', { scale: { ...length, lengthM: 20.001 } }],
    ['a rectangle with a side of nothing', 'measure.scale-no-length', { scale: { kind: 'rectangle', corners: [[300, 200], [900, 200], [1000, 800], [200, 800]], widthM: 0, heightM: 0.15 } }],
    ['a scale of a few px', 'measure.scale-too-short', { scale: { ...length, to: [119, 100] } }],
    ['a scale off the picture', 'measure.scale-outside-picture', { scale: { ...length, to: [1601, 100] } }],
    ['three corners on a line', 'measure.rectangle-corners-in-line', { scale: rectangle([300, 200], [600, 202], [900, 200], [200, 800]) }],
    ['two corners on the same place', 'measure.rectangle-corners-in-line', { scale: rectangle([300, 200], [300, 200], [900, 700], [200, 800]) }],
    ['corners in the order of a bow tie', 'measure.rectangle-crossed', { scale: rectangle([300, 200], [1000, 800], [900, 200], [200, 800]) }],
    ['corners crossed the other way', 'measure.rectangle-crossed', { scale: rectangle([300, 200], [900, 200], [200, 800], [1000, 800]) }],
    ['a corner inside the other three', 'measure.rectangle-dented', { scale: rectangle([300, 200], [900, 200], [550, 350], [200, 800]) }],
    ['a face that crosses itself', 'measure.face-crossed', { face: [[100, 100], [900, 900], [900, 100], [100, 900]] }],
    ['a face outside the picture', 'measure.face-outside-picture', { face: square(700, 700, 600) }],
    ['a face that encloses nothing', 'measure.face-empty', { face: [[100, 100], [200, 200], [300, 300]] }],
    ['a spot larger than its face', 'measure.outline-outside-face', { face: square(300, 300, 100) }],
    ['a spot beside its face', 'measure.outline-outside-face', { face: square(700, 700, 300) }],
    ['a spot across the notch of its face', 'measure.outline-outside-face', { ...points([[110, 120], [590, 120], [590, 180], [110, 180]]), face: [[100, 100], [250, 100], [300, 400], [400, 400], [450, 100], [600, 100], [600, 500], [100, 500]] }],
    ['a spot beyond the horizon of the plate', 'measure.outline-beyond-horizon', { scale: rectangle([700, 500], [900, 500], [1500, 1100], [100, 1100]), ...points(square(700, 10, 100)) }],
    ['a face beyond the horizon of the plate', 'measure.face-beyond-horizon', { scale: rectangle([700, 500], [900, 500], [1500, 1100], [100, 1100]), face: square(300, 10, 900), ...points(square(700, 800, 50)) }],
    ['a brush beyond the horizon', 'measure.outline-beyond-horizon', { scale: rectangle([700, 500], [900, 500], [1500, 1100], [100, 1100]), outline: { by: 'brush', strokes: [{ does: 'adds', radiusPx: 30, points: [[800, 50], [800, 800]] }] } }],
    ['an area no trailer has', 'measure.area-too-large', { scale: { ...length, to: [130, 100], lengthM: 20 }, ...points(square(0, 0, 1200)) }],
  ])('for %s', (_, code, more) => {
    const refusal = refusalOf(given(more))
    expect(refusal?.data.code).toBe(code)
    const sentence = refusal ? sayRefusal(en, refusal.data) : ''
    expect(sentence).not.toBe(code)
    expect(sentence).not.toMatch(/[{}]/)
    expect(sentence).toMatch(/\. [A-Z].*\.$/)
  })

  it('where the finder found nothing, and says what to do', () => {
    const nothing = emptyMask({ width: 1600, height: 1200 })
    expect(refusalOf(given({ outline: { by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes: [] } }), { asSet: nothing, tight: nothing, loose: nothing })?.data.code).toBe('measure.nothing-found')
  })
})

describe('an area is given', () => {
  it.each<[string, Partial<MeasurementGiven>]>([
    ['to a spot on the very border of the picture', points(square(0, 0, 300))],
    ['to a spot as large as its face', { face: square(200, 200, 300) }],
    ['to a spot a hand’s error over its face', { face: square(203, 203, 297) }],
    ['to an outline drawn the other way round', points(square(200, 200, 300).toReversed())],
    ['to a rectangle pointed out the other way round', { scale: rectangle([300, 200], [200, 800], [1000, 800], [900, 200]) }],
    ['to a point put twice', points([[200, 200], [200, 200], [500, 200], [500, 500], [200, 500], [200, 200]])],
    ['to a spot on a plate in perspective', { scale: plate }],
    ['to a scale of just enough px', { scale: { ...length, to: [120, 100] } }],
  ])('%s', (_, more) => expect(measuredArea(given(more)).areaM2).toBeGreaterThan(0))
})
