import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../../shared-logic/drawings/drawing'
import { limitBars } from '../../../shared-logic/drawings/limit-bars'
import { shareCurve } from '../../../shared-logic/drawings/share-curve'
import { sideSpanOf } from '../../../shared-logic/drawings/side/layout'
import { sideView } from '../../../shared-logic/drawings/side-view'
import { rigSchema, type Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf, type Sums } from '../../../shared-logic/sums/sums'
import { en } from '../../../shared-logic/words/en'
import { wholeRig, without } from '../sums/a-rig'

const sums = (rig: Rig): Sums => sumsOf(rig, 'us', defaultSumsSettings)
const draw = (rig: Rig, isSmall = false) => sideView(rig, sums(rig), en, 'metric', { isSmall })
const placeOf = (drawing: Drawing, id: string) => drawing.places.find((place) => place.id === id)
const textsOf = (drawing: Drawing): string[] => drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
const numbersOf = (drawing: Drawing): number[] => [
  ...drawing.viewBox, ...drawing.places.flatMap(({ x, y }) => [x, y]),
  ...drawing.shapes.flatMap((shape) => (shape.kind === 'path' ? (shape.d.match(/NaN|undefined|-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number) : [shape.x, shape.y])),
]

const maybe = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(values, { nil: undefined })
const between = (min: number, max: number): fc.Arbitrary<number | undefined> => maybe(fc.double({ min, max, noNaN: true }))
const anyRig: fc.Arbitrary<Rig> = fc
  .record({
    name: fc.constant('any'),
    trailer: fc.record({ massKg: between(50, 3000), maximumMassKg: between(100, 9000), ballToAxleM: between(0.5, 14), axleCount: maybe(fc.integer({ min: 1, max: 3 })), lengthM: between(2, 16) }),
    boat: maybe(fc.record({ lengthM: between(1, 16), dryMassKg: between(20, 9000), engineMassKg: between(10, 900), tanks: fc.array(fc.record({ contents: fc.constantFrom('petrol' as const, 'ballast' as const), capacityM3: fc.double({ min: 0.01, max: 4, noNaN: true }) }), { maxLength: 4 }) })),
    loading: maybe(fc.record({
      stemAftOfBallM: between(-2, 12), trailerCentreAftOfBallM: between(-2, 14), boatCentreAftOfStemM: between(-1, 16), engineAftOfStemM: between(-1, 17),
      tanks: fc.array(fc.record({ fill: between(0, 1), aftOfStemM: between(-1, 16) }), { maxLength: 4 }),
      gear: fc.array(fc.record({ name: fc.constant('Anchor'), massKg: fc.double({ min: 1, max: 500, noNaN: true }), aftOfBallM: between(-2, 20) }), { maxLength: 6 }),
    })),
    stance: maybe(fc.record({ ballHeightM: between(0.1, 1.5), wheelCentreHeightM: between(0.1, 0.8), axleSpacingM: between(0.4, 3) })),
  })
  .map((rig) => rigSchema.parse(rig))

describe('the side view', () => {
  it('stands to scale: distances from the ball are in proportion', () => {
    const drawing = draw(wholeRig())
    const [ball, axle, boat, tank, centre] = ['coupling', 'axle', 'boat', 'tank 1', 'centre'].map((id) => placeOf(drawing, id)?.x ?? Number.NaN)
    const perM = ((axle ?? 0) - (ball ?? 0)) / 5
    expect(perM).toBeGreaterThan(50)
    expect(((boat ?? 0) - (ball ?? 0)) / perM).toBeCloseTo(1.1, 6)
    expect(((tank ?? 0) - (ball ?? 0)) / perM).toBeCloseTo(1.1 + 4, 6)
    expect(((centre ?? 0) - (ball ?? 0)) / perM).toBeCloseTo(sums(wholeRig()).balance.lever?.centreM ?? 0, 6)
    expect(drawing.toScale).toBe(true)
  })

  it('moves the stem on the sheet as far as the boat moves on the trailer, the scale held', () => {
    const span = sideSpanOf(wholeRig())
    const before = draw(wholeRig())
    const moved = wholeRig()
    if (moved.loading) moved.loading.stemAftOfBallM = 1.35
    const after = sideView(moved, sums(moved), en, 'metric', { span })
    expect(after.viewBox).toEqual(before.viewBox)
    expect((placeOf(after, 'boat')?.x ?? 0) - (placeOf(before, 'boat')?.x ?? 0)).toBeCloseTo(before.xOf(1.35) - before.xOf(1.1), 6)
  })

  it('names coupling and axle loads with their figures, and says no figure while the boat’s place is not known', () => {
    const { lever } = sums(wholeRig()).balance
    expect(textsOf(draw(wholeRig()))).toContain(`Coupling ${Math.round(lever?.couplingKg ?? 0)} kg`)
    const unplaced = draw(without(wholeRig(), (rig) => { if (rig.loading) delete rig.loading.stemAftOfBallM }))
    expect(textsOf(unplaced).filter((text) => text.startsWith('Coupling'))).toEqual([])
    expect(textsOf(unplaced)).toContain(en.sums.drawing.sketch)
    expect(unplaced.toScale).toBe(false)
    expect(placeOf(unplaced, 'centre')).toBeUndefined()
  })

  it('never draws a stroke to nowhere, whatever is known of a rig', () => {
    fc.assert(fc.property(anyRig, fc.boolean(), (rig, isSmall) => {
      const own = sums(rig)
      const curve = shareCurve(own.balance, own.load.items, en, 'metric')
      const numbers = [draw(rig, isSmall), limitBars(own.load.lines, own.load.reserveWanted, en, 'us'), ...(curve ? [curve] : [])].flatMap(numbersOf)
      expect(numbers.every((value) => Number.isFinite(value))).toBe(true)
    }), { numRuns: 400 })
  })

  it('sets each load’s name clear of the others', () => {
    const crowded = wholeRig()
    if (crowded.loading) crowded.loading.gear = [4, 4.05, 4.1, 4.15].map((aftOfBallM, index) => ({ name: `Box ${index}`, massKg: 20, aftOfBallM }))
    const boxes = draw(crowded).shapes.flatMap((shape) => (shape.kind === 'text' && shape.text.startsWith('Box') ? [shape] : []))
    expect(boxes).toHaveLength(4)
    expect(new Set(boxes.map(({ y }) => y)).size).toBe(4)
  })
})

describe('the share over tank levels', () => {
  it('marks the lightest and the heaviest coupling of all tank levels', () => {
    const { balance, load } = sums(wholeRig())
    const texts = textsOf(shareCurve(balance, load.items, en, 'metric') ?? { viewBox: [0, 0, 0, 0], shapes: [], places: [], toScale: true })
    expect(texts.filter((text) => /^(lightest|heaviest) \d/.test(text))).toHaveLength(2)
    expect(texts).toContain(en.sums.drawing.target)
  })

  it('is not drawn while a tank’s place is not known', () => {
    const { balance, load } = sums(without(wholeRig(), (rig) => { if (rig.loading) delete rig.loading.tanks }))
    expect(shareCurve(balance, load.items, en, 'metric')).toBeUndefined()
  })
})

describe('the bars of the limits', () => {
  it('name every limit and say what is left under it, or that its rating is not known', () => {
    const { load } = sums(wholeRig())
    const texts = textsOf(limitBars(load.lines, load.reserveWanted, en, 'metric'))
    for (const { limit } of load.lines) expect(texts).toContain(en.sums.limits[limit.id])
    expect(texts.filter((text) => text === en.sums.drawing.unknown)).toHaveLength(load.lines.filter(({ limit }) => limit.ratingKg === undefined).length)
  })
})
