import * as fc from 'fast-check'
import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { equalisedSplit, independentSplit } from '../../../shared-logic/balance/axle-split'
import { leverOf, momentOf, totalOf, type Mass } from '../../../shared-logic/balance/lever'
import { couplingGainedBrakingKg, onSideSlope, tipsAtRad } from '../../../shared-logic/balance/load-transfer'
import { axleForShareM, moveForShareM, withMoved } from '../../../shared-logic/balance/reach-target'
import { centreHeightByRaisingM } from '../../../shared-logic/balance/weighing'
import { evenly } from '../evenly'

const near = (a: number, b: number, scale: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(scale))
const masses: fc.Arbitrary<Mass[]> = fc
  .array(fc.record({ massKg: evenly(1, 4000), atM: evenly(-0.5, 9) }), { minLength: 1, maxLength: 8 })
  .map((list) => list.map((mass, index) => ({ id: `mass ${index}`, ...mass })))
const axle = evenly(1.5, 8)

describe('the lever', () => {
  it('balances: coupling and axle carry everything, and their moments are the masses’ moments', () => {
    fc.assert(fc.property(masses, axle, (list, axleM) => {
      const lever = leverOf(list, axleM)
      if (!lever) return false
      return near(lever.couplingKg + lever.axleKg, lever.totalKg, lever.totalKg) && near(lever.axleKg * axleM, momentOf(list), momentOf(list))
    }))
  })

  it('agrees with a matrix solve of the two equilibrium equations, on 1,000 random rigs', () => {
    fc.assert(fc.property(masses, axle, (list, axleM) => {
      const lever = leverOf(list, axleM)
      const solved: unknown = lusolve([[1, 1], [0, axleM]], [totalOf(list), momentOf(list)])
      const [coupling, axleLoad] = Array.isArray(solved) ? solved.flat().map(Number) : []
      return lever !== undefined && near(lever.couplingKg, coupling ?? Number.NaN, lever.totalKg) && near(lever.axleKg, axleLoad ?? Number.NaN, lever.totalKg)
    }), { numRuns: 1000 })
  })

  it('never lowers the coupling load when a mass moves forward', () => {
    fc.assert(fc.property(masses, axle, evenly(0, 3), (list, axleM, forwardM) => {
      const before = leverOf(list, axleM)
      const after = leverOf(withMoved(list, new Set(['mass 0']), forwardM), axleM)
      return before !== undefined && after !== undefined && after.couplingKg >= before.couplingKg - 1e-9 * before.totalKg
    }))
  })

  it('reaches the target share by the move it names', () => {
    fc.assert(fc.property(masses, axle, evenly(0.04, 0.2), (list, axleM, share) => {
      const moved = new Set(['mass 0'])
      const forwardM = moveForShareM(list, axleM, moved, share)
      if (forwardM === undefined) return false
      const lever = leverOf(withMoved(list, moved, forwardM), axleM)
      return lever !== undefined && Math.abs(lever.share - share) < 1e-9 * Math.max(1, Math.abs(forwardM))
    }))
  })

  it('reaches the target share by the axle place it names', () => {
    fc.assert(fc.property(masses, evenly(0.04, 0.2), evenly(0, 300), (list, share, groupKg) => {
      const axleM = axleForShareM(list, share, groupKg)
      if (axleM === undefined || momentOf(list) < 1) return momentOf(list) < 1 || totalOf(list) * (1 - share) <= groupKg * share
      const lever = leverOf([...list, { id: 'axle group', massKg: groupKg, atM: axleM }], axleM)
      return lever !== undefined && Math.abs(lever.share - share) < 1e-9
    }))
  })
})

describe('an axle group', () => {
  const spread = fc.tuple(axle, evenly(0.7, 1.1)).map(([first, pitch]) => [first, first + pitch])

  it('of independent arms, level, splits as an equalised one', () => {
    fc.assert(fc.property(masses, spread, evenly(5_000, 60_000), (list, axlesM, rate) => {
      const level = independentSplit(list, axlesM, 0, rate)
      const equal = equalisedSplit(list, axlesM)
      return level !== undefined && equal !== undefined && near(level.couplingKg, equal.couplingKg, totalOf(list) * 10) && level.axlesKg.every((load, index) => near(load, equal.axlesKg[index] ?? 0, totalOf(list) * 10))
    }))
  })

  it('stays in balance at any coupler height, solved against the three equations of springs and statics', () => {
    fc.assert(fc.property(masses, spread, evenly(-0.1, 0.1), evenly(5_000, 60_000), (list, axlesM, raisedM, rate) => {
      const split = independentSplit(list, axlesM, raisedM, rate)
      const [a = 0, b = 0] = axlesM
      // Unknowns: coupling load, both axle loads, turn. Rows: forces, moments, and each spring's law with the settled height eliminated.
      const settled = momentOf(list) / (rate * (a + b))
      const solved: unknown = lusolve(
        [[1, 1, 1, 0], [0, a, b, 0], [0, 1, 0, rate * a], [0, 0, 1, rate * b]],
        [totalOf(list), momentOf(list), rate * (settled - raisedM), rate * (settled - raisedM)],
      )
      const flat = Array.isArray(solved) ? solved.flat().map(Number) : []
      const scale = Math.max(totalOf(list), rate) * 1e3
      return split !== undefined && near(split.couplingKg, flat[0] ?? Number.NaN, scale) && near(split.axlesKg[0] ?? 0, flat[1] ?? Number.NaN, scale) && near(split.axlesKg[1] ?? 0, flat[2] ?? Number.NaN, scale)
    }), { numRuns: 1000 })
  })

  it('of independent arms loads the rear axle when towed nose-high', () => {
    fc.assert(fc.property(spread, evenly(0.01, 0.1), (axlesM, raisedM) => {
      const split = independentSplit([{ id: 'all', massKg: 2000, atM: (axlesM[0] ?? 0) * 0.95 }], axlesM, raisedM, 30_000)
      return split !== undefined && (split.axlesKg[1] ?? 0) > (split.axlesKg[0] ?? 0)
    }))
  })
})

