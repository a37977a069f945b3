interface Band<Grade> {
  /** Inclusive upper end, percent of the face. */
  readonly upToPercent: number
  readonly grade: Grade
}

/** Noise of division, far below any band. */
const noise = 1e-9

const gradeIn = <Grade>(bands: readonly Band<Grade>[], beyond: Grade, percent: number): Grade =>
  bands.find((band) => percent <= band.upToPercent + noise)?.grade ?? beyond

export type DegreeOfRusting = 0 | 1 | 2 | 3 | 4 | 5

/**
 * Nominal rusted areas of ISO 4628-3 as restated on an engineering reference page. The standard compares pictures and
 * gives no bands: the project takes the smallest degree whose nominal area is not below the measurement (common practice).
 */
const isoNominals: readonly Band<DegreeOfRusting>[] = [
  { upToPercent: 0, grade: 0 },
  { upToPercent: 0.05, grade: 1 },
  { upToPercent: 0.5, grade: 2 },
  { upToPercent: 1, grade: 3 },
  { upToPercent: 8, grade: 4 },
]

/** Degree of rusting Ri of a painted face, from the rusted percentage. */
export const degreeOfRusting = (percent: number): DegreeOfRusting => gradeIn(isoNominals, 5, percent)

/** The other way to read the nominals: nearest on a log scale, edges at their geometric means; Ri 5 taken as the mean of 40 and 50 %. */
const nearestNominals: readonly Band<DegreeOfRusting>[] = [
  { upToPercent: 0, grade: 0 },
  { upToPercent: Math.sqrt(0.05 * 0.5), grade: 1 },
  { upToPercent: Math.sqrt(0.5), grade: 2 },
  { upToPercent: Math.sqrt(8), grade: 3 },
  { upToPercent: Math.sqrt(8 * Math.sqrt(40 * 50)), grade: 4 },
]

/** Ri by the nearest nominal area: told beside the degree where the two differ, for neither is the standard's own. */
export const nearestDegreeOfRusting = (percent: number): DegreeOfRusting => gradeIn(nearestNominals, 5, percent)

/** Rust grades of ASTM D610-08 (2012), Table 1: upper ends inclusive. */
const d610Bands: readonly Band<number>[] = [
  { upToPercent: 0.01, grade: 10 },
  { upToPercent: 0.03, grade: 9 },
  { upToPercent: 0.1, grade: 8 },
  { upToPercent: 0.3, grade: 7 },
  { upToPercent: 1, grade: 6 },
  { upToPercent: 3, grade: 5 },
  { upToPercent: 10, grade: 4 },
  { upToPercent: 16, grade: 3 },
  { upToPercent: 33, grade: 2 },
  { upToPercent: 50, grade: 1 },
]

/** Rust grade 10 (best) to 0 of a painted face, from the rusted percentage. */
export const rustGrade = (percent: number): number => gradeIn(d610Bands, 0, percent)

/** Protection ratings of ISO 10289, as printed in GB/T 6461-2002 (the edges 2.5 and 5 from memory). */
const protectionBands: readonly Band<number>[] = [
  { upToPercent: 0, grade: 10 },
  { upToPercent: 0.1, grade: 9 },
  { upToPercent: 0.25, grade: 8 },
  { upToPercent: 0.5, grade: 7 },
  { upToPercent: 1, grade: 6 },
  { upToPercent: 2.5, grade: 5 },
  { upToPercent: 5, grade: 4 },
  { upToPercent: 10, grade: 3 },
  { upToPercent: 25, grade: 2 },
  { upToPercent: 50, grade: 1 },
]

/** Rating 10 (best) to 0 of ISO 10289: protection Rp from the percentage with corrosion of the base metal, appearance RA from that of the defect. */
export const protectionRating = (percent: number): number => gradeIn(protectionBands, 0, percent)

/** 3 (2 − log10 A), the formula printed beside the table; undefined at no corrosion. Source: ISO 10289 through GB/T 6461-2002. */
export const protectionFormula = (percent: number): number | undefined => (percent > 0 ? 3 * (2 - Math.log10(percent)) : undefined)

export const coatingConditions = ['good', 'fair', 'poor'] as const
export type CoatingCondition = (typeof coatingConditions)[number]

/** Percentages of one coating: of the face with spot rust, of the face under hard scale, of the length of edges and welds. */
export interface CoatingBreakdown {
  readonly rustPercent?: number
  readonly scalePercent?: number
  readonly edgePercent?: number
}

/** Condition of a ship's tank coating, IMO MSC.1/Circ.1330, 4.1.3: an analogue that rates edges and welds apart, which ISO 4628-3 leaves out. */
export const coatingCondition = ({ rustPercent = 0, scalePercent = 0, edgePercent = 0 }: CoatingBreakdown): CoatingCondition => {
  if (rustPercent > 20 + noise || scalePercent >= 10 - noise || edgePercent > 50 + noise) return 'poor'
  return rustPercent >= 3 - noise || scalePercent > 0 || edgePercent >= 20 - noise ? 'fair' : 'good'
}

/** Edges of the scales, percent of the face, for telling when the next grade is reached. */
export const gradeEdges = {
  'ISO 4628-3': isoNominals.map(({ upToPercent }) => upToPercent),
  'ASTM D610': d610Bands.map(({ upToPercent }) => upToPercent),
  'ISO 10289': protectionBands.map(({ upToPercent }) => upToPercent),
} as const
