import { inches, poundsForce } from '../units/us-customary'
import { isOver, isUnder } from './beyond'

interface SizeRow {
  readonly sizeIn: number
  readonly limitLb: number
}

/** Working load limits of unmarked tiedowns. Source: tables to 49 CFR 393.108, (b) webbing, (d) chain. */
const unmarkedWebbing: readonly SizeRow[] = [
  { sizeIn: 1.75, limitLb: 1_750 },
  { sizeIn: 2, limitLb: 2_000 },
  { sizeIn: 3, limitLb: 3_000 },
  { sizeIn: 4, limitLb: 4_000 },
]
const chainGrade30: readonly SizeRow[] = [
  { sizeIn: 1 / 4, limitLb: 1_300 },
  { sizeIn: 5 / 16, limitLb: 1_900 },
  { sizeIn: 3 / 8, limitLb: 2_650 },
  { sizeIn: 7 / 16, limitLb: 3_700 },
  { sizeIn: 1 / 2, limitLb: 4_500 },
  { sizeIn: 5 / 8, limitLb: 6_900 },
]
const chainGrade70: readonly SizeRow[] = [
  { sizeIn: 1 / 4, limitLb: 3_150 },
  { sizeIn: 5 / 16, limitLb: 4_700 },
  { sizeIn: 3 / 8, limitLb: 6_600 },
]

/** Webbing 50 mm wide is sold as 2 in: a shortfall of 2 % still counts as the table's size. Common practice, no source. */
const slack = 0.98

const limitAt = (rows: readonly SizeRow[], sizeM: number): number | undefined => {
  const row = rows.findLast((candidate) => !isUnder(sizeM, inches(candidate.sizeIn) * slack))
  return row && poundsForce(row.limitLb)
}

/** Working load limit of unmarked webbing, N; undefined below 1-3/4 in, where the table has none. */
export const unmarkedWebbingLimitN = (widthM: number): number | undefined => limitAt(unmarkedWebbing, widthM)

/** Working load limit of chain by its size, N. Unmarked chain counts as grade 30. Undefined below 1/4 in. */
export const chainLimitN = (sizeM: number, grade: 30 | 70 = 30): number | undefined => limitAt(grade === 30 ? chainGrade30 : chainGrade70, sizeM)

/** A tiedown holds what its weakest part holds, N. Source: 49 CFR 393.108(a). */
export const weakestPartN = (strapN: number, ...others: readonly number[]): number => Math.min(strapN, ...others)

/** Working load limit of new webbing from its breaking strength, N: design factor 3. Source: web tie-down trade standard T-1. */
export const workingLimitOfBreakingN = (breakingN: number): number => breakingN / 3

/** Least breaking force behind a marked lashing capacity (LC), N: factor 2. Source: EN 12195-2, as quoted in its marking section. */
export const breakingOfLashingCapacityN = (capacityN: number): number => 2 * capacityN
export const lashingCapacityOfBreakingN = (breakingN: number): number => breakingN / 2

/**
 * How a tiedown runs: to the boat itself; over or around it back to the same side; or over it to the other side.
 * The first two count half. Source: 49 CFR 393.106(d).
 */
export type TiedownRoute = 'direct' | 'same side' | 'other side'

export interface CountedTiedown {
  readonly limitN: number
  readonly route: TiedownRoute
}

/** Aggregate working load limit, N. */
export const aggregateLimitN = (tiedowns: readonly CountedTiedown[]): number =>
  tiedowns.reduce((sum, { limitN, route }) => sum + (route === 'other side' ? limitN : limitN / 2), 0)

/** Least aggregate working load limit for a load, N: half its weight. Source: 49 CFR 393.106(d). */
export const neededAggregateN = (loadWeightN: number): number => loadWeightN / 2

/** Whether straps of this aggregate hold a load of this weight; exactly enough is enough. */
export const isAggregateEnough = (aggregateN: number, loadWeightN: number): boolean => !isOver(neededAggregateN(loadWeightN), aggregateN)
