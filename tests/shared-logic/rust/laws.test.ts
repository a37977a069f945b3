import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foundMasks, rustMask, type RustFeatures } from '../../../shared-logic/rust/find-rust'
import { pixelCount } from '../../../shared-logic/measuring/mask'
import type { Mask } from '../../../shared-logic/measuring/pixels'

/** Lumpy likeness, so that regions, gaps and specks of many sizes come about. */
const featuresArb: fc.Arbitrary<RustFeatures> = fc.tuple(fc.integer({ min: 24, max: 60 }), fc.integer({ min: 24, max: 60 }), fc.integer({ min: 1, max: 5 }), fc.infiniteStream(fc.integer({ min: 0, max: 255 }))).map(([width, height, lump, stream]) => {
  const across = Math.ceil(width / lump)
  const coarse = [...stream.take(across * Math.ceil(height / lump))]
  return { width, height, likeness: Uint8Array.from({ length: width * height }, (_, at) => coarse[Math.floor(Math.floor(at / width) / lump) * across + Math.floor((at % width) / lump)] ?? 0) }
})
/** Small pictures scale sizes to less than a pixel; these are laid on one as long as the table's. */
const onLongPicture = ({ width, height, likeness }: RustFeatures): RustFeatures => {
  const long = new Uint8Array(1600 * height)
  for (let row = 0; row < height; row += 1) long.set(likeness.subarray(row * width, (row + 1) * width), row * 1600)
  return { width: 1600, height, likeness: long }
}
const sensitivity = fc.double({ min: 0, max: 1, noNaN: true })
const isWithin = (inner: Mask, outer: Mask): boolean => inner.data.every((value, at) => value <= (outer.data[at] ?? 0))

describe('the mask of rust', () => {
  it('loses no pixel when the sensitivity is raised', () => {
    fc.assert(fc.property(featuresArb, sensitivity, sensitivity, (features, one, other) => {
      const long = onLongPicture(features)
      expect(isWithin(rustMask(long, Math.min(one, other)), rustMask(long, Math.max(one, other)))).toBe(true)
    }), { numRuns: 150 })
  })
  it('has a tight reading within it and a loose one around it, at the ends of the slider too', () => {
    fc.assert(fc.property(featuresArb, fc.oneof(sensitivity, fc.constantFrom(0, 1)), (features, set) => {
      const { tight, asSet, loose } = foundMasks(onLongPicture(features), set)
      expect(isWithin(tight, asSet)).toBe(true)
      expect(isWithin(asSet, loose)).toBe(true)
    }), { numRuns: 60 })
  })
  it('is the same each time', () => {
    fc.assert(fc.property(featuresArb, sensitivity, (features, set) => { expect(rustMask(features, set)).toEqual(rustMask(features, set)) }), { numRuns: 20 })
  })

  const blocks = (...list: [number, number, number, number, number][]): RustFeatures => {
    const likeness = new Uint8Array(1600 * 100)
    for (const [left, top, width, height, value] of list) for (let row = top; row < top + height; row += 1) likeness.fill(value, row * 1600 + left, row * 1600 + left + width)
    return { width: 1600, height: 100, likeness }
  }
  it.each<[string, RustFeatures, number]>([
    ['sure rust is taken', blocks([10, 10, 20, 20, 250]), 400],
    ['likely rust beside sure rust is taken with it', blocks([10, 10, 20, 20, 250], [30, 10, 20, 20, 130]), 800],
    ['likely rust by itself is not', blocks([30, 10, 20, 20, 130]), 0],
    ['a speck is not', blocks([10, 10, 4, 4, 250]), 0],
    ['a glint in it is closed', blocks([10, 10, 30, 30, 250], [20, 20, 8, 8, 0]), 900],
    ['a sound place in it stays out', blocks([10, 10, 60, 60, 250], [20, 20, 20, 20, 0]), 3_200],
    ['a gap at the picture’s rim is closed like any other', blocks([0, 0, 30, 30, 250], [0, 10, 8, 8, 0]), 900],
  ])('%s', (_, features, pixels) => expect(pixelCount(rustMask(features, 0.5))).toBe(pixels))
})
