import { describe, expect, it } from 'vitest'
import { lashingPlanDrawing } from '../../../shared-logic/drawings/lashing-plan'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { Rig } from '../../../shared-logic/rig/rig'
import { en } from '../../../shared-logic/words/en'

const end = (aftOfBallM: number, toRightM: number, heightM: number) => ({ aftOfBallM, toRightM, heightM })
const rig: Rig = {
  name: 'invented', trailer: { lengthM: 7, widthM: 2.4, ballToAxleM: 4.6, axleCount: 2, supports: 'bunks' }, boat: { dryMassKg: 1200, lengthM: 5.8, beamM: 2.2 }, loading: { stemAftOfBallM: 1.4 },
  tieDown: { straps: [
    { position: 'bow tie', place: 'bow tie', route: 'direct', ratedN: 10_000, boat: end(1.6, 0, 1.1), trailer: end(2.5, 0, 0.55) },
    { position: 'left', place: 'transom', route: 'direct', ratedN: 10_000, boat: end(7.1, -0.9, 1), trailer: end(6.4, -0.7, 0.55) },
    { position: 'over', place: 'amidships', route: 'over the top', tensionN: 3_000, ratedN: 10_000, boat: end(5.6, 1.1, 1.35), trailer: end(5.6, 0.75, 0.55) },
  ] },
}
const drawingOf = (of: Rig) => lashingPlanDrawing(of, tieDownPlanOf(of, 'eu'), en, 'metric')
const textsOf = (of: Rig): string[] => drawingOf(of).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))

describe('the drawing of the straps', () => {
  it('can be tapped at each strap, and keeps every place inside the sheet', () => {
    const { places, viewBox } = drawingOf(rig)
    expect(places.map(({ id }) => id)).toEqual(['strap 1', 'strap 2', 'strap 3'])
    expect(places.every(({ x, y }) => x > 0 && y > 0 && x < viewBox[2] && y < viewBox[3])).toBe(true)
  })
  it('shows each strap’s number in both views, and its angles', () => {
    const texts = textsOf(rig)
    expect(texts.filter((text) => text === '2')).toHaveLength(2)
    expect(texts).toEqual(expect.arrayContaining(['31°', '0°', '32°', '16°']))
  })
  it('says below what each strap must bear and what it counts as', () => {
    expect(textsOf(rig).filter((text) => /^\d (bow tie|left|over): needs .+ N, counts as .+ N$/.test(text))).toHaveLength(3)
  })
  it('shows the share held to each side and along the road', () => expect(textsOf(rig).filter((text) => text.endsWith('%'))).toHaveLength(4))
  it('has left below and right above, ball to the left', () => {
    const [left, right] = drawingOf({ ...rig, tieDown: { straps: [-0.9, 0.9].map((toRightM) => ({ position: 's', place: 'transom' as const, route: 'direct' as const, boat: end(7, toRightM, 1), trailer: end(6, toRightM, 0.5) })) } }).places
    expect((left?.y ?? 0) > (right?.y ?? 0)).toBe(true)
  })
  it('is to scale with all lengths known, and else says it is a sketch', () => {
    expect(drawingOf(rig).toScale).toBe(true)
    const unknown = { ...rig, trailer: {} }
    expect(drawingOf(unknown).toScale).toBe(false)
    expect(textsOf(unknown)).toContain(en.tieDownPlan.drawing.sketch)
  })
  it('says so where no strap has both ends recorded', () => expect(textsOf({ ...rig, tieDown: { straps: [] } })).toContain(en.tieDownPlan.drawing.none))
})
