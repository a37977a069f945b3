const fahrenheit = (degF: number): number => ((degF - 32) * 5) / 9
const fahrenheitSteps = (steps: number): number => (steps * 5) / 9

/**
 * Right end play of an adjusted hub, m: 0.001 to 0.010 in.
 * Source: a trailer maker's service manual as quoted in a forum; others ask 0.001 to 0.005 in. Not firm enough to fail a hub by.
 */
export const endPlayM = { least: 0.0000254, most: 0.000254 } as const

/**
 * Hub temperatures after a run. Source: published bearing and hub articles: below 150 F good, above 250 F stop;
 * 20 to 30 F above the other hubs is to be attended to; 15 to 20 F above the air is usual by one shop's count.
 */
export const hubGoodC = fahrenheit(150)
export const hubStopC = fahrenheit(250)
export const hubHotterK = fahrenheitSteps(20)
export const hubMuchHotterK = fahrenheitSteps(30)
export const hubOverAirK = fahrenheitSteps(20)

/** Middle value of the other hubs' temperatures. */
export const medianOf = (values: readonly number[]): number | undefined => {
  const sorted = values.toSorted((a, b) => a - b)
  const upper = sorted[Math.floor(sorted.length / 2)]
  const lower = sorted[Math.ceil(sorted.length / 2) - 1]
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2
}

/** Wheel bearings are serviced yearly or after 12,000 miles, whichever comes first. Source: published bearing and hub articles. */
export const bearingMonths = 12
export const bearingDistanceM = 19_000_000
