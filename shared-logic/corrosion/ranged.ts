/** A measured value with the ends of its interval of about 95 %; all three alike where it counts as exact. */
export interface Ranged {
  readonly value: number
  readonly low: number
  readonly high: number
}

export const exactly = (value: number): Ranged => ({ value, low: value, high: value })

/** An interval that reaches neither below nothing nor above `most`. */
export const within = (value: number, uncertainty: number, most = Number.POSITIVE_INFINITY): Ranged => ({
  value, low: Math.max(0, value - uncertainty), high: Math.min(most, value + uncertainty),
})

export const scaled = ({ value, low, high }: Ranged, by: number): Ranged => ({ value: value * by, low: low * by, high: high * by })

/** Added end to end: errors of one person with one scale go the same way, so they are not taken to cancel. The cautious sum. */
export const added = (all: readonly Ranged[]): Ranged =>
  all.reduce((sum, each) => ({ value: sum.value + each.value, low: sum.low + each.low, high: sum.high + each.high }), exactly(0))

/** What a grade may be: by the measured value, and by either end of its interval. `worst` is the one that counts. */
export interface GradeSpan<Grade> {
  readonly mildest: Grade
  readonly measured: Grade
  readonly worst: Grade
}

/** Grades all three of a value that is worse the higher it is. */
export const gradeOver = <Grade>({ value, low, high }: Ranged, grade: (of: number) => Grade): GradeSpan<Grade> => ({ mildest: grade(low), measured: grade(value), worst: grade(high) })
