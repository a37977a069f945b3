import fc from 'fast-check'

const steps = 1_000_000_000

/**
 * A number anywhere between two others, ends included. `fc.double` draws evenly among the floating-point numbers there are, so that a range
 * that begins at zero is nearly always next to nothing: no rig at all.
 */
export const evenly = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: steps }).map((step) => min + ((max - min) * step) / steps)
