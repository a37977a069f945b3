import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { positionsOf } from '../../../shared-logic/checks/positions'
import { instrumentDrawings } from '../../../shared-logic/checks/check'
import { dragRanges, instrumentDrawing } from '../../../shared-logic/drawings/instruments'
import { planView } from '../../../shared-logic/drawings/plan-view'
import type { Drawing } from '../../../shared-logic/drawings/drawing'
import type { Rig } from '../../../shared-logic/rig/rig'
import { hullSupports, trailerBrakes } from '../../../shared-logic/rig/trailer'
import { ruleBooks } from '../../../shared-logic/rules/rule-book'
import { stations } from '../../../shared-logic/survey/station'

const maybe = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(values, { nil: undefined })
const anyRig: fc.Arbitrary<Rig> = fc.record({
  name: fc.constant('any'),
  trailer: fc.record({
    axleCount: maybe(fc.integer({ min: 1, max: 3 })),
    lengthM: maybe(fc.double({ min: 2, max: 14, noNaN: true })),
    widthM: maybe(fc.double({ min: 1, max: 3, noNaN: true })),
    ballToAxleM: maybe(fc.double({ min: 1, max: 10, noNaN: true })),
    supports: maybe(fc.constantFrom(...hullSupports)),
    brakes: maybe(fc.constantFrom(...trailerBrakes)),
    spareWheel: maybe(fc.boolean()),
  }),
  boat: maybe(fc.record({ lengthM: maybe(fc.double({ min: 2, max: 12, noNaN: true })) })),
})

const numbersOf = (drawing: Drawing): number[] => [
  ...drawing.viewBox,
  ...drawing.places.flatMap((place) => [place.x, place.y]),
  ...drawing.shapes.flatMap((shape) => (shape.kind === 'path' ? (shape.d.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number) : [shape.x, shape.y])),
]

describe('the plan view', () => {
  it('has a place for every position that any check asks about, on any rig under either rule book', () => {
    const families = [...new Set(catalogue.map((check) => check.positions))]
    fc.assert(
      fc.property(anyRig, fc.constantFrom(...ruleBooks), (rig, ruleBook) => {
        const places = new Set(planView(rig, ruleBook).places.map((place) => place.id))
        const missing = families.flatMap((family) => positionsOf(family, rig, ruleBook)).filter((position) => !places.has(position))
        expect(missing).toEqual([])
      }),
    )
  })

  it('has a stop for every station, each a finger apart from the next, all inside the sheet', () => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom(...ruleBooks), (rig, ruleBook) => {
        const drawing = planView(rig, ruleBook)
        const stops = stations.map((station) => drawing.places.find((place) => place.id === `station ${station}`))
        const [x, y, width, height] = drawing.viewBox
        const apart = stops.flatMap((a, index) => stops.slice(index + 1).map((b) => Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))))
        expect(Math.min(...apart)).toBeGreaterThan(76)
        expect(stops.every((stop) => stop !== undefined && stop.x > x && stop.x < x + width && stop.y > y && stop.y < y + height)).toBe(true)
      }),
    )
  })

  it('never draws a stroke to nowhere', () => {
    fc.assert(fc.property(anyRig, fc.constantFrom(...ruleBooks), (rig, ruleBook) => numbersOf(planView(rig, ruleBook)).every(Number.isFinite)))
  })

  it('says it is a sketch while a length is not known', () => {
    expect(planView({ name: 'a', trailer: { lengthM: 6, widthM: 2.2 } }, 'us').toScale).toBe(false)
    expect(planView({ name: 'a', trailer: { lengthM: 6, widthM: 2.2, ballToAxleM: 4 } }, 'us').toScale).toBe(true)
  })

  it('puts the axle where it is: twice as far from the ball, twice as far on the sheet', () => {
    const axleAt = (ballToAxleM: number): number => planView({ name: 'a', trailer: { lengthM: 8, widthM: 2.2, ballToAxleM, axleCount: 1 } }, 'us').places.find((place) => place.id === 'axle 1')?.y ?? Number.NaN
    expect(axleAt(5) / axleAt(2.5)).toBeCloseTo(2, 6)
  })
})

describe('a drawn instrument', () => {
  it.each(instrumentDrawings)('%s stays on its sheet, read or not', (name) => {
    const range = dragRanges[name]
    for (const value of [undefined, range?.min, range?.max]) expect(numbersOf(instrumentDrawing(name, value)).every(Number.isFinite)).toBe(true)
  })

  it('shows twice the actuator travel twice as far along its rule', () => {
    const tip = (m: number): number => Number(/L([\d.]+) 106/.exec(instrumentDrawing('actuator travel', m).shapes.map((shape) => (shape.kind === 'path' ? shape.d : '')).join(' '))?.[1])
    expect((tip(0.04) - 60) / (tip(0.02) - 60)).toBeCloseTo(2, 3)
  })
})
