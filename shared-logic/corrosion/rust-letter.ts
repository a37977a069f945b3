import type { Spot } from '../survey/spot'
import { acrossOf } from './limits'

export type RustLetter = 'S' | 'G' | 'P'

/** Most of the area in a few places: this share in the three largest. */
const fewPlacesShare = 0.8
const pinpointAcrossM = 0.001

const median = (sorted: readonly number[]): number => {
  const middle = sorted.length / 2
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2
}

const sum = (areas: readonly number[]): number => areas.reduce((total, area) => total + area, 0)

/**
 * ASTM D610's letter by measurement (project rule, common practice): P pinpoint where the median spot is below 1 mm across, S spot where
 * the three largest hold 80 % of the rust, else G general. The standard tells them by picture. H, a mixture, is the surveyor's to say.
 */
export const letterOfSizes = (areasM2: readonly number[]): RustLetter | undefined => {
  if (areasM2.length === 0) return undefined
  const sorted = areasM2.toSorted((a, b) => b - a)
  if (acrossOf(median(sorted)) < pinpointAcrossM) return 'P'
  return sum(sorted.slice(0, 3)) >= fewPlacesShare * sum(sorted) ? 'S' : 'G'
}

/** The letter of spots recorded one by one. Undefined where a record stands for many specks (found by colour, or as a share): their sizes are not known. */
export const letterOf = (together: readonly Spot[]): RustLetter | undefined => {
  const sizes = together.flatMap(({ areaM2, measurement }) => (areaM2 === undefined || measurement?.outline.by === 'finder' ? [] : [areaM2]))
  return sizes.length < together.length ? undefined : letterOfSizes(sizes)
}
