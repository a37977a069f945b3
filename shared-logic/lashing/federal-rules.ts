import { isOver, isUnder } from '../rules/beyond'
import { aggregateLimitN, neededAggregateN, type CountedTiedown, type TiedownRoute } from '../rules/tie-down-capacity'
import { leastTiedowns } from '../rules/tiedown-count'
import type { Strap } from '../rig/tie-down'
import { weightN } from '../units/us-customary'
import type { ReckonedMass, Standing } from './direction-hold'
import type { PlannedStrap } from './planned-strap'

const routeOf: Readonly<Record<Strap['route'], TiedownRoute>> = { direct: 'direct', 'over the top': 'other side', 'back to the same side': 'same side' }

/** Aggregate working load limit against half the weight, N. Source: 49 CFR 393.106(d). */
export interface AggregateSum {
  readonly straps: readonly { readonly index: number; readonly limitN?: number; readonly countsHalf: boolean; readonly countedN: number }[]
  readonly countedN: number
  readonly neededN?: number
  readonly share?: number
  readonly standing: Standing
  /** Rating each strap fitted would need, all alike, for the aggregate to be reached. */
  readonly ratingEachN?: number
}

const counted = ({ strap, limitN }: PlannedStrap): CountedTiedown => ({ limitN: limitN ?? 0, route: routeOf[strap.route] })

export const aggregateOf = (straps: readonly PlannedStrap[], mass: ReckonedMass | undefined): AggregateSum => {
  const lines = straps.map((planned) => ({
    index: planned.index,
    ...(planned.limitN !== undefined && { limitN: planned.limitN }),
    countsHalf: planned.strap.route !== 'over the top',
    countedN: aggregateLimitN([counted(planned)]),
  }))
  const countedN = aggregateLimitN(straps.map(counted))
  if (!mass) return { straps: lines, countedN, standing: 'waits' }
  const neededN = neededAggregateN(weightN(mass.massKg))
  const isShort = isOver(neededN, countedN)
  const unknown = straps.some(({ limitN }) => limitN === undefined)
  const perNewton = aggregateLimitN(straps.map(({ strap }) => ({ limitN: 1, route: routeOf[strap.route] })))
  const waits = isShort ? unknown || mass.basis === 'at most' : mass.basis === 'at least'
  return {
    straps: lines, countedN, neededN, share: countedN / neededN,
    standing: waits ? 'waits' : isShort ? 'short' : 'holds',
    ...(perNewton > 0 && { ratingEachN: neededN / perNewton }),
  }
}

/** Number of straps fitted against the least number. Source: 49 CFR 393.110, as restated. */
export interface CountSum {
  readonly fitted: number
  readonly least?: number
  readonly blocked: boolean
  readonly standing: Standing
}

export const countOf = (fitted: number, lengthM: number | undefined, mass: ReckonedMass | undefined, blocked: boolean): CountSum => {
  if (lengthM === undefined) return { fitted, blocked, standing: 'waits' }
  const least = leastTiedowns(lengthM, mass?.basis === 'at least' ? undefined : mass?.massKg, blocked)
  return { fitted, least, blocked, standing: isUnder(fitted, least) ? 'short' : 'holds' }
}
