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

/** Protection rating Rp 10 (best) to 0 of a galvanized face, from the percentage with corrosion of the base metal. */
export const protectionRating = (percent: number): number => gradeIn(protectionBands, 0, percent)

/** 3 (2 − log10 A), the formula printed beside the table; undefined at no corrosion. Source: ISO 10289 through GB/T 6461-2002. */
export const protectionFormula = (percent: number): number | undefined => (percent > 0 ? 3 * (2 - Math.log10(percent)) : undefined)
