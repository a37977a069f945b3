/** Seeded numbers: the same seed gives the same scene to the last bit, on any machine. */
export interface Chance {
  /** 0 up to, not including, 1. */
  next(): number
  between(low: number, high: number): number
  /** Whole number from 0 up to, not including, `count`. */
  below(count: number): number
  happens(probability: number): boolean
  pick<T>(choices: readonly T[]): T
  /** Spread evenly on a log scale: as many small as large. */
  logBetween(low: number, high: number): number
}

/** Mulberry32, after a scramble that keeps neighbouring seeds from resembling one another. */
export function chanceOf(seed: number): Chance {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
  for (let i = 0; i < 4; i += 1) next()
  const between = (low: number, high: number): number => low + (high - low) * next()
  return {
    next,
    between,
    below: (count) => Math.floor(next() * count),
    happens: (probability) => next() < probability,
    pick: (choices) => {
      const chosen = choices[Math.floor(next() * choices.length)]
      if (chosen === undefined) throw new Error('nothing to pick from')
      return chosen
    },
    logBetween: (low, high) => low * (high / low) ** next(),
  }
}
