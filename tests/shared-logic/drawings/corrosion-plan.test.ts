import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { positionsOf } from '../../../shared-logic/checks/positions'
import { corrosionPlan, type SpotMark } from '../../../shared-logic/drawings/corrosion/corrosion-plan'
import { rigView, spotViews } from '../../../shared-logic/drawings/corrosion/rig-view'
import { spreadAlong } from '../../../shared-logic/drawings/corrosion/spread-along'
import { numberInVerdict } from '../../../shared-logic/drawings/corrosion/verdict-shape'
import type { Drawing } from '../../../shared-logic/drawings/drawing'
import type { Rig } from '../../../shared-logic/rig/rig'
import { verdicts } from '../../../shared-logic/survey/verdict'
import { en } from '../../../shared-logic/words/en'

const rig: Rig = {
  name: 'any', trailer: { axleCount: 2, lengthM: 7, widthM: 2.4, ballToAxleM: 4.6, supports: 'bunks' }, boat: { lengthM: 6.2, beamM: 2.3 }, loading: { stemAftOfBallM: 1.2 },
}
const text = { words: en, units: 'metric' } as const
const places = positionsOf('corroding part', rig, 'us')

const anyMarks: fc.Arbitrary<SpotMark[]> = fc
  .array(
    fc.record({
      position: fc.constantFrom(...places), areaM2: fc.option(fc.double({ min: 1e-6, max: 1, noNaN: true }), { nil: undefined }), verdict: fc.constantFrom(...verdicts),
      at: fc.option(fc.oneof(
        fc.record({ view: fc.constant('plan' as const), aftOfBallM: fc.double({ min: 0, max: 7, noNaN: true }), toRightM: fc.double({ min: -1.2, max: 1.2, noNaN: true }) }),
        fc.record({ view: fc.constant('side' as const), aftOfBallM: fc.double({ min: 0, max: 7, noNaN: true }), heightM: fc.double({ min: 0.2, max: 1.5, noNaN: true }) }),
      ), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((marks) => marks.map(({ at, ...mark }, index) => ({ ...mark, number: index + 1, ...(at && { at }) })))

const inside = ({ viewBox: [x, y, width, height] }: Drawing, point: { x: number; y: number }): boolean => point.x >= x && point.x <= x + width && point.y >= y && point.y <= y + height

const circlesOf = (drawing: Drawing, role: string): number[] => drawing.shapes.flatMap((shape) => (shape.kind === 'circle' && shape.stroke === role && shape.weight === 3 && shape.fill === undefined ? [shape.r] : []))

describe('numbers along an edge', () => {
  it('stand apart, between the ends, in the order of what they mark', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -100, max: 1100, noNaN: true }), { minLength: 1, maxLength: 60 }), (wanted) => {
        const spread = spreadAlong(wanted, 0, 1000, 50)
        for (const [index, { at, lane }] of spread.entries()) {
          expect(at).toBeGreaterThanOrEqual(-1e-6)
          expect(at).toBeLessThanOrEqual(1000 + 1e-6)
          for (const other of spread.slice(index + 1).filter((each) => each.lane === lane)) expect(Math.abs(other.at - at)).toBeGreaterThanOrEqual(50 - 1e-6)
        }
      }),
    )
  })

  it('stay where they are wanted while there is room', () => {
    expect(spreadAlong([300, 100, 700], 0, 1000, 50).map(({ at }) => at)).toEqual([300, 100, 700])
  })
})

describe('the drawing of corroded spots', () => {
  it('has every spot’s number on the sheet and apart from every other, from above and from the side', () => {
    fc.assert(
      fc.property(anyMarks, fc.constantFrom(...spotViews), fc.boolean(), (marks, view, isSmall) => {
        const drawing = corrosionPlan(rig, 'us', marks, view, { ...text, isSmall })
        expect(drawing.places.map(({ id }) => id).toSorted()).toEqual(marks.map(({ number }) => `spot ${number}`).toSorted())
        for (const [index, place] of drawing.places.entries()) {
          expect(inside(drawing, place)).toBe(true)
          for (const other of drawing.places.slice(index + 1)) expect(Math.hypot(place.x - other.x, place.y - other.y)).toBeGreaterThan(40)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('draws four times the area as twice the radius', () => {
    const marks: SpotMark[] = [{ number: 1, position: 'left rail', areaM2: 0.01, verdict: 'advisory' }, { number: 2, position: 'right rail', areaM2: 0.0025, verdict: 'advisory' }]
    const radii = circlesOf(corrosionPlan(rig, 'us', marks, 'plan', text), 'advisory')
    expect(radii[0]).toBeCloseTo(26, 1)
    expect(radii[1]).toBeCloseTo(13, 1)
  })

  it('gives the scale of areas in the reader’s unit', () => {
    const marks: SpotMark[] = [{ number: 1, position: 'left rail', areaM2: 0.0045, verdict: 'pass' }]
    const textsIn = (units: 'metric' | 'us'): string[] => corrosionPlan(rig, 'us', marks, 'plan', { ...text, units }).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    expect(textsIn('metric')).toEqual(expect.arrayContaining(['50 cm²', '10 cm²', '2 cm²', 'Pass']))
    expect(textsIn('us').some((each) => each.startsWith('10 sq in') || each.startsWith('10 in²'))).toBe(true)
  })

  it('draws a spot that was not measured dashed, and says so', () => {
    const drawing = corrosionPlan(rig, 'us', [{ number: 1, position: 'tongue', verdict: 'advisory' }], 'plan', text)
    expect(drawing.shapes.some((shape) => shape.kind === 'circle' && shape.stroke === 'advisory' && shape.dashed === true)).toBe(true)
    expect(drawing.shapes.some((shape) => shape.kind === 'text' && shape.text === en.screens.corrosion.drawing.unmeasured)).toBe(true)
  })

  it('puts a spot where it was placed, at the scale of the rig', () => {
    const { spotAt } = rigView(rig, 'us', 'plan')
    const ahead = spotAt({ position: 'left rail', at: { view: 'plan', aftOfBallM: 2, toRightM: -0.8 } })
    const aft = spotAt({ position: 'left rail', at: { view: 'plan', aftOfBallM: 5, toRightM: 0.8 } })
    expect((aft.y - ahead.y) / (aft.x - ahead.x)).toBeCloseTo(3 / 1.6, 6)
  })

  it('shows a spot placed from above as far aft from the side, at its part’s height', () => {
    const { spotAt } = rigView(rig, 'us', 'side')
    const placed = spotAt({ position: 'axle 1', at: { view: 'plan', aftOfBallM: 4.2, toRightM: 0.3 } })
    const beside = spotAt({ position: 'axle 1', at: { view: 'side', aftOfBallM: 4.2, heightM: 0.33 } })
    expect(placed.x).toBeCloseTo(beside.x, 6)
    expect(placed.y).toBeCloseTo(beside.y, 6)
  })

  it('tells a fail from an advisory and a pass by shape, not by colour alone', () => {
    const distinctXs = (verdict: SpotMark['verdict']): number | string => {
      const [shape] = numberInVerdict(1, verdict, 0, 0, 20)
      if (shape?.kind !== 'path') return shape?.kind ?? 'none'
      return new Set([...shape.d.matchAll(/[ML](\S+) /g)].map(([, x]) => x)).size
    }
    expect([distinctXs('pass'), distinctXs('advisory'), distinctXs('fail')]).toEqual(['circle', 3, 2])
  })
})
