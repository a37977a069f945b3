import { assertNever } from '../assert-never'
import type { Source } from '../rules/rule-book'
import type { Spot, spotMaterials } from '../survey/spot'
import { coatingCondition, degreeOfRusting, nearestDegreeOfRusting, protectionFormula, protectionRating, rustGrade, type CoatingCondition, type DegreeOfRusting } from './area-grades'
import { corrosionLimits as limits } from './limits'
import { gradeOver, type GradeSpan, type Ranged } from './ranged'
import { letterOf, type RustLetter } from './rust-letter'
import { corrosionSources as from } from './sources'

type Material = (typeof spotMaterials)[number]

export const areaScales = ['ISO 4628-3', 'ASTM D610', 'ISO 10289'] as const
export type AreaScale = (typeof areaScales)[number]

interface MaterialRow {
  /** The first leads: its next edge is what a forecast looks for. */
  readonly scales: readonly AreaScale[]
  /** Share of a face that still passes; undefined where no area scale was found. */
  readonly passShare?: number
  /** Zinc laid on in the bath, so that ISO 1461 and A123 apply. */
  readonly isDipped: boolean
  /** What the gauge reads is zinc alone. */
  readonly readsZinc: boolean
}

/**
 * Which scale is meant for which surface, from the scopes of the standards. ISO 4628-3:2024 takes in paint over zinc; ASTM D610 is
 * written for painted steel. Both are shown for uncoated steel too, though ISO 4628-3 refers that to ISO 8501-1. For uncoated
 * aluminium no area scale was found.
 */
export const materialRows: Readonly<Record<Material, MaterialRow>> = {
  'painted steel': { scales: ['ISO 4628-3', 'ASTM D610'], passShare: limits.paintedShare, isDipped: false, readsZinc: false },
  'bare steel': { scales: ['ISO 4628-3', 'ASTM D610'], passShare: 0, isDipped: false, readsZinc: false },
  'painted over zinc': { scales: ['ISO 4628-3'], passShare: limits.paintedShare, isDipped: false, readsZinc: false },
  'galvanized steel': { scales: ['ISO 10289'], passShare: limits.zincShare, isDipped: true, readsZinc: true },
  'zinc-plated steel': { scales: ['ISO 10289'], passShare: limits.zincShare, isDipped: false, readsZinc: true },
  aluminium: { scales: [], isDipped: false, readsZinc: false },
}

/** White on steel that has no zinc to give it. */
export const isForeignWhite = ({ kind, material }: Pick<Spot, 'kind' | 'material'>): boolean => kind === 'white product' && (material === 'painted steel' || material === 'bare steel')

/** One grade from the area, with its span where the interval straddles an edge. */
export type AreaGrade =
  | { readonly scale: 'ISO 4628-3'; readonly degree: GradeSpan<DegreeOfRusting>; /** By the nearest nominal area. */ readonly nearest: DegreeOfRusting }
  | { readonly scale: 'ASTM D610'; readonly grade: GradeSpan<number>; readonly letter?: RustLetter }
  | { readonly scale: 'ISO 10289'; readonly rating: GradeSpan<number>; /** Beside the table, by the measured value. */ readonly formula?: number }
  | { readonly scale: 'ISO 10289, appearance'; readonly rating: GradeSpan<number> }
  | { readonly scale: 'IMO MSC.1/Circ.1330'; readonly condition: GradeSpan<CoatingCondition> }

/** Grades 10 and 0 of ASTM D610 carry no letter. */
const lettered = (grade: number, letter: RustLetter | undefined): { letter?: RustLetter } => (letter === undefined || grade === 10 || grade === 0 ? {} : { letter })

const gradeBy = (scale: AreaScale, percent: Ranged, together: readonly Spot[]): AreaGrade => {
  switch (scale) {
    case 'ISO 4628-3':
      return { scale, degree: gradeOver(percent, degreeOfRusting), nearest: nearestDegreeOfRusting(percent.value) }
    case 'ASTM D610':
      return { scale, grade: gradeOver(percent, rustGrade), ...lettered(rustGrade(percent.value), letterOf(together)) }
    case 'ISO 10289': {
      const formula = protectionFormula(percent.value)
      return { scale, rating: gradeOver(percent, protectionRating), ...(formula !== undefined && { formula }) }
    }
    default:
      return assertNever(scale)
  }
}

/** The grades a spot's share earns. White product is appearance only; edges and welds are rated apart, by the ships' rule; blisters have no grade here. */
export const areaGradesOf = (spot: Spot, percent: Ranged, together: readonly Spot[]): readonly AreaGrade[] => {
  const { scales, readsZinc } = materialRows[spot.material]
  if (spot.kind === 'blister') return []
  if (spot.kind === 'white product') return readsZinc ? [{ scale: 'ISO 10289, appearance', rating: gradeOver(percent, protectionRating) }] : []
  if (spot.kind === 'weld') return spot.material === 'aluminium' ? [] : [{ scale: 'IMO MSC.1/Circ.1330', condition: gradeOver(percent, (edgePercent) => coatingCondition({ edgePercent })) }]
  return scales.map((scale) => gradeBy(scale, percent, together))
}

/** Where each scale comes from. */
export const scaleSources: Readonly<Record<AreaGrade['scale'], readonly Source[]>> = {
  'ISO 4628-3': [from.degrees],
  'ASTM D610': [from.grades],
  'ISO 10289': [from.protection, from.rememberedEdges],
  'ISO 10289, appearance': [from.protection, from.rememberedEdges],
  'IMO MSC.1/Circ.1330': [from.tankCoating],
}
