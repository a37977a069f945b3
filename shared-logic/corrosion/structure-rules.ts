import { isOver, isUnder } from '../rules/beyond'
import { compareGravity, rowOf, type CorrosionFinding } from './findings'
import { isForeignWhite } from './area-scales'
import { acrossOf, corrosionLimits as limits } from './limits'
import { findingOf, type Found, type Rule } from './rules'
import type { SpotFacts } from './spot-facts'

/** `areaM2` is the end of the interval that is to count. */
interface StructureCase extends Omit<SpotFacts, 'area'> {
  readonly areaM2: number | undefined
}

/** Loss of metal is judged on parts that bear load alone; what happens at joints and right through, on any. */
interface StructureRule extends Rule<StructureCase, 'metal left' | 'layers' | 'joint'> {
  readonly onAnyPart?: true
}

const over = (value: number | undefined, limit: number): boolean => value !== undefined && isOver(value, limit)
const reaches = (value: number | undefined, limit: number): boolean => value !== undefined && !isUnder(value, limit)
const isAluminium = ({ spot }: StructureCase): boolean => spot.material === 'aluminium'
const isThrough = ({ spot, pitLoss, generalLoss }: StructureCase): boolean => spot.kind === 'hole' || reaches(pitLoss, 1) || reaches(generalLoss, 1)
const isByWeld = ({ spot }: StructureCase): boolean => spot.besideWeld === true || spot.kind === 'weld'
/** Depth without the wall, or pits without a depth: what is left is not known. A wall measured over an area says nothing of its pits. */
const isUnmeasured = (at: StructureCase): boolean =>
  (at.isPitted && at.pitLoss === undefined) || (at.spot.remainingM !== undefined && at.generalLoss === undefined) ||
  (isAluminium(at) && at.spot.kind === 'weld' && at.pitLoss === undefined && at.generalLoss === undefined)
const isEaten = ({ couple }: StructureCase): boolean => couple !== undefined && !couple.accepted && couple.anode === 'member'
/** Pitted more than 50 mm across. Shallow pits in aluminium, measured or not, are told of by themselves. */
const isEatenAway = (at: StructureCase): boolean =>
  at.spot.kind === 'pitting' && at.areaM2 !== undefined && isOver(acrossOf(at.areaM2), limits.eatenAcrossM) && (!isAluminium(at) || reaches(at.pitLoss, limits.lossAdvisory))
/** Attack at unlike metals whose other metal is not recorded, or with one that should not do it. */
const isUnexplained = ({ spot, couple }: StructureCase): boolean => spot.kind === 'galvanic' && (couple === undefined || couple.accepted)

/** The rules known for what a member still carries: the stricter, that is the gravest that holds, counts. */
const rules: readonly StructureRule[] = [
  { finding: 'hole', about: 'metal left', holds: isThrough },
  { finding: 'deep pit', about: 'metal left', holds: ({ pitLoss }) => over(pitLoss, limits.pitFail) },
  { finding: 'eaten away', about: 'metal left', holds: isEatenAway },
  { finding: 'too thin', about: 'metal left', holds: ({ generalLoss }) => over(generalLoss, limits.thinningFail) },
  { finding: 'pit by the weld', about: 'metal left', holds: (at) => isAluminium(at) && isByWeld(at) && over(at.pitLoss, limits.weldZonePitFail) },
  { finding: 'pits not measured', about: 'metal left', holds: isUnmeasured },
  { finding: 'galvanic, large cathode', about: 'joint', onAnyPart: true, holds: (at) => isEaten(at) && at.spot.touchingIsSmaller === false },
  { finding: 'thinned', about: 'metal left', holds: ({ generalLoss }) => reaches(generalLoss, limits.lossAdvisory) },
  { finding: 'pitted', about: 'metal left', holds: (at) => !isAluminium(at) && reaches(at.pitLoss, limits.lossAdvisory) },
  { finding: 'aluminium pits', about: 'metal left', holds: (at) => isAluminium(at) && at.isPitted && at.pitLoss !== undefined },
  { finding: 'scale', about: 'layers', holds: ({ spot }) => spot.kind === 'scale' },
  { finding: 'galvanic', about: 'joint', onAnyPart: true, holds: (at) => isEaten(at) || isUnexplained(at) },
  { finding: 'crevice', about: 'joint', onAnyPart: true, holds: ({ spot }) => spot.kind === 'crevice' },
  { finding: 'galvanic, other part', about: 'joint', onAnyPart: true, holds: ({ couple }) => couple !== undefined && !couple.accepted && couple.anode === 'other part' },
  { finding: 'holed, no load', about: 'metal left', onAnyPart: true, holds: (at) => !at.bearsLoad && isThrough(at) },
]

/** Where no rule holds. What was not measured is not seen, never a pass. */
const otherwise = ({ spot, bearsLoad, pitLoss, generalLoss }: StructureCase): CorrosionFinding => {
  if (!bearsLoad) return 'not structural'
  if (pitLoss !== undefined || generalLoss !== undefined) return 'small loss'
  if (spot.kind !== 'white product' || isForeignWhite(spot)) return 'depth not measured'
  return spot.material === 'aluminium' ? 'bloom' : 'zinc alone'
}

/** Near a mounting any finding short of a fail wants the wall measured first; one that was, and is whole, is left as it is. */
const isNearMounting = (finding: CorrosionFinding, coating: CorrosionFinding, { spot, bearsLoad }: StructureCase): boolean => {
  const gravest = compareGravity(finding, coating) <= 0 ? finding : coating
  return spot.nearMounting === true && bearsLoad && finding !== 'small loss' && rowOf(gravest).verdict === 'advisory'
}

const findingAt = (at: StructureCase, coating: CorrosionFinding): Found => {
  const found = findingOf(rules.filter(({ onAnyPart }) => onAnyPart === true || at.bearsLoad), at, otherwise(at))
  if (!isNearMounting(found.finding, coating, at)) return found
  return { finding: 'near a mounting', also: rowOf(found.finding).verdict === 'advisory' ? [found.finding, ...found.also] : [] }
}

/** What the structure comes to by the measured value, and by the worst end of its interval, which counts. */
export const structureFinding = (facts: SpotFacts, coating: CorrosionFinding): { readonly measured: Found; readonly worst: Found } => ({
  measured: findingAt({ ...facts, areaM2: facts.area?.value }, coating),
  worst: findingAt({ ...facts, areaM2: facts.area?.high }, coating),
})
