import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trailsOf, type Trail } from '../../../shared-logic/corrosion/trails'
import { dateTicks } from '../../../shared-logic/drawings/corrosion/date-axis'
import { curveKinds, trailCurve } from '../../../shared-logic/drawings/corrosion/trail-curve'
import type { Drawing, Shape } from '../../../shared-logic/drawings/drawing'
import type { Spot } from '../../../shared-logic/survey/spot'
import { en } from '../../../shared-logic/words/en'
import { sayDate } from '../../../shared-logic/words/say'

const text = { words: en, units: 'metric' } as const
const base: Spot = { id: 'a', trail: 'a', place: 'left rail, by the axle', material: 'painted steel', kind: 'red rust', faceAreaM2: 0.35 }

const trailOver = (...looks: readonly (readonly [date: string, spot: Partial<Spot>])[]): Trail => {
  const [trail] = trailsOf(looks.map(([date, spot]) => ({ date, places: [{ position: 'left rail', spots: [{ ...base, ...spot }] }] })), { trailer: { exposure: 'coast' } })
  if (trail === undefined) throw new Error('no trail')
  return trail
}

const drawn = (trail: Trail, kind: (typeof curveKinds)[number], isSmall = false): Drawing => {
  const drawing = trailCurve(trail, kind, { ...text, isSmall })
  if (drawing === undefined) throw new Error(`no curve of ${kind}`)
  return drawing
}

const textsOf = ({ shapes }: Drawing): string[] => shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
const textNamed = (drawing: Drawing, name: string): Extract<Shape, { kind: 'text' }> => {
  const found = drawing.shapes.find((shape) => shape.kind === 'text' && shape.text === name)
  if (found?.kind !== 'text') throw new Error(`${name} is not written`)
  return found
}
const dotsOf = ({ shapes }: Drawing): { x: number; y: number }[] => shapes.flatMap((shape) => (shape.kind === 'circle' && shape.fill === 'ink' ? [{ x: shape.x, y: shape.y }] : []))
const figuresOf = (drawing: Drawing): number[] => drawing.shapes.flatMap((shape) => (shape.kind === 'path' ? (shape.d.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number) : [shape.x, shape.y]))

const growing = trailOver(['2023-05-10', { areaM2: 0.004, areaUncertaintyM2: 0.0003 }], ['2026-05-20', { areaM2: 0.018, areaUncertaintyM2: 0.0012 }])

describe('marks on an axis of dates', () => {
  it('fall on firsts of months, within the span, few enough to be read', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 120, max: 20_000 }), fc.integer({ min: 2, max: 6 }), (start, days, most) => {
        const day = (count: number): string => new Date(Date.UTC(1990, 0, 1) + count * 86_400_000).toISOString().slice(0, 10)
        const ticks = dateTicks(day(start), day(start + days), most)
        expect(ticks.length).toBeLessThanOrEqual(most)
        expect(ticks.every(({ date }) => date.endsWith('-01') && date >= day(start) && date <= day(start + days))).toBe(true)
      }),
    )
  })
})

