import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gatherPlaces } from '../../../shared-logic/drawings/gather-places'

const anyPlaces = fc.array(fc.record({ x: fc.integer({ min: -200, max: 200 }), y: fc.integer({ min: 0, max: 900 }) }), { maxLength: 24 }).map((list) => list.map((place, index) => ({ id: `lamp ${index}`, ...place })))

describe('places on a drawing, for a finger', () => {
  it('stand apart, none lost and none twice, within reach', () => {
    fc.assert(fc.property(anyPlaces, (places) => {
      const left = gatherPlaces(places, 84, 120)
      expect(left.flatMap((each) => each.of).toSorted()).toEqual(places.map((place) => place.id).toSorted())
      const gaps = left.flatMap((a, index) => left.slice(index + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y)))
      expect(gaps.every((gap) => gap >= 84)).toBe(true)
      expect(left.every((each) => Math.abs(each.x) <= 120)).toBe(true)
    }))
  })
  it('that are far apart stay as they are', () => {
    expect(gatherPlaces([{ id: 'a', x: -100, y: 0 }, { id: 'b', x: 100, y: 0 }], 84, 200).map((each) => each.id)).toEqual(['a', 'b'])
  })
})
