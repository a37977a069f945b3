import { describe, expect, it } from 'vitest'
import { halfInchStud, isWithinTorque, recheckIsDue } from '../../shared-logic/rules/wheel-torque'
import { judged } from '../shared-logic/checks/judged'

const footPoundNm = 1.3558179483

describe('wheel nuts', () => {
  it('one loose fails; two loose is a danger, not to be towed (UK inspection manual 5.2.1; major and dangerous)', () => {
    expect(judged('wheels.nuts', { missing: 0, loose: 1 })).toMatchObject({ verdict: 'fail', by: 'before it is towed' })
    expect(judged('wheels.nuts', { missing: 0, loose: 2 })).toMatchObject({ verdict: 'fail', by: 'before it is towed' })
  })
  it('105 ft·lb is 142.4 N·m, inside the 90 to 120 ft·lb of a 1/2 in stud (published wheel nut tables)', () => {
    expect(105 * footPoundNm).toBeCloseTo(142.4, 1)
    expect(isWithinTorque(halfInchStud, 105 * footPoundNm)).toBe(true)
    expect([89, 90, 120, 121].map((footPounds) => isWithinTorque(halfInchStud, footPounds * footPoundNm))).toEqual([false, true, true, false])
  })
  it('90 to 120 ft·lb is 122 to 163 N·m', () => expect([Math.round(halfInchStud.fromNm), Math.round(halfInchStud.toNm)]).toEqual([122, 163]))
  it('refitted at 10,000 km, now 10,020 km, not torqued again: due, the first check was at 16 km (published wheel nut tables)', () => {
    expect(recheckIsDue(20_000, 0)).toBe(true)
    expect(judged('wheels.retorque', { refitted: 'lately', distance: 20_000, rechecks: 0 }).verdict).toBe('advisory')
  })
  it.each([[15_999, 0, false], [16_000, 0, true], [39_999, 1, false], [40_000, 1, true], [80_000, 2, true], [80_000, 3, false]])(
    'after %i m and %i rechecks: due %s', (distance, rechecks, due) => expect(recheckIsDue(distance, rechecks)).toBe(due),
  )
})

describe('tyres under the axle', () => {
  it('an axle of 1350 kg on two tyres of index 98 passes (published load index tables)', () => {
    expect(judged('wheels.load', { marking: 'as the record' }, { trailer: { tyre: { loadIndex: 98 }, axleRatingKg: 1350 } }).verdict).toBe('pass')
  })
  it('an axle of 1500 kg on two tyres of index 96 fails (published load index tables)', () => {
    expect(judged('wheels.load', { marking: 'as the record' }, { trailer: { tyre: { loadIndex: 96 }, axleRatingKg: 1500 } }).verdict).toBe('fail')
  })
})
