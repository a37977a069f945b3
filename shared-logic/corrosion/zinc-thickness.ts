/** Least zinc on new work, m. `local`: the mean of one reference area, here the lowest reading; `mean`: over all of them. */
export interface ZincMinimum {
  readonly localM: number
  readonly meanM: number
}

interface SteelClass extends ZincMinimum {
  /** Whether this thickness of steel, mm, falls into the class. */
  readonly holds: (steelMm: number) => boolean
}

const µm = 1e-6
/** Noise of unit conversion: 1/8 in is not exactly 3.175 mm in floating point. */
const noiseMm = 1e-6

/** ISO 1461:2009, coatings on parts that are not centrifuged, as a galvanizer's page restates the table. The 2022 edition was not read. */
const isoClasses: readonly SteelClass[] = [
  { holds: (mm) => mm > 6 + noiseMm, localM: 70 * µm, meanM: 85 * µm },
  { holds: (mm) => mm > 3 + noiseMm, localM: 55 * µm, meanM: 70 * µm },
  { holds: (mm) => mm >= 1.5 - noiseMm, localM: 45 * µm, meanM: 55 * µm },
  { holds: () => true, localM: 35 * µm, meanM: 45 * µm },
]

/** ISO 1461:2009: least zinc on new steel of this thickness, m. */
export const isoZincMinimum = (steelM: number): ZincMinimum => {
  const found = isoClasses.find(({ holds }) => holds(steelM * 1000))
  if (!found) throw new Error('no class of ISO 1461 for this steel')
  return { localM: found.localM, meanM: found.meanM }
}

export const a123Categories = ['structural shapes', 'strip and bar', 'pipe and tubing', 'wire'] as const
export type A123Category = (typeof a123Categories)[number]

/** Columns of the table, mm: below 1.6, to below 3.2, up to 4.8, to below 6.4, to below 16, from 16 on. */
const a123Columns: readonly ((mm: number) => boolean)[] = [
  (mm) => mm < 1.6 - noiseMm, (mm) => mm < 3.2 - noiseMm, (mm) => mm <= 4.8 + noiseMm, (mm) => mm < 6.4 - noiseMm, (mm) => mm < 16 - noiseMm, () => true,
]

/** ASTM A123/A123M-17, Table 1, coating grades (their number is µm), as a galvanizer's page restates it; shapes and bars also a steel supplier's. */
const a123Grades: Readonly<Record<A123Category, readonly number[]>> = {
  'structural shapes': [45, 65, 75, 75, 100, 100],
  'strip and bar': [45, 65, 75, 75, 75, 100],
  'pipe and tubing': [45, 45, 75, 75, 75, 75],
  wire: [35, 50, 60, 65, 80, 80],
}

/** Coating grade of ASTM A123 for new steel of this thickness: the least average, µm. */
export const a123Grade = (category: A123Category, steelM: number): number => a123Grades[category][a123Columns.findIndex((holds) => holds(steelM * 1000))] ?? 100

/**
 * g/m2 for each µm of zinc. Three densities are in use: ASTM A653/A924 for sheet, ASTM A123 Table 2,
 * and about 7.2 behind the pairs printed in ISO 1461 (worked out from those, not printed there).
 */
const gramsPerMicrometre = { 'ISO 1461': 7.2, 'ASTM A123': 7.067, 'zinc sheet': 7.14 } as const
export type ZincMassRule = keyof typeof gramsPerMicrometre

/** Mass of a zinc coating, kg/m2, by the rule named. */
export const zincMassKgPerM2 = (thicknessM: number, rule: ZincMassRule): number => (thicknessM / µm) * gramsPerMicrometre[rule] / 1000

/** Thickness, m, of a zinc coating weighed in kg/m2, by the rule named. */
export const zincThicknessM = (massKgPerM2: number, rule: ZincMassRule): number => ((massKgPerM2 * 1000) / gramsPerMicrometre[rule]) * µm

/** Readings of one place against the minimum for new work. */
export interface ZincReadings {
  readonly count: number
  readonly lowestM: number
  readonly meanM: number
  /** Absent while the thickness of the steel is not known, or the zinc was not dipped. */
  readonly minimum?: ZincMinimum & {
    readonly lowestKept: boolean
    readonly meanKept: boolean
    /** ASTM A123 for a tube and for a shape or plate of that thickness, µm: which of the two the member is, the record does not say. */
    readonly a123TubeM: number
    readonly a123ShapeM: number
  }
}

const noise = 1e-12
const atLeast = (value: number, minimum: number): boolean => value >= minimum - noise

const againstMinimum = (lowestM: number, meanM: number, steelM: number): NonNullable<ZincReadings['minimum']> => {
  const minimum = isoZincMinimum(steelM)
  return {
    ...minimum, lowestKept: atLeast(lowestM, minimum.localM), meanKept: atLeast(meanM, minimum.meanM),
    a123TubeM: a123Grade('pipe and tubing', steelM) * µm, a123ShapeM: a123Grade('structural shapes', steelM) * µm,
  }
}

/** Lowest and mean of the gauge's readings; against ISO 1461 where the zinc was dipped and the steel's thickness is known. Undefined without a reading. */
export const zincReadings = (readingsM: readonly number[] | undefined, dippedSteelM?: number): ZincReadings | undefined => {
  if (readingsM === undefined || readingsM.length === 0) return undefined
  const lowestM = Math.min(...readingsM)
  const meanM = readingsM.reduce((sum, reading) => sum + reading, 0) / readingsM.length
  return { count: readingsM.length, lowestM, meanM, ...(dippedSteelM !== undefined && { minimum: againstMinimum(lowestM, meanM, dippedSteelM) }) }
}
