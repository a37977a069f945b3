import type { Place } from './drawing'

/** Places that lie too close together to be tapped apart, as one. `of` in the order they were given. */
export interface Gathered extends Place {
  readonly of: readonly string[]
}

interface Pair {
  readonly a: Gathered
  readonly b: Gathered
  readonly apart: number
}

const closest = (places: readonly Gathered[]): Pair | undefined => {
  let best: Pair | undefined
  for (const [index, a] of places.entries())
    for (const b of places.slice(index + 1)) {
      const apart = Math.hypot(a.x - b.x, a.y - b.y)
      if (best === undefined || apart < best.apart) best = { a, b, apart }
    }
  return best
}

const together = (a: Gathered, b: Gathered): Gathered => {
  const of = [...a.of, ...b.of]
  const share = b.of.length / of.length
  return { id: of.join(' + '), of, x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }
}

/**
 * Gathers places until every two left are at least `apart` from each other, in drawing units; across, each stays within
 * `reach` of the middle, clear of what stands outside.
 */
export const gatherPlaces = (places: readonly Place[], apart: number, reach: number): Gathered[] => {
  let left = places.map(({ id, x, y }): Gathered => ({ id, x: Math.sign(x) * Math.min(Math.abs(x), reach), y, of: [id] }))
  for (let pair = closest(left); pair !== undefined && pair.apart < apart; pair = closest(left)) {
    const { a, b } = pair
    left = left.flatMap((each) => (each === a ? [together(a, b)] : each === b ? [] : [each]))
  }
  return left
}