describe('the curve of a spot', () => {
  it('puts later to the right and more rust higher', () => {
    const [before, after] = dotsOf(drawn(growing, 'area'))
    expect(after?.x).toBeGreaterThan(before?.x ?? Infinity)
    expect(after?.y).toBeLessThan(before?.y ?? -Infinity)
  })

  it('marks where the next grade of ISO 4628-3 begins: 8 % of a face of 0.35 m² is 280 cm², Ri 5 above it', () => {
    const drawing = drawn(growing, 'area')
    const perCm2 = (textNamed(drawing, '0 cm²').y - textNamed(drawing, '200 cm²').y) / 200
    expect((textNamed(drawing, '0 cm²').y - 14 * 0.35 - textNamed(drawing, 'Ri 5').y) / perCm2).toBeCloseTo(280, -1)
  })

  it('says the days between which the next grade is reached, as the forecast does', () => {
    const { forecast } = growing
    if (forecast.kind !== 'date' || forecast.latestDate === undefined) throw new Error('a closed forecast was expected')
    expect(textsOf(drawn(growing, 'area'))).toContain(`${sayDate(forecast.earliestDate)} – ${sayDate(forecast.latestDate)}`)
  })

  it('draws no forecast where the growth lies within the uncertainty', () => {
    const still = trailOver(['2023-05-10', { areaM2: 0.004, areaUncertaintyM2: 0.001 }], ['2026-05-20', { areaM2: 0.0042, areaUncertaintyM2: 0.001 }])
    expect(textsOf(drawn(still, 'area'))).not.toContain(en.screens.corrosion.drawing.forecast)
  })

  it('dashes a bar that was assumed and no other', () => {
    const bars = (trail: Trail): boolean[] => drawn(trail, 'area').shapes.flatMap((shape) => (shape.kind === 'path' && shape.stroke === 'ink' && shape.weight === 1.4 ? [shape.dashed === true] : []))
    expect(bars(trailOver(['2026-05-20', { areaM2: 0.004, areaUncertaintyM2: 0.001 }])).some(Boolean)).toBe(false)
    expect(bars(trailOver(['2026-05-20', { areaM2: 0.004 }])).some(Boolean)).toBe(true)
  })

  it('ends the curve at a repair and begins another after it', () => {
    const mended = trailOver(['2022-05-10', { areaM2: 0.004 }], ['2023-05-10', { areaM2: 0.006 }], ['2024-05-10', { state: 'repaired' }], ['2025-05-10', { areaM2: 0.001 }], ['2026-05-10', { areaM2: 0.002 }])
    const drawing = drawn(mended, 'area')
    expect(textsOf(drawing)).toContain('repaired')
    expect(drawing.shapes.filter((shape) => shape.kind === 'path' && shape.weight === 2.2)).toHaveLength(2)
  })

  it('sets the wall left against the losses that count, for a member that bears load', () => {
    const thinned = trailOver(['2023-05-10', { wallM: 0.004, remainingM: 0.0038 }], ['2026-05-20', { wallM: 0.004, remainingM: 0.0033, pitDepthM: 0.001 }])
    expect(textsOf(drawn(thinned, 'depth'))).toEqual(expect.arrayContaining(['as made', '10 % lost', '25 % lost', '30 % lost', 'wall left', 'under the pit']))
  })

  it('sets zinc against its reserve of 20 µm', () => {
    const zinc = trailOver(['2023-05-10', { material: 'galvanized steel', coatingReadingsM: [80e-6, 70e-6] }], ['2026-05-20', { material: 'galvanized steel', coatingReadingsM: [60e-6, 40e-6] }])
    const drawing = drawn(zinc, 'coating')
    expect(dotsOf(drawing)).toHaveLength(2)
    expect(textsOf(drawing)).toContain('reserve')
  })

  it('writes its figures alike, and no fraction among decimals', () => {
    const wall = trailOver(['2023-05-10', { wallM: 0.0048, remainingM: 0.0042 }], ['2026-05-20', { wallM: 0.0048, remainingM: 0.004 }])
    const figures = textsOf(trailCurve(wall, 'depth', { ...text, units: 'us' }) ?? drawn(wall, 'depth')).filter((each) => each.endsWith(' in'))
    expect(figures.length).toBeGreaterThan(2)
    expect(new Set(figures.map((each) => /^\d\.(\d+) in$/.exec(each)?.[1]?.length))).toHaveLength(1)
  })

  it('writes no more dates than can be read side by side', () => {
    for (const days of [70, 120, 200, 300, 500, 900]) {
      const later = new Date(Date.UTC(2026, 4, 16) + days * 86_400_000).toISOString().slice(0, 10)
      const dates = drawn(trailOver(['2026-05-16', { areaM2: 0.004 }], [later, { areaM2: 0.0041 }]), 'area', true).shapes
        .flatMap((shape) => (shape.kind === 'text' && /^(?:[A-Z][a-z]{2} )?20\d\d$/.test(shape.text) ? [shape] : [])).toSorted((a, b) => a.x - b.x)
      expect(dates.length).toBeGreaterThan(0)
      // Half a figure's size is about the width of a letter.
      dates.slice(1).forEach((date, index) => expect(date.x - (dates[index]?.x ?? 0)).toBeGreaterThan(((date.text.length + (dates[index]?.text.length ?? 0)) / 2) * date.size * 0.5))
    }
  })

  it('is absent where nothing of the kind was measured', () => {
    const bare = trailOver(['2026-05-20', {}])
    expect(curveKinds.map((kind) => trailCurve(bare, kind, text))).toEqual([undefined, undefined, undefined])
  })

  it('fits its sheet and draws no stroke to nowhere, however spots were measured', () => {
    const measure = fc.record({
      areaM2: fc.option(fc.double({ min: 1e-6, max: 0.35, noNaN: true }), { nil: undefined }), wallM: fc.option(fc.double({ min: 0.002, max: 0.01, noNaN: true }), { nil: undefined }),
      pitDepthM: fc.option(fc.double({ min: 0, max: 0.002, noNaN: true }), { nil: undefined }), coatingReadingsM: fc.option(fc.array(fc.double({ min: 0, max: 300e-6, noNaN: true }), { minLength: 1, maxLength: 5 }), { nil: undefined }),
      faceAreaM2: fc.option(fc.constant(0.35), { nil: undefined }), material: fc.constantFrom<Spot['material']>('painted steel', 'galvanized steel', 'aluminium'),
    }).map((spot): Partial<Spot> => Object.fromEntries(Object.entries(spot).filter(([, value]) => value !== undefined)))
    fc.assert(
      fc.property(fc.array(measure, { minLength: 1, maxLength: 5 }), fc.constantFrom(...curveKinds), fc.boolean(), (looks, kind, isSmall) => {
        const drawing = trailCurve(trailOver(...looks.map((spot, index) => [`${2020 + index}-04-01`, spot] as const)), kind, { ...text, isSmall })
        const [, , width] = drawing?.viewBox ?? [0, 0, 320]
        expect(width).toBe(drawing === undefined || isSmall ? 320 : 620)
        expect(figuresOf(drawing ?? { viewBox: [0, 0, 1, 1], shapes: [], places: [], toScale: true }).every(Number.isFinite)).toBe(true)
      }),
    )
  })
})
