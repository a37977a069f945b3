/** Least boiling points of a grade of brake fluid, degC. `wet`: with 3.7 % water. */
interface BrakeFluidGrade {
  readonly dryC: number
  readonly wetC: number
  readonly silicone: boolean
}

/** Source: FMVSS 116 (49 CFR 571.116), as restated in two published tables. */
export const brakeFluidGrades = {
  'DOT 3': { dryC: 205, wetC: 140, silicone: false },
  'DOT 4': { dryC: 230, wetC: 155, silicone: false },
  'DOT 5': { dryC: 260, wetC: 180, silicone: true },
  'DOT 5.1': { dryC: 260, wetC: 180, silicone: false },
} as const satisfies Readonly<Record<string, BrakeFluidGrade>>
export type BrakeFluid = keyof typeof brakeFluidGrades

export const isBrakeFluid = (grade: string): grade is BrakeFluid => grade in brakeFluidGrades

/** Nearer than this to the wet minimum, K, the fluid is soon to be changed. Common practice, no source. */
export const nearWetMinimumK = 15

/** Months between changes. Common practice, no source. */
export const fluidMonths = { 'fresh water': 24, 'salt water': 12 } as const
