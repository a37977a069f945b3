import * as fc from 'fast-check'
import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { shareRangeOf, type Ranged } from '../../../shared-logic/balance/share-range'
import { densities } from '../../../shared-logic/load/densities'
import { rigSchema, type Rig } from '../../../shared-logic/rig/rig'
import { defaultSumsSettings } from '../../../shared-logic/sums/settings'
import { sumsOf } from '../../../shared-logic/sums/sums'
import { parseQuantity } from '../../../shared-logic/units/convert'
import { units } from '../../../shared-logic/units/unit-table'
import { evenly } from '../evenly'

const contents = fc.constantFrom('petrol', 'diesel', 'fresh water', 'live well', 'ballast')

/** Whole rigs of any shape: boats of 3 to 12 m, one to three equalised axles, up to four tanks and five pieces of gear. */
const rigs: fc.Arbitrary<Rig> = fc
  .record({
    trailerKg: evenly(150, 3000), trailerM: evenly(1, 6), axleM: evenly(3, 8), axleCount: fc.integer({ min: 1, max: 3 }), boatKg: evenly(200, 8000), lengthM: evenly(3, 12), stemM: evenly(0.2, 2),
    boatPart: evenly(0.3, 0.8), engine: fc.option(evenly(40, 600)), tanks: fc.array(fc.record({ contents, capacityM3: evenly(0.02, 0.8), fill: evenly(0, 1), part: evenly(0, 1) }), { maxLength: 4 }),
    gear: fc.array(fc.record({ massKg: evenly(1, 200), aftOfBallM: evenly(-0.5, 9) }), { maxLength: 5 }),
  })
  .map(({ trailerKg, trailerM, axleM, axleCount, boatKg, lengthM, stemM, boatPart, engine, tanks, gear }) =>
    rigSchema.parse({
      name: 'Any', trailer: { massKg: trailerKg, ballToAxleM: axleM, axleCount }, boat: { dryMassKg: boatKg, lengthM, ...(engine !== null && { engineMassKg: engine }), tanks: tanks.map(({ contents: holds, capacityM3 }) => ({ contents: holds, capacityM3 })) },
      loading: {
        stemAftOfBallM: stemM, trailerCentreAftOfBallM: trailerM, boatCentreAftOfStemM: lengthM * boatPart, ...(engine !== null && { engineAftOfStemM: lengthM }),
        tanks: tanks.map(({ fill, part }) => ({ fill, aftOfStemM: lengthM * part })), gear: gear.map((each, index) => ({ name: `Gear ${index}`, ...each })),
      },
      stance: { axleSpacingM: 0.9, loadSharing: 'equalised' },
    }))

/** The rig's point loads, gathered by hand from its data: nothing of the program's own sums is used. */
const pointsOf = ({ trailer, boat, loading }: Rig): [massKg: number, atM: number][] => {
  const stemM = loading?.stemAftOfBallM ?? Number.NaN
  const points: [number, number][] = [[trailer.massKg ?? Number.NaN, loading?.trailerCentreAftOfBallM ?? Number.NaN], [boat?.dryMassKg ?? Number.NaN, stemM + (loading?.boatCentreAftOfStemM ?? Number.NaN)]]
  if (boat?.engineMassKg !== undefined) points.push([boat.engineMassKg, stemM + (loading?.engineAftOfStemM ?? Number.NaN)])
  for (const [index, { contents: holds, capacityM3 }] of (boat?.tanks ?? []).entries()) {
    const at = loading?.tanks?.[index]
    points.push([capacityM3 * (at?.fill ?? Number.NaN) * densities[holds].middle, stemM + (at?.aftOfStemM ?? Number.NaN)])
  }
  for (const { massKg, aftOfBallM } of loading?.gear ?? []) points.push([massKg, aftOfBallM ?? Number.NaN])
  return points
}

/** Solves forces and moments about a point that is neither ball nor axle, by matrix. */
const byMatrix = (points: readonly (readonly [number, number])[], axleM: number): readonly number[] => {
  const about = 2.37
  const total = points.reduce((sum, [massKg]) => sum + massKg, 0)
  const moment = points.reduce((sum, [massKg, atM]) => sum + massKg * (atM - about), 0)
  const solved: unknown = lusolve([[1, 1], [-about, axleM - about]], [total, moment])
  return Array.isArray(solved) ? solved.flat().map(Number) : []
}

/**
 * Integrates along the beam. The bending moment at the axle is the same from either end: coupling load times distance, less the
 * integral of the mass lying ahead of each section, is less the integral of the mass lying aft of each section beyond the axle.
 * Between two loads the integrand is constant, so the sum of strips is exact but for rounding.
 */
const byIntegration = (points: readonly (readonly [number, number])[], axleM: number): number => {
  const stations = [0, axleM, ...points.map(([, atM]) => atM)].toSorted((a, b) => a - b)
  let moment = 0
  for (const [index, from] of stations.entries()) {
    const to = stations[index + 1] ?? from
    const middle = (from + to) / 2
    const massOn = (side: (atM: number) => boolean): number => points.reduce((sum, [massKg, atM]) => (side(atM) ? sum + massKg : sum), 0)
    moment += (to - from) * (middle < axleM ? massOn((atM) => atM < middle) : -massOn((atM) => atM > middle))
  }
  return moment / axleM
}

