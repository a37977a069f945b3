/** One line of `npm run bench`. */
export interface BenchLine {
  readonly name: string
  /** With `ok`, undefined where it could not be measured on this machine. */
  readonly value: number | undefined
  readonly unit: string
  readonly budget: string
  readonly ok: boolean | undefined
}

/** The value at a share of the way through them, in order: 0.5 is the middle one. NaN for none. */
export const atShare = (values: readonly number[], share: number): number => values.toSorted((a, b) => a - b)[Math.min(Math.floor(values.length * share), values.length - 1)] ?? Number.NaN
