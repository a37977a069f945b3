import { fromSi, shownUnit, toSi } from '../../units/convert'
import type { UnitSystem } from '../../units/quantity'

/** How areas become circles: the same share of the largest circle as of the largest round area. */
export interface AreaCircles {
  /** Round areas of the reader's unit for the legend, m2, the largest first. */
  readonly roundM2: readonly number[]
  readonly radiusOf: (areaM2: number) => number
}

const steps = [1, 2, 5]
const stepUp = (rank: number): number => (steps[((rank % 3) + 3) % 3] ?? 1) * 10 ** Math.floor(rank / 3)

/** The smallest of 1, 2, 5, 10 … that is not below the value, by its place in that row. */
const rankFor = (value: number): number => {
  let rank = Math.floor(Math.log10(value)) * 3
  while (stepUp(rank) < value * (1 - 1e-9)) rank += 1
  return rank
}

/** Even the smallest spot can be seen; drawing units. */
const leastShare = 0.12

/** Circles up to `mostRadius` for these areas; undefined where none was measured. */
export const areaCircles = (areasM2: readonly number[], mostRadius: number, units: UnitSystem): AreaCircles | undefined => {
  if (areasM2.length === 0) return undefined
  const unit = shownUnit('area', units)
  const top = rankFor(fromSi(Math.max(...areasM2), unit))
  const roundM2 = [top, top - 2, top - 4].map((rank) => toSi(stepUp(rank), unit))
  const largest = roundM2[0] ?? 1
  return { roundM2, radiusOf: (areaM2) => Math.max(Math.sqrt(areaM2 / largest), leastShare) * mostRadius }
}
