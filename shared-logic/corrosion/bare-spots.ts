import { isOver } from '../rules/beyond'
import { acrossOf, corrosionLimits as limits } from './limits'

/** Narrowest dimension of a bare area that may be mended in the plant, m: 1 in. Source: ASTM A123 as the American galvanizers' association restates it. */
export const a123NarrowestM = 0.0254

/** m2 for each kg of the part: 22,500 mm2 a tonne as printed (36 in2 a short ton is 25,600; the print is on the safe side). */
const a123PerKg = 22_500e-6 / 1000

/** ASTM A123: the lesser of 0.5 % of the accessible surface and 36 in2 a short ton. By surface alone while the mass is not known. m2. */
export const a123TotalLimitM2 = (partM2: number, massKg?: number): number => Math.min(limits.bareShare * partM2, massKg === undefined ? Number.POSITIVE_INFINITY : a123PerKg * massKg)

/** Bare spots on zinc against what may be mended on new work. For a used trailer a yardstick of 'spot repair still sensible'. */
export interface BareSpots {
  /** Largest single one, and all together. */
  readonly largestM2: number
  readonly totalM2: number
  readonly totalLimitM2: number
  readonly singleKept: boolean
  readonly totalKept: boolean
  /** By ISO 1461:2009, 6.3: no more than 0.5 % of the part, and no single spot above 10 cm2. */
  readonly repairable: boolean
  /** ASTM A123, in the plant: `acrossM` is the circle of the largest spot's area, which stands for its narrowest dimension. */
  readonly a123: { readonly acrossM: number; readonly narrowestKept: boolean; readonly totalLimitM2: number; readonly repairable: boolean }
}

const againstA123 = (largestM2: number, totalM2: number, partM2: number, massKg: number | undefined): BareSpots['a123'] => {
  const acrossM = acrossOf(largestM2)
  const narrowestKept = !isOver(acrossM, a123NarrowestM)
  const totalLimitM2 = a123TotalLimitM2(partM2, massKg)
  return { acrossM, narrowestKept, totalLimitM2, repairable: narrowestKept && !isOver(totalM2, totalLimitM2) }
}

/** Areas of the spots and of the part they lie on, m2; its mass where it is known. */
export const bareSpotsOf = (areasM2: readonly number[], partM2: number, massKg?: number): BareSpots => {
  const largestM2 = Math.max(0, ...areasM2)
  const totalM2 = areasM2.reduce((sum, area) => sum + area, 0)
  const totalLimitM2 = limits.bareShare * partM2
  const singleKept = !isOver(largestM2, limits.bareSpotM2)
  const totalKept = !isOver(totalM2, totalLimitM2)
  return { largestM2, totalM2, totalLimitM2, singleKept, totalKept, repairable: singleKept && totalKept, a123: againstA123(largestM2, totalM2, partM2, massKg) }
}
