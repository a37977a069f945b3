import fc from 'fast-check'
import { cross, dot, max, norm, subtract, sum } from 'mathjs'
import { describe, it } from 'vitest'
import { tieDownPlanOf } from '../../../shared-logic/lashing/plan'
import type { Strap } from '../../../shared-logic/rig/tie-down'
import { anyRig } from './random-plans'

type Triple = [number, number, number]
const gravity = 9.80665
const axes: Readonly<Record<string, Triple>> = { forward: [-1, 0, 0], rearward: [1, 0, 0], left: [0, -1, 0], right: [0, 1, 0], up: [0, 0, 1] }
const safety: Readonly<Record<string, number>> = { forward: 1.25, rearward: 1.1, left: 1.1, right: 1.1 }
const shares: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  eu: { forward: 0.8, rearward: 0.5, left: 0.5, right: 0.5, up: 0.2 },
  us: { forward: 0.435, rearward: 0.5, left: 0.25, right: 0.25, up: 0.2 },
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

/** The boat in its own equilibrium: slowly growing inertia, each distribution of tension tried, the greatest force found kept. */
const greatest = (rows: readonly Row[], equally: boolean): number => {
  if (!equally) return rows.length === 0 ? 0 : sum(rows.map(({ factor, ratedN }) => factor * ratedN))
  const tried = rows.flatMap(({ ratedN }) => [0.25, 0.5, 0.75, 1].map((part) => ratedN * part))
  const forces = tried.map((tensionN) => rows.filter(({ ratedN }) => ratedN >= tensionN).reduce((total, { factor }) => total + factor * tensionN, 0))
  return forces.length === 0 ? 0 : max(forces)
}

const oracle = (massKg: number, friction: number, straps: readonly Strap[], book: 'us' | 'eu', direction: string): { needed: number; held: number } => {
  const axis = axes[direction] ?? [0, 0, 0]
  const weight = massKg * gravity
  const needed = weight * (shares[book]?.[direction] ?? 0)
  const pulls = straps.map((strap) => ({ strap, ...pullOf(strap) }))
  const dynamic = 0.75 * friction
  const sliding = direction !== 'up'
  const rows = pulls.flatMap(({ strap, unit, sineDown }): Row[] => {
    const isOver = strap.route === 'over the top'
    if (isOver && sliding) return []
    const component = -dot(unit, axis)
    const factor = component > 1e-9 ? Math.max(0, component + (sliding ? dynamic * sineDown : 0)) * (isOver ? 2 : 1) : 0
    return factor > 0 ? [{ factor, ratedN: strap.ratedN ?? 0 }] : []
  })
  const direct = greatest(rows, book === 'eu')
  if (!sliding) return { needed, held: direct }
  const pressed = pulls.filter(({ strap }) => strap.route === 'over the top').reduce((total, { strap, sineDown }) => total + 2 * (strap.tensionN ?? 0) * Math.max(0, sineDown), 0) / (book === 'eu' ? (safety[direction] ?? 1) : 1)
  const everything = direct + dynamic * (weight + pressed)
  return { needed, held: pressed > 0 ? Math.max(everything, friction * (weight + pressed)) : everything }
}

describe('the forces of the tie-down plan', () => {
  it.each(['eu', 'us'] as const)('agree with vector statics done by a general-purpose library, on 1,000 random plans (%s)', (book) => {
    fc.assert(fc.property(anyRig, (rig) => {
      const free = { ...rig, tieDown: { ...rig.tieDown, bowStopBlocks: false } }
      const [governing] = tieDownPlanOf(free, book).methods
      return governing !== undefined && governing.directions.every(({ direction, neededN, heldN }) => {
        const expected = oracle(rig.boat?.dryMassKg ?? 0, rig.tieDown.friction ?? 0, rig.tieDown.straps, book, direction)
        return Math.abs(neededN - expected.needed) <= 1e-9 * expected.needed && Math.abs(heldN - expected.held) <= 1e-9 * Math.max(1, expected.held)
      })
    }), { numRuns: 1000 })
  })
})