describe('height of the centre of mass', () => {
  it('comes back from the two weighings it would cause', () => {
    fc.assert(fc.property(
      evenly(0.4, 2.2), evenly(0.05, 0.25), evenly(0.03, 0.3),
      (heightM, share, raisedRad) => {
        const [totalKg, axleM, axleHeightM, couplingHeightM] = [1800, 5, 0.33, 0.45]
        const aheadM = share * axleM
        // Turned by hand: both points rotate about the wheel centre.
        const centreX = aheadM * Math.cos(raisedRad) - (heightM - axleHeightM) * Math.sin(raisedRad)
        const couplingX = axleM * Math.cos(raisedRad) - (couplingHeightM - axleHeightM) * Math.sin(raisedRad)
        const found = centreHeightByRaisingM({ totalKg, couplingLevelKg: totalKg * share, couplingRaisedKg: (totalKg * centreX) / couplingX, axleM, raisedRad, axleHeightM, couplingHeightM })
        return found !== undefined && Math.abs(found - heightM) < 1e-9
      },
    ))
  })

  it('lifts the upper wheel at the slope where the lower carries all', () => {
    const slope = tipsAtRad(1.1, 1.9)
    const wheels = onSideSlope(1600, 1.1, 1.9, slope)
    expect(wheels.upperKg).toBeCloseTo(0, 9)
    expect(wheels.lowerKg).toBeCloseTo(1600 * Math.cos(slope), 9)
  })

  it('shares an axle’s load between its wheels on a side slope as the two equations of equilibrium do', () => {
    fc.assert(fc.property(evenly(200, 3000), evenly(0.3, 2), evenly(1.2, 2.2), evenly(0, 0.4), (axleKg, heightM, trackM, slopeRad) => {
      // Forces square to the slope; moments about the middle of the track on the ground, the wheels half a track to either side.
      const solved: unknown = lusolve([[1, 1], [-trackM / 2, trackM / 2]], [axleKg * Math.cos(slopeRad), axleKg * Math.sin(slopeRad) * heightM])
      const [upper = Number.NaN, lower = Number.NaN] = Array.isArray(solved) ? solved.flat().map(Number) : []
      const wheels = onSideSlope(axleKg, heightM, trackM, slopeRad)
      return near(wheels.upperKg, upper, axleKg * 3) && near(wheels.lowerKg, lower, axleKg * 3)
    }), { numRuns: 1000 })
  })

  it('gains the coupling load while braking that the equations of motion ask for', () => {
    fc.assert(fc.property(fc.record({ totalKg: evenly(300, 4000), aheadM: evenly(0.1, 1), heightM: evenly(0.4, 2), ballM: evenly(0.3, 0.6), axleM: evenly(2, 8), deceleration: evenly(0, 0.8), braked: evenly(0, 1) }), ({ totalKg, aheadM, heightM, ballM, axleM, deceleration, braked }) => {
      // Unknown: coupling load, axle load, push of the ball against the trailer. Rows: upright, lengthways (less what the trailer's brakes do), moments about the mass itself.
      const brakeKg = braked * totalKg * deceleration
      const solved: unknown = lusolve(
        [[1, 1, 0], [0, 0, 1], [axleM - aheadM, -aheadM, ballM - heightM]],
        [totalKg, totalKg * deceleration - brakeKg, heightM * brakeKg],
      )
      const coupling = Array.isArray(solved) ? Number(solved.flat()[0]) : Number.NaN
      const standing = (totalKg * aheadM) / axleM
      return near(couplingGainedBrakingKg(totalKg, heightM, ballM, axleM, deceleration, braked), coupling - standing, totalKg * 3)
    }), { numRuns: 1000 })
  })

  it('adds coupling load when braking, more with the trailer’s own brakes doing the work', () => {
    fc.assert(fc.property(evenly(0.1, 0.8), (deceleration) => couplingGainedBrakingKg(2000, 1, 0.45, 5, deceleration, 1) > couplingGainedBrakingKg(2000, 1, 0.45, 5, deceleration, 0)))
  })
})
