import type { Source } from '../rules/rule-book'
import type { Spot, spotComponents } from '../survey/spot'
import { worstVerdict, type ByWhen, type Verdict } from '../survey/verdict'
import { areaGradesOf, scaleSources, type AreaGrade } from './area-scales'
import { bareSpotsOf, type BareSpots } from './bare-spots'
import { boxSectionLoss, type SectionLoss } from './box-section'
import { gradingCautions, type GradingCaution } from './cautions'
import { coatingFinding } from './coating-rules'
import { componentRows } from './components'
import { isPresent } from './corroded-share'
import { compareGravity, rowOf, type CorrosionFinding, type RemedyKind } from './findings'
import { rememberedIndex, type Couple } from './galvanic'
import type { Found } from './rules'
import { scaled, type Ranged } from './ranged'
import { spotFacts, type SpotFacts, type SpotSetting } from './spot-facts'
import { structureFinding } from './structure-rules'
import type { ZincReadings } from './zinc-thickness'

/** One of the two results: what it comes to, what to do, by when, and on which ground. */
export interface SpotResult {
  readonly finding: CorrosionFinding
  /** Findings on other matters that hold besides, gravest first: each has a remedy of its own. */
  readonly also: readonly CorrosionFinding[]
  readonly verdict: Verdict
  readonly by: ByWhen | undefined
  readonly remedy: RemedyKind
  readonly sources: readonly Source[]
  /** By the measured value it would be milder; the worst end of the interval counts. */
  readonly isCautious: boolean
}

export interface CoatingResult extends SpotResult {
  /** Empty where the share is not known, or no scale is meant for the surface. */
  readonly grades: readonly AreaGrade[]
  readonly zinc: ZincReadings | undefined
  /** Bare spots on galvanized steel against the repair limits of ISO 1461 and ASTM A123; undefined while areas or face are not known. */
  readonly bareSpots: BareSpots | undefined
}

export interface StructureResult extends SpotResult {
  readonly bearsLoad: boolean
  readonly pitLoss: number | undefined
  readonly generalLoss: number | undefined
  readonly couple: Couple | undefined
  /** Pits to the dm2, where they were counted on a known area. */
  readonly pitsPerDm2: number | undefined
  /** Loss of a whole box section by the general loss: from outside alone, and with as much inside, unseen. */
  readonly section: { readonly outside: SectionLoss; readonly bothSides: SectionLoss } | undefined
}

/** A spot graded: two results that are never mixed, the state of the coating and what the metal still carries. */
export interface SpotGrading {
  readonly spot: Spot
  readonly component: (typeof spotComponents)[number]
  /** Corroded share of the face, 0 to 1, spots of one place added up; undefined while not measured. */
  readonly share: Ranged | undefined
  /** How many spots were added up. */
  readonly counted: number
  readonly area: Ranged | undefined
  readonly coating: CoatingResult
  readonly structure: StructureResult
  /** The graver of the two findings; its remedy is the one to follow. */
  readonly gravest: CorrosionFinding
  /** The worse of the two verdicts; what was not seen does not outweigh what was. */
  readonly verdict: Verdict
  readonly by: ByWhen | undefined
  readonly cautions: readonly GradingCaution[]
}

/** A part that is not welded is replaced. */
const remedyFor = (finding: CorrosionFinding, { component }: SpotFacts): RemedyKind => {
  const { remedy } = rowOf(finding)
  return remedy === 'repair by welding' && componentRows[component].isReplaced ? 'replace' : remedy
}

const resultOf = ({ measured, worst }: { readonly measured: Found; readonly worst: Found }, facts: SpotFacts, more: readonly Source[]): SpotResult => {
  const { finding, also } = worst
  const { verdict, by, sources } = rowOf(finding)
  return {
    finding, also, verdict, by, remedy: remedyFor(finding, facts), isCautious: measured.finding !== finding,
    sources: [...new Set([...sources, ...also.flatMap((each) => rowOf(each).sources), ...more])],
  }
}

const bareSpots = ({ spot, together, isDippedZinc }: SpotFacts, { massKg }: SpotSetting): BareSpots | undefined => {
  const areas = together.flatMap(({ areaM2 }) => areaM2 ?? [])
  const faces = together.flatMap(({ faceAreaM2 }) => faceAreaM2 ?? [])
  const isBare = isDippedZinc && spot.kind !== 'white product' && spot.kind !== 'blister' && spot.kind !== 'weld'
  return isBare && areas.length === together.length && faces.length > 0 ? bareSpotsOf(areas, Math.min(...faces), massKg) : undefined
}

