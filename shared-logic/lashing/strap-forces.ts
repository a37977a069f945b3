import { directFrictionShare } from './direct-strap'
import { along, axisOf, type PullDirection, type StrapLead } from './geometry'
import type { Against } from './methods'
import type { PlannedStrap } from './planned-strap'

/** What one strap holds with in a direction: `factor` per newton of tension, up to `limitN`. */
export interface StrapPull {
  readonly index: number
  readonly factor: number
  readonly limitN?: number
}

const least = 1e-9

/**
 * How much of its tension a direct strap holds with: its component against the movement and three quarters of the friction
 * of what it presses down. Zero where the movement would slacken it. Source: EN 12195-1, direct lashing (X + 0.75 μ Z) / L.
 */
export const pullFactor = ({ pull }: StrapLead, direction: PullDirection, friction: number): number => {
  const against = -along(pull, axisOf[direction])
  if (against <= least) return 0
  return direction === 'up' ? against : Math.max(0, against - directFrictionShare * friction * pull.up)
}

const limitOf = ({ limitN, strap }: PlannedStrap, against: Against): number | undefined => (against === 'limit' ? limitN : strap.breakingN)

/** Straps that are stretched when the boat goes this way; over the top both halves hold against lifting. */
export const pullsAgainst = (straps: readonly PlannedStrap[], direction: PullDirection, friction: number, against: Against): StrapPull[] =>
  straps.flatMap((planned): StrapPull[] => {
    const { lead, index, strap } = planned
    if (!lead || (strap.route === 'over the top' && direction !== 'up')) return []
    const factor = pullFactor(lead, direction, friction) * (strap.route === 'over the top' ? 2 : 1)
    const limitN = limitOf(planned, against)
    return factor > 0 ? [{ index, factor, ...(limitN !== undefined && { limitN }) }] : []
  })

/** Force with which straps over the top press the boat down, N: both halves at the standard tension force, k = 2. Source: EN 12195-1. */
export const pressedDownN = (straps: readonly PlannedStrap[]): number =>
  straps.reduce((sum, { lead, strap }) => {
    if (strap.route !== 'over the top' || !lead || strap.tensionN === undefined) return sum
    return sum + 2 * strap.tensionN * Math.max(0, Math.sin(lead.downRad))
  }, 0)

const atTension = (pulls: readonly StrapPull[], tensionN: number): number =>
  tensionN * pulls.reduce((sum, { factor, limitN = 0 }) => sum + (limitN >= tensionN ? factor : 0), 0)

/** What straps hold, N, and the tension all of them then have; straps too weak to keep up are left out. */
export const heldEqually = (pulls: readonly StrapPull[]): { readonly heldN: number; readonly tensionN: number } => {
  let best = { heldN: 0, tensionN: 0 }
  for (const { limitN } of pulls) {
    if (limitN === undefined) continue
    const heldN = atTension(pulls, limitN)
    if (heldN > best.heldN) best = { heldN, tensionN: limitN }
  }
  return best
}

/** What straps hold when each bears up to its own limit, N. */
export const heldEachByItself = (pulls: readonly StrapPull[]): number => pulls.reduce((sum, { factor, limitN = 0 }) => sum + factor * limitN, 0)
