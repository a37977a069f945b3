import { describe, expect, it } from 'vitest'
import { withAxleAt, withGearMoved, withStemAt } from '../../../shared-logic/balance/moved-rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import type { Rig } from '../../../shared-logic/rig/rig'
import { wholeRig } from '../sums/a-rig'

const balance = (rig: Rig) => sumsOf(rig, 'us', defaultSumsSettings).balance
const move = (what: string) => balance(wholeRig()).goal?.moves.find((each) => each.what === what)

// Source: statics; what the solver foretells must be what the moved rig comes to.
describe('a move that the sums propose, carried out', () => {
  it('brings the boat to the target share', () => {
    expect(balance(withStemAt(wholeRig(), 1.1 - (move('boat')?.forwardM ?? 0))).lever?.share).toBeCloseTo(0.1, 9)
  })
  it('brings the axle to the target share, its own mass going along', () => {
    const proposed = move('axle')
    const after = balance(withAxleAt(wholeRig(), proposed?.axleM ?? 0)).lever
    expect(after?.share).toBeCloseTo(0.1, 9)
    expect(after?.couplingKg).toBeCloseTo(proposed?.after.couplingKg ?? 0, 6)
  })
  it('brings the gear to the target share', () => {
    const proposed = move('gear')
    expect(balance(withGearMoved(wholeRig(), proposed?.id ?? '', proposed?.forwardM ?? 0)).lever?.share).toBeCloseTo(0.1, 9)
  })
  it('takes the straps’ ends on the boat along and leaves those on the trailer', () => {
    const rig: Rig = { ...wholeRig(), tieDown: { straps: [{ position: 'bow tie', place: 'bow tie', route: 'direct', boat: { aftOfBallM: 1.3, toRightM: 0, heightM: 1 }, trailer: { aftOfBallM: 2, toRightM: 0, heightM: 0.5 } }] } }
    const [strap] = withStemAt(rig, 1.4).tieDown?.straps ?? []
    expect(strap?.boat?.aftOfBallM).toBeCloseTo(1.6, 9)
    expect(strap?.trailer?.aftOfBallM).toBe(2)
  })
})