const coatingOf = (facts: SpotFacts, setting: SpotSetting): CoatingResult => {
  const { share, spot, together, zinc } = facts
  const grades = share === undefined ? [] : areaGradesOf(spot, scaled(share, 100), together)
  return { ...resultOf(coatingFinding(facts), facts, grades.flatMap(({ scale }) => scaleSources[scale])), grades, zinc, bareSpots: bareSpots(facts, setting) }
}

const sectionLoss = ({ spot: { wallM }, generalLoss }: SpotFacts, { section }: SpotSetting): StructureResult['section'] => {
  if (section === undefined || wallM === undefined || generalLoss === undefined) return undefined
  const whole = { ...section, wallM }
  const lostM = generalLoss * wallM
  return { outside: boxSectionLoss(whole, lostM, 0), bothSides: boxSectionLoss(whole, lostM, lostM) }
}

const pitsPerDm2 = ({ pitCount, areaM2 }: Spot): number | undefined => (pitCount === undefined || areaM2 === undefined ? undefined : pitCount / (areaM2 * 100))

const structureOf = (facts: SpotFacts, coating: CorrosionFinding, setting: SpotSetting): StructureResult => {
  const { bearsLoad, pitLoss, generalLoss, couple, spot } = facts
  const remembered = couple?.isRemembered === true ? [rememberedIndex] : []
  return { ...resultOf(structureFinding(facts, coating), facts, remembered), bearsLoad, pitLoss, generalLoss, couple, pitsPerDm2: pitsPerDm2(spot), section: sectionLoss(facts, setting) }
}

/** Found sound where it was corroded before: graded as sound, whatever was measured then. */
const repaired = (facts: SpotFacts): SpotGrading => {
  const result = (finding: CorrosionFinding): SpotResult => resultOf({ measured: { finding, also: [] }, worst: { finding, also: [] } }, facts, [])
  return {
    spot: facts.spot, component: facts.component, share: undefined, counted: 0, area: undefined, gravest: 'sound', verdict: 'pass', by: undefined, cautions: [],
    coating: { ...result('sound'), grades: [], zinc: undefined, bareSpots: undefined },
    structure: { ...result('sound metal'), bearsLoad: facts.bearsLoad, pitLoss: undefined, generalLoss: undefined, couple: undefined, pitsPerDm2: undefined, section: undefined },
  }
}

/**
 * Grades one corroded place among the others of the same member. Areas grade the coating; depth, holes and joints judge the metal.
 * Where an interval straddles an edge the grade is a span and the worst end counts. Takes a spot that `faultsOfSpots` finds nothing wrong with.
 */
export const gradeSpot = (spot: Spot, spots: readonly Spot[], setting: SpotSetting = {}): SpotGrading => {
  const facts = spotFacts(spot, spots, setting)
  if (!isPresent(spot)) return repaired(facts)
  const coating = coatingOf(facts, setting)
  const structure = structureOf(facts, coating.finding, setting)
  const gravest = compareGravity(structure.finding, coating.finding) <= 0 ? structure.finding : coating.finding
  const { component, share, area, together } = facts
  return {
    spot, component, share, counted: together.length, area, coating, structure, gravest,
    verdict: worstVerdict([coating.verdict, structure.verdict]), by: rowOf(gravest).by,
    cautions: gradingCautions(facts, { isCautious: coating.isCautious || structure.isCautious, grades: coating.grades }),
  }
}

/** Every spot of a member, in the order given. */
export const gradeSpots = (spots: readonly Spot[], setting: SpotSetting = {}): readonly SpotGrading[] => spots.map((spot) => gradeSpot(spot, spots, setting))

/** The gravest first; of equals the one with the larger share, then the first given. */
export const gravestFirst = (gradings: readonly SpotGrading[]): readonly SpotGrading[] =>
  gradings.toSorted((a, b) => compareGravity(a.gravest, b.gravest) || (b.share?.high ?? 0) - (a.share?.high ?? 0) || (b.area?.high ?? 0) - (a.area?.high ?? 0))
