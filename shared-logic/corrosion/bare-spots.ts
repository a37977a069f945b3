import { isOver } from '../rules/beyond'
import { corrosionLimits as limits } from './limits'

/** Bare spots on zinc against what a galvanizer may mend on new work. For a used trailer a yardstick of 'spot repair still sensible'. */
export interface BareSpots {
  /** Largest single one, and all together. */
  readonly largestM2: number
  readonly totalM2: number
  readonly totalLimitM2: number
  readonly singleKept: boolean
  readonly totalKept: boolean
  readonly repairable: boolean
}

/** ISO 1461:2009, 6.3: no more than 0.5 % of the part, and no single spot above 10 cm2. Areas m2. */
export const bareSpotsOf = (areasM2: readonly number[], partM2: number): BareSpots => {
  const largestM2 = Math.max(0, ...areasM2)
  const totalM2 = areasM2.reduce((sum, area) => sum + area, 0)
  const totalLimitM2 = limits.bareShare * partM2
  const singleKept = !isOver(largestM2, limits.bareSpotM2)
  const totalKept = !isOver(totalM2, totalLimitM2)
  return { largestM2, totalM2, totalLimitM2, singleKept, totalKept, repairable: singleKept && totalKept }
}

/** Narrowest dimension of a bare area that may be mended in the plant, m: 1 in. Source: ASTM A123 as the American galvanizers' association restates it. */
export const a123NarrowestM = 0.0254

/** m2 for each kg of the part: 22,500 mm2 a tonne as printed (36 in2 a short ton is 25,600; the print is on the safe side). */
const a123PerKg = 22_500e-6 / 1000

/** ASTM A123: the lesser of 0.5 % of the accessible surface and 36 in2 a short ton. By surface alone while the mass is not known. m2. */
export const a123TotalLimitM2 = (partM2: number, massKg?: number): number => Math.min(limits.bareShare * partM2, massKg === undefined ? Number.POSITIVE_INFINITY : a123PerKg * massKg)
