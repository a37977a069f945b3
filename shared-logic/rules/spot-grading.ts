import type { Spot } from '../survey/spot'
import { isOver, isUnder } from './beyond'
import { acrossOf, corrosionLimits as limits } from './corrosion-limits'

/** How a corroded place is graded, gravest first. */
const spotGrades = [
  'hole', 'deep pit', 'eaten away', 'pitted', 'galvanic', 'scale', 'aluminium pits', 'painted rust', 'red rust on zinc', 'bare steel', 'not measured', 'slight',
] as const
export type SpotGrade = (typeof spotGrades)[number]

export interface GradedSpot {
  readonly grade: SpotGrade
  readonly spot: Spot
  /** Corroded share of the face, 0 to 1, all spots of the place and material together; undefined while an area is not measured. */
  readonly share: number | undefined
  /** Depth over wall, 0 to 1. */
  readonly depth: number | undefined
}

const samePlace = (a: Spot, b: Spot): boolean => a.material === b.material && a.place.toLowerCase() === b.place.toLowerCase()

/** White product on zinc or aluminium is not corrosion of the base metal. */
const isBaseMetal = (spot: Spot): boolean => spot.kind !== 'white product'

/**
 * Corroded share of a face. Spots of one place add up; where they name different faces the smallest is taken, which is
 * the cautious reading. At most 1.
 */
const corrodedShare = (spot: Spot, spots: readonly Spot[]): number | undefined => {
  const together = spots.filter((other) => samePlace(other, spot) && isBaseMetal(other) === isBaseMetal(spot))
  const faces = together.flatMap(({ faceAreaM2 }) => (faceAreaM2 === undefined ? [] : [faceAreaM2]))
  const areas = together.flatMap(({ areaM2 }) => (areaM2 === undefined ? [] : [areaM2]))
  if (faces.length === 0 || areas.length < together.length) return undefined
  return Math.min(1, areas.reduce((sum, area) => sum + area, 0) / Math.min(...faces))
}

const gradeByDepth = (spot: Spot, depth: number): SpotGrade | undefined => {
  if (isOver(depth, limits.pitFail)) return 'deep pit'
  if (spot.material === 'aluminium') return depth > 0 ? 'aluminium pits' : undefined
  return isUnder(depth, limits.lossAdvisory) ? undefined : 'pitted'
}

/** By what it is, whatever its share. */
const gradeByKind = (spot: Spot): SpotGrade | undefined => {
  if (spot.kind === 'hole') return 'hole'
  if (spot.kind === 'galvanic' || spot.kind === 'crevice') return 'galvanic'
  if (spot.kind === 'pitting') {
    if (spot.material === 'aluminium') return 'aluminium pits'
    return spot.areaM2 !== undefined && isOver(acrossOf(spot.areaM2), limits.eatenAcrossM) ? 'eaten away' : 'pitted'
  }
  return spot.kind === 'scale' ? 'scale' : undefined
}

const gradeByShare = (spot: Spot, share: number | undefined): SpotGrade => {
  if (spot.kind === 'white product' || spot.material === 'aluminium') return 'slight'
  if (spot.material === 'bare steel') return 'bare steel'
  if (spot.material === 'galvanized steel' && spot.areaM2 !== undefined && isOver(spot.areaM2, limits.bareSpotM2)) return 'red rust on zinc'
  if (share === undefined) return 'not measured'
  if (spot.material === 'painted steel') return isOver(share, limits.paintedShare) ? 'painted rust' : 'slight'
  return isOver(share, limits.galvanizedShare) ? 'red rust on zinc' : 'slight'
}

const graver = (a: SpotGrade, b: SpotGrade): SpotGrade => (spotGrades.indexOf(a) <= spotGrades.indexOf(b) ? a : b)

/** Grades one corroded place among the others of the same member: the gravest of what depth, kind and share say. */
export const gradeSpot = (spot: Spot, spots: readonly Spot[]): GradedSpot => {
  const share = corrodedShare(spot, spots)
  const depth = spot.pitDepthM === undefined || spot.wallM === undefined ? undefined : spot.pitDepthM / spot.wallM
  const byDepth = depth === undefined ? undefined : gradeByDepth(spot, depth)
  const byKind = gradeByKind(spot)
  const certain = [byDepth, byKind].filter((grade) => grade !== undefined)
  const grade = certain.length === 0 ? gradeByShare(spot, share) : certain.reduce(graver)
  return { grade, spot, share, depth }
}

/** The gravest of several; undefined for none. The first of equals. */
export const gravestSpot = (spots: readonly Spot[]): GradedSpot | undefined =>
  spots.map((spot) => gradeSpot(spot, spots)).toSorted((a, b) => spotGrades.indexOf(a.grade) - spotGrades.indexOf(b.grade) || (b.share ?? 0) - (a.share ?? 0))[0]
