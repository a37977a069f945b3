import fc from 'fast-check'
import { cross, norm, subtract, sum } from 'mathjs'
import { describe, it } from 'vitest'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { Strap } from '../../../shared-logic/rig/tie-down'
import { evenly } from '../evenly'
import { anyRig } from './random-plans'

type Triple = [number, number, number]
const gravity = 9.80665
const axes: Readonly<Record<string, Triple>> = { forward: [-1, 0, 0], rearward: [1, 0, 0], left: [0, -1, 0], right: [0, 1, 0], up: [0, 0, 1] }
const safety: Readonly<Record<string, number>> = { forward: 1.25, rearward: 1.1, left: 1.1, right: 1.1 }
type Reading = 'eu' | 'us working' | 'us breaking'
const shares: Readonly<Record<Reading, Readonly<Record<string, number>>>> = {
  eu: { forward: 0.8, rearward: 0.5, left: 0.5, right: 0.5, up: 0.2 },
  'us working': { forward: 0.435, rearward: 0.5, left: 0.25, right: 0.25, up: 0.2 },
  'us breaking': { forward: 0.8, rearward: 0.5, left: 0.5, right: 0.5, up: 0.2 },
}

/** Unit pull by a general-purpose library; the angle below the horizontal from the cross product with the plumb line. */
const pullOf = ({ boat, trailer }: Strap): { unit: Triple; sineDown: number } => {
  const ends = [trailer, boat].map((end): Triple => [end?.aftOfBallM ?? 0, end?.toRightM ?? 0, end?.heightM ?? 0])
  const vector = subtract(ends[0] ?? [0, 0, 0], ends[1] ?? [0, 0, 0])
  const length = Number(norm(vector))
  const [x = 0, y = 0, z = 0] = vector.map((part) => Number(part) / length)
  const level = Number(norm(cross([x, y, z], [0, 0, -1])))
  return { unit: [x, y, z], sineDown: Math.sign(-z) * Math.sqrt(Math.max(0, 1 - level ** 2)) }
}

interface Row {
  readonly factor: number
  readonly ratedN: number
}

/** What straps bear: each up to its own limit; or at equal tension, where every choice of straps is tried and the strongest kept: the weakest of a choice sets its tension. */
const greatest = (rows: readonly Row[], equally: boolean): number => {
  if (!equally) return rows.length === 0 ? 0 : sum(rows.map(({ factor, ratedN }) => factor * ratedN))
  const choices = Array.from({ length: 2 ** rows.length }, (_, bits) => rows.filter((_row, index) => (bits >> index) % 2 === 1)).filter((chosen) => chosen.length > 0)
  return Math.max(0, ...choices.map((chosen) => Math.min(...chosen.map(({ ratedN }) => ratedN)) * chosen.reduce((total, { factor }) => total + factor, 0)))
}

type Pull = ReturnType<typeof pullOf> & { readonly strap: Strap }

const oracle = (massKg: number, friction: number, pulls: readonly Pull[], book: Reading, direction: string): { needed: number; held: number } => {
  const axis = axes[direction] ?? [0, 0, 0]
  const weight = massKg * gravity
  const needed = weight * (shares[book][direction] ?? 0)
  const dynamic = 0.75 * friction
  const sliding = direction !== 'up'
  const rows = pulls.flatMap(({ strap, unit, sineDown }): Row[] => {
    const isOver = strap.route === 'over the top'
    if (isOver && sliding) return []
    const component = -unit.reduce((total, part, index) => total + part * (axis[index] ?? 0), 0)
    const factor = component > 1e-9 ? Math.max(0, component + (sliding ? dynamic * sineDown : 0)) * (isOver ? 2 : 1) : 0
    return factor > 0 ? [{ factor, ratedN: (book === 'us breaking' ? strap.breakingN : strap.ratedN) ?? 0 }] : []
  })
  const direct = greatest(rows, book === 'eu')
  if (!sliding) return { needed, held: direct }
  const pressed = pulls.filter(({ strap }) => strap.route === 'over the top').reduce((total, { strap, sineDown }) => total + 2 * (strap.tensionN ?? 0) * Math.max(0, sineDown), 0) / (book === 'eu' ? (safety[direction] ?? 1) : 1)
  const everything = direct + dynamic * (weight + pressed)
  return { needed, held: pressed > 0 ? Math.max(everything, friction * (weight + pressed)) : everything }
}

describe('the forces of the tie-down plan', { timeout: 30_000 }, () => {
  it.each(['eu', 'us'] as const)('agree with vector statics done by a general-purpose library, on 1,000 random plans (%s)', (book) => {
    fc.assert(fc.property(anyRig, (rig) => {
      const { methods } = tieDownPlanOf(rig, book)
      const pulls = rig.tieDown.straps.map((strap) => ({ strap, ...pullOf(strap) }))
      return methods.length === (book === 'us' ? 2 : 1) && methods.every(({ method, directions }) => directions.length === 5 && directions.every(({ direction, neededN, heldN, standing }) => {
        const expected = oracle(rig.boat?.dryMassKg ?? 0, rig.tieDown.friction ?? 0, pulls, method.id, direction)
        const held = expected.held + (direction === 'forward' && rig.tieDown.bowStopBlocks === true ? (rig.tieDown.bowStopRatedN ?? 0) : 0)
        const isNear = Math.abs(neededN - expected.needed) <= 1e-9 * expected.needed && Math.abs(heldN - held) <= 1e-9 * Math.max(1, held)
        // At the very edge either answer is right.
        const isEdge = Math.abs(held - expected.needed) < 1e-5 * expected.needed
        return isNear && (isEdge || (standing === 'holds') === held > expected.needed)
      }))
    }), { numRuns: 1000 })
  })
})

/** The federal counting rules written down once more, by hand and without the program's tables. */
const poundForce = 4.4482216152605
const byHand = (massKg: number, lengthM: number, straps: readonly Strap[], blocked: boolean) => {
  const counted = straps.filter(({ place }) => place !== 'winch')
  let aggregateN = 0
  for (const { route, ratedN = 0 } of counted) aggregateN += route === 'over the top' ? ratedN : 0.5 * ratedN
  const [massLb, lengthFt] = [massKg / 0.45359237, lengthM / 0.3048]
  let least = blocked ? 0 : 1
  for (let beginsFt = 0; beginsFt < lengthFt; beginsFt += 10) least += 1
  return { aggregateN, neededN: 0.5 * massLb * poundForce, fitted: counted.length, least: !blocked && lengthFt <= 5 && massLb <= 1100 ? 1 : least }
}

describe('the federal counting rules (49 CFR 393.106(d), 393.110 as restated)', { timeout: 30_000 }, () => {
  it('agree with a count by hand, on 1,000 random plans', () => {
    fc.assert(fc.property(anyRig, evenly(0.5, 15), (rig, lengthM) => {
      const massKg = rig.boat?.dryMassKg ?? Number.NaN
      const { aggregate, count } = tieDownPlanOf({ ...rig, boat: { ...rig.boat, lengthM } }, 'us')
      const expected = byHand(massKg, lengthM, rig.tieDown.straps, rig.tieDown.bowStopBlocks === true)
      return aggregate !== undefined && count !== undefined && Math.abs(aggregate.countedN - expected.aggregateN) <= 1e-9 * Math.max(1, expected.aggregateN)
        && Math.abs((aggregate.neededN ?? Number.NaN) - expected.neededN) <= 1e-9 * expected.neededN && count.fitted === expected.fitted && count.least === expected.least
    }), { numRuns: 1000 })
  })
})
