import { inches } from '../units/us-customary'
import { isOver, isUnder } from './beyond'

/**
 * Share of the width beyond which webbing is scrapped.
 * Source: lashing equipment scrapping guidelines of a vehicle shipping line ('more than 10 % of the width').
 */
export const strapShareLimit = 0.1

interface DefectRow {
  readonly widthIn: number
  readonly limitIn: number
}

/**
 * North American out-of-service limits for the sum of cuts, burns and holes, by web width.
 * From memory: the table's existence was confirmed, its figures were not. They only name how grave a fail is: each lies
 * beyond the tenth of the width that already fails.
 */
const outOfServiceRows: readonly DefectRow[] = [
  { widthIn: 1.75, limitIn: 3 / 8 },
  { widthIn: 2, limitIn: 3 / 8 },
  { widthIn: 3, limitIn: 5 / 8 },
  { widthIn: 4, limitIn: 3 / 4 },
]

export interface StrapDamage {
  /** Damage over width, 0 to 1. */
  readonly share: number
  readonly pastShare: boolean
  /** The out-of-service limit for this width, m; undefined for narrower webbing. */
  readonly outOfServiceM: number | undefined
  readonly pastOutOfService: boolean
}

/** Grades damage across a strap: the sum of all cuts, not the largest. Both m; damage longer than the width counts as the width. */
export const gradeStrapDamage = (damageM: number, widthM: number): StrapDamage => {
  const share = Math.min(1, damageM / widthM)
  const row = outOfServiceRows.findLast((candidate) => !isUnder(widthM, inches(candidate.widthIn) * 0.98))
  const outOfServiceM = row && inches(row.limitIn)
  return { share, pastShare: isOver(share, strapShareLimit), outOfServiceM, pastOutOfService: outOfServiceM !== undefined && isOver(damageM, outOfServiceM) }
}
