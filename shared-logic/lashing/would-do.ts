import type { RuleBook } from '../rules/rule-book'
import { poundsForce } from '../units/us-customary'
import type { DirectionHold } from './direction-hold'
import type { PullDirection, StrapLead } from './geometry'
import { pullFactor } from './strap-forces'

/** Ratings straps are commonly sold with, N. Common practice, no source. */
export const soldRatingsN: Readonly<Record<RuleBook, readonly number[]>> = {
  us: [500, 833, 1_000, 1_200, 1_467, 1_667, 2_000, 3_333, 5_400].map(poundsForce),
  eu: [2_500, 3_500, 5_000, 7_500, 10_000, 15_000, 20_000, 25_000, 50_000],
}

/** The smallest rating sold that bears this, N; undefined above the largest. */
export const ratingToBuyN = (ruleBook: RuleBook, tensionN: number): number | undefined => soldRatingsN[ruleBook].find((ratingN) => ratingN >= tensionN * (1 - 1e-9))

export type StandardPosition = 'bow tie' | 'transom pair' | 'across, each side'

interface PositionRow {
  readonly position: StandardPosition
  readonly holds: readonly PullDirection[]
  /** Straps of one set that act together in the direction asked about. */
  readonly set: number
  readonly downRad: number
  readonly offRad: number
  readonly leads: 'forward' | 'aft'
}

const degrees = (value: number): number => (value * Math.PI) / 180

/** Where straps usually go and at what angles. Common practice, no source. */
export const standardPositions: readonly PositionRow[] = [
  { position: 'bow tie', holds: ['forward'], set: 1, downRad: degrees(45), offRad: 0, leads: 'aft' },
  { position: 'transom pair', holds: ['rearward', 'up'], set: 2, downRad: degrees(30), offRad: degrees(20), leads: 'forward' },
  { position: 'across, each side', holds: ['left', 'right'], set: 1, downRad: degrees(45), offRad: degrees(90), leads: 'aft' },
]

/** Straps that would do by themselves: so many at this standard place, each of this rating. */
export interface StrapsThatWouldDo {
  readonly position: StandardPosition
  readonly count: number
  readonly ratedN: number
  /** Tension each then has. */
  readonly tensionN: number
}

const leadOfRow = ({ downRad, offRad, leads }: PositionRow, direction: PullDirection): StrapLead => ({
  downRad,
  offRad,
  pull: {
    aft: (leads === 'aft' ? 1 : -1) * Math.cos(downRad) * Math.cos(offRad),
    right: (direction === 'right' ? -1 : 1) * Math.cos(downRad) * Math.sin(offRad),
    up: -Math.sin(downRad),
  },
})

/**
 * For one direction, how many straps of what rating at a standard position would hold what friction and a rated bow stop leave:
 * one row for each rating sold that needs no more than four sets. Source: the direct formula, solved for the number.
 */
export const strapsThatWouldDo = (hold: DirectionHold, ruleBook: RuleBook, friction: number): StrapsThatWouldDo[] => {
  const leftN = hold.neededN - hold.frictionN - hold.bowStopN
  if (!(leftN > 0)) return []
  return standardPositions.filter(({ holds }) => holds.includes(hold.direction)).flatMap((row) => {
    const factor = pullFactor(leadOfRow(row, hold.direction), hold.direction, friction)
    return soldRatingsN[ruleBook].flatMap((ratedN): StrapsThatWouldDo[] => {
      const sets = Math.ceil(leftN / (factor * ratedN * row.set) - 1e-9)
      const count = sets * row.set
      return sets > 4 ? [] : [{ position: row.position, count, ratedN, tensionN: leftN / (factor * count) }]
    })
  })
}
