import type { Photograph } from '../survey/records'
import { lookBitsOf, lookDistance, type LookBits } from './look-hash'

/**
 * Two pictures look alike when their fingerprints differ in no more bits than this, of 64. Coding, scaling and a cut of a
 * hundredth stay within it, different pictures differ in a dozen and more: tests/shared-logic/photographs/look-hash.test.ts.
 */
export const alikeWithinBits = 8

type Looked = Pick<Photograph, 'id' | 'sha256' | 'lookHash'>

export interface Alike {
  readonly id: string
  /** The very same picture, standing at two places; otherwise it only looks alike. */
  readonly isSame: boolean
}

interface Prepared {
  readonly photograph: Looked
  readonly bits: LookBits | undefined
}

const prepare = (photograph: Looked): Prepared => ({ photograph, bits: photograph.lookHash === undefined ? undefined : lookBitsOf(photograph.lookHash) })

/** How two are alike; undefined when they are not. */
const likenessOf = (a: Prepared, b: Prepared): 'same' | 'alike' | undefined => {
  if (a.photograph.sha256 === b.photograph.sha256) return 'same'
  return a.bits && b.bits && lookDistance(a.bits, b.bits) <= alikeWithinBits ? 'alike' : undefined
}

const sameFirst = (found: readonly Alike[]): Alike[] => [...found.filter(({ isSame }) => isSame), ...found.filter(({ isSame }) => !isSame)]

/** For each of a survey's photographs those that are the same or look alike: the same first, otherwise in their order. Those without any are left out. */
export const alikeAmong = (photographs: readonly Looked[]): ReadonlyMap<string, readonly Alike[]> => {
  const all = photographs.map(prepare)
  const found = new Map<string, Alike[]>()
  const note = (of: Prepared, other: Prepared, isSame: boolean): void => {
    const { id } = of.photograph
    found.set(id, [...(found.get(id) ?? []), { id: other.photograph.id, isSame }])
  }
  for (const [index, later] of all.entries())
    for (const earlier of all.slice(0, index)) {
      const likeness = likenessOf(earlier, later)
      if (likeness === undefined) continue
      note(earlier, later, likeness === 'same')
      note(later, earlier, likeness === 'same')
    }
  return new Map([...found].map(([id, alike]) => [id, sameFirst(alike)]))
}

/** Which of a survey's photographs are the same as this one or look like it. */
export const alikeTo = (photograph: Looked, others: readonly Looked[]): Alike[] => {
  const own = prepare(photograph)
  return sameFirst(others.filter(({ id }) => id !== photograph.id).flatMap((other) => {
    const likeness = likenessOf(own, prepare(other))
    return likeness === undefined ? [] : [{ id: other.id, isSame: likeness === 'same' }]
  }))
}
