import { feet, pounds } from '../units/us-customary'
import { isOver } from './beyond'

const tenFeetM = feet(10)
const fiveFeetM = feet(5)
const lightKg = pounds(1_100)

/** Tens of feet or parts of one, rounding noise of conversion forgiven. */
const tensOf = (lengthM: number): number => Math.ceil(lengthM / tenFeetM - 1e-6)

/**
 * Least number of tiedowns for a load. Length m, mass kg; an unknown mass counts as heavy.
 * Blocked: one for every 10 ft or part. Not blocked: one up to 5 ft and 1,100 lb, two up to 10 ft, one more for every
 * further 10 ft or part. Source: 49 CFR 393.110, as restated by the agency (the case up to 5 ft and heavier: from memory).
 */
export const leastTiedowns = (lengthM: number, massKg: number | undefined, blocked: boolean): number => {
  if (blocked) return Math.max(1, tensOf(lengthM))
  if (isOver(lengthM, tenFeetM)) return 1 + tensOf(lengthM)
  const short = !isOver(lengthM, fiveFeetM)
  const light = massKg !== undefined && !isOver(massKg, lightKg)
  return short && light ? 1 : 2
}
