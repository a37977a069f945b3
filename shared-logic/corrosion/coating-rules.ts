import { isOver } from '../rules/beyond'
import { isForeignWhite } from './area-scales'
import type { CorrosionFinding } from './findings'
import { corrosionLimits as limits } from './limits'
import { findingOf, type Found, type Rule } from './rules'
import type { SpotFacts } from './spot-facts'

/** What a rule on the coating is asked with: the facts, and the share and area that are to count. */
interface CoatingCase extends Omit<SpotFacts, 'share' | 'area'> {
  readonly share: number | undefined
  readonly areaM2: number | undefined
}

const over = (value: number | undefined, limit: number): boolean => value !== undefined && isOver(value, limit)
const isRust = ({ spot }: CoatingCase): boolean => spot.kind !== 'white product' && spot.kind !== 'blister' && spot.kind !== 'weld' && spot.material !== 'aluminium'
const isZinc = ({ scales }: CoatingCase): boolean => scales.includes('ISO 10289')
const isPainted = ({ spot }: CoatingCase): boolean => spot.material === 'painted steel' || spot.material === 'painted over zinc'
const isLargeBare = (at: CoatingCase): boolean => at.isDippedZinc && over(at.areaM2, limits.bareSpotM2)
const isBelowLocal = ({ zinc }: CoatingCase): boolean => zinc?.minimum?.lowestKept === false
const isWeldRust = ({ spot, share }: CoatingCase): boolean => spot.kind === 'weld' && spot.material !== 'aluminium' && (share === undefined || over(share, limits.edgeShare))

/** Every rule that can hold of a coating; the gravest that does counts. */
const rules: readonly Rule<CoatingCase, 'rust' | 'blisters' | 'zinc left'>[] = [
  { finding: 'red rust past spot repair', about: 'rust', holds: (at) => isRust(at) && at.isDippedZinc && at.share !== undefined && (over(at.share, limits.bareShare) || isLargeBare(at)) },
  { finding: 'blistered', about: 'blisters', holds: ({ spot }) => spot.kind === 'blister' },
  { finding: 'paint broken down', about: 'rust', holds: (at) => isRust(at) && isPainted(at) && over(at.share, limits.brokenDownShare) },
  { finding: 'painted rust', about: 'rust', holds: (at) => isRust(at) && isPainted(at) && at.passShare !== undefined && over(at.share, at.passShare) },
  { finding: 'red rust on zinc', about: 'rust', holds: (at) => isRust(at) && isZinc(at) && at.passShare !== undefined && over(at.share, at.passShare) },
  { finding: 'large bare spot', about: 'rust', holds: (at) => isRust(at) && isLargeBare(at) },
  { finding: 'weld rust', about: 'rust', holds: isWeldRust },
  { finding: 'heavy white product', about: 'zinc left', holds: (at) => at.spot.kind === 'white product' && isBelowLocal(at) },
  { finding: 'bare steel', about: 'rust', holds: (at) => at.spot.material === 'bare steel' },
  { finding: 'not measured', about: 'rust', holds: (at) => isRust(at) && at.share === undefined },
  { finding: 'thin zinc', about: 'zinc left', holds: isBelowLocal },
]

/** Where no rule holds. */
const otherwise = ({ spot }: CoatingCase): CorrosionFinding => {
  if (spot.material === 'aluminium') return spot.kind === 'red rust' ? 'foreign rust' : 'no area scale'
  if (isForeignWhite(spot)) return 'foreign white'
  return spot.kind === 'white product' ? 'white product' : 'slight'
}

const findingAt = (at: CoatingCase): Found => findingOf(rules, at, otherwise(at))

/** What the coating comes to by the measured value, and by the worst end of its interval, which counts. */
export const coatingFinding = (facts: SpotFacts): { readonly measured: Found; readonly worst: Found } => ({
  measured: findingAt({ ...facts, share: facts.share?.value, areaM2: facts.area?.value }),
  worst: findingAt({ ...facts, share: facts.share?.high, areaM2: facts.area?.high }),
})
