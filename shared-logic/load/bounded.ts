/**
 * A mass that is known, or only bounded, kg. `massKg` is there when it is known; `highKg` is absent while nothing bounds it
 * from above: "at least `lowKg`".
 */
export interface Bounded {
  readonly massKg?: number
  readonly lowKg: number
  readonly highKg?: number
}

export const exactly = (massKg: number): Bounded => ({ massKg, lowKg: massKg, highKg: massKg })

/** The sum; known when every part is. */
export const together = (parts: readonly Bounded[]): Bounded => {
  const massKg = sumIfAll(parts.map((part) => part.massKg))
  const highKg = sumIfAll(parts.map((part) => part.highKg))
  return { ...(massKg !== undefined && { massKg }), lowKg: parts.reduce((sum, { lowKg }) => sum + lowKg, 0), ...(highKg !== undefined && { highKg }) }
}

const sumIfAll = (values: readonly (number | undefined)[]): number | undefined => {
  let total = 0
  for (const value of values) {
    if (value === undefined) return undefined
    total += value
  }
  return total
}
