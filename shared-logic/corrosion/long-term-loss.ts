/** Exponents of ISO 9224:2012, Table 3, as transcribed: `average` (B1) of the test data, `cautious` (B2) with their scatter added (its meaning from memory). */
export const lossExponents = {
  'carbon steel': { average: 0.523, cautious: 0.575 },
  zinc: { average: 0.813, cautious: 0.873 },
  copper: { average: 0.667, cautious: 0.726 },
  aluminium: { average: 0.728, cautious: 0.807 },
} as const

/** Years after which the loss goes on evenly, with the slope it has then. */
const straightFromYears = 20

/**
 * Loss after `years`, in the unit of `firstYear`: firstYear · years^b up to 20 years, straight on from there (ISO 9224:2012).
 * The plain power beyond 20 years, as a transcribed table has it, would be the milder figure and is not used.
 */
export const lossAfter = (firstYear: number, years: number, exponent: number): number => {
  if (years <= straightFromYears) return firstYear * years ** exponent
  return firstYear * (straightFromYears ** exponent + exponent * straightFromYears ** (exponent - 1) * (years - straightFromYears))
}

/** The other way round: years until `loss` is reached. */
export const yearsToLose = (firstYear: number, loss: number, exponent: number): number => {
  const atBend = firstYear * straightFromYears ** exponent
  if (loss <= atBend) return (loss / firstYear) ** (1 / exponent)
  return straightFromYears + (loss - atBend) / (firstYear * exponent * straightFromYears ** (exponent - 1))
}

/** Years until another `thickness` is gone, from the present age on. All in the same unit of length. */
export const yearsLeftByPower = (firstYear: number, ageYears: number, thickness: number, exponent: number): number =>
  yearsToLose(firstYear, lossAfter(firstYear, ageYears, exponent) + thickness, exponent) - ageYears

/** Years until it is gone at an even rate; with `keep` left standing. */
export const yearsLeftEvenly = (rate: number, thickness: number, keep = 0): number => Math.max(0, thickness - keep) / rate
