import { isOver } from '../rules/beyond'
import { gravestOf, type CorrosionFinding } from './findings'
import { corrosionLimits as limits } from './limits'
import type { SpotFacts } from './spot-facts'

/** What a rule on the coating is asked with: the facts, and the share and area that are to count. */
interface CoatingCase extends Omit<SpotFacts, 'share' | 'area'> {
  readonly share: number | undefined
  readonly areaM2: number | undefined
}

interface CoatingRule {
  readonly finding: CorrosionFinding
  readonly holds: (at: CoatingCase) => boolean
}

const over = (value: number | undefined, limit: number): boolean => value !== undefined && isOver(value, limit)
const isRust = ({ spot }: CoatingCase): boolean => spot.kind !== 'white product' && spot.kind !== 'blister' && spot.kind !== 'weld' && spot.material !== 'aluminium'
const isZinc = ({ scales }: CoatingCase): boolean => scales.includes('ISO 10289')
const isPainted = ({ spot }: CoatingCase): boolean => spot.material === 'painted steel' || spot.material === 'painted over zinc'
const isLargeBare = (at: CoatingCase): boolean => at.isDippedZinc && over(at.areaM2, limits.bareSpotM2)
const isBelowLocal = ({ zinc }: CoatingCase): boolean => zinc?.minimum?.lowestKept === false
const isWeldRust = ({ spot, share }: CoatingCase): boolean => spot.kind === 'weld' && spot.material !== 'aluminium' && (share === undefined || over(share, limits.edgeShare))

/** Every rule that can hold of a coating; the gravest that does counts. */
const rules: readonly CoatingRule[] = [
  { finding: 'red rust past spot repair', holds: (at) => isRust(at) && at.isDippedZinc && at.share !== undefined && (over(at.share, limits.bareShare) || isLargeBare(at)) },
  { finding: 'blistered', holds: ({ spot }) => spot.kind === 'blister' },
  { finding: 'paint broken down', holds: (at) => isRust(at) && isPainted(at) && over(at.share, limits.brokenDownShare) },
  { finding: 'painted rust', holds: (at) => isRust(at) && isPainted(at) && at.passShare !== undefined && over(at.share, at.passShare) },
  { finding: 'red rust on zinc', holds: (at) => isRust(at) && isZinc(at) && at.passShare !== undefined && over(at.share, at.passShare) },
  { finding: 'large bare spot', holds: (at) => isRust(at) && isLargeBare(at) },
  { finding: 'weld rust', holds: isWeldRust },
  { finding: 'heavy white product', holds: (at) => at.spot.kind === 'white product' && isBelowLocal(at) },
  { finding: 'bare steel', holds: (at) => at.spot.material === 'bare steel' },
  { finding: 'not measured', holds: (at) => isRust(at) && at.share === undefined },
  { finding: 'thin zinc', holds: isBelowLocal },
]

/** Where no rule holds. */
const otherwise = ({ spot }: CoatingCase): CorrosionFinding => {
  if (spot.material === 'aluminium') return spot.kind === 'red rust' ? 'foreign rust' : 'no area scale'
  return spot.kind === 'white product' ? 'white product' : 'slight'
}

const findingAt = (at: CoatingCase): CorrosionFinding => gravestOf(rules.filter(({ holds }) => holds(at)).map(({ finding }) => finding), otherwise(at))

/** What the coating comes to by the measured value, and by the worst end of its interval, which counts. */
export const coatingFinding = (facts: SpotFacts): { readonly measured: CorrosionFinding; readonly worst: CorrosionFinding } => ({
  measured: findingAt({ ...facts, share: facts.share?.value, areaM2: facts.area?.value }),
  worst: findingAt({ ...facts, share: facts.share?.high, areaM2: facts.area?.high }),
})