const near = (value: number, expected: number, scale: number): boolean => Math.abs(value - expected) <= 1e-9 * Math.max(1, Math.abs(scale))

describe('the sums against other methods, on 1,000 random rigs each', { timeout: 30_000 }, () => {
  it('coupling and axle loads agree with a matrix solve of the equilibrium about another point', () => {
    fc.assert(fc.property(rigs, (rig) => {
      const { lever, axleLoads } = sumsOf(rig, 'us', defaultSumsSettings).balance
      const axleM = rig.trailer.ballToAxleM ?? Number.NaN
      const [coupling = Number.NaN, axle = Number.NaN] = byMatrix(pointsOf(rig), axleM)
      const onAxles = (axleLoads?.axlesKg ?? []).reduce((sum, load) => sum + load, 0)
      return lever !== undefined && near(lever.couplingKg, coupling, lever.totalKg) && near(lever.axleKg, axle, lever.totalKg) && near(onAxles, axle, lever.totalKg)
    }), { numRuns: 1000 })
  })

  it('the coupling load agrees with an integration along the beam', () => {
    fc.assert(fc.property(rigs, (rig) => {
      const { lever } = sumsOf(rig, 'us', defaultSumsSettings).balance
      return lever !== undefined && near(lever.couplingKg, byIntegration(pointsOf(rig), rig.trailer.ballToAxleM ?? Number.NaN), lever.totalKg)
    }), { numRuns: 1000 })
  })

  it('every move reaches the share aimed at and keeps the total', () => {
    fc.assert(fc.property(rigs, (rig) => {
      const { lever, goal } = sumsOf(rig, 'us', defaultSumsSettings).balance
      return lever !== undefined && goal !== undefined && goal.moves.every((move) => Math.abs(move.after.share - goal.share) < 1e-9 * Math.max(1, Math.abs(move.forwardM)) && near(move.after.totalKg, lever.totalKg, lever.totalKg))
    }), { numRuns: 300 })
  })

  it('moving the boat forward never lowers the coupling load', () => {
    fc.assert(fc.property(rigs, evenly(0, 1), (rig, forwardM) => {
      const moved = { ...rig, loading: { ...rig.loading, stemAftOfBallM: (rig.loading?.stemAftOfBallM ?? 0) - forwardM } }
      const [before, after] = [rig, moved].map((each) => sumsOf(each, 'us', defaultSumsSettings).balance.lever?.couplingKg ?? Number.NaN)
      return before !== undefined && after !== undefined && after >= before - 1e-9
    }), { numRuns: 300 })
  })
})

const ranged: fc.Arbitrary<Ranged[]> = fc
  .array(fc.record({ lowKg: evenly(0, 300), moreKg: fc.oneof(fc.constant(0), evenly(1, 500)), atM: evenly(-0.5, 9) }), { minLength: 1, maxLength: 7 })
  .map((list) => [{ id: 'rest', lowKg: 800, highKg: 800, atM: 4 }, ...list.map(({ lowKg, moreKg, atM }, index) => ({ id: `tank ${index}`, lowKg, highKg: lowKg + moreKg, atM }))])

describe('worst cases over tank levels', () => {
  it('are the extremes of every combination of low and high', () => {
    fc.assert(fc.property(ranged, evenly(3, 8), (list, axleM) => {
      const shares = Array.from({ length: 2 ** list.length }, (_, combination) => {
        const masses = list.map(({ lowKg, highKg }, index) => ((combination >> index) % 2 === 1 ? highKg : lowKg))
        const total = masses.reduce((sum, massKg) => sum + massKg, 0)
        return masses.reduce((sum, massKg, index) => sum + massKg * (1 - (list[index]?.atM ?? 0) / axleM), 0) / total
      })
      const range = shareRangeOf(list, axleM)
      return range !== undefined && near(range.least.share, Math.min(...shares), 1) && near(range.most.share, Math.max(...shares), 1)
    }))
  })
  it('bound the curve of all tanks at one level', () => {
    fc.assert(fc.property(rigs, (rig) => {
      const { tanks } = sumsOf(rig, 'us', defaultSumsSettings).balance
      return tanks === undefined || tanks.together.every(({ share }) => share >= tanks.worst.least.share - 1e-12 && share <= tanks.worst.most.share + 1e-12)
    }), { numRuns: 300 })
  })
})

describe('units', () => {
  it.each(['mass', 'length', 'volume', 'pressure', 'force'] as const)('a %s written in any of its units comes back', (quantity) => {
    fc.assert(fc.property(fc.constantFrom(...units[quantity]), evenly(0.001, 50_000), (unit, value) => {
      const written = value.toFixed(6)
      const parsed = parseQuantity(`${written} ${unit.symbol}`, quantity, 'metric')
      return parsed.ok && Math.abs(parsed.si / unit.perSi - Number(written)) <= 1e-9 * Number(written)
    }))
    expect(units[quantity].length).toBeGreaterThan(2)
  })
})
