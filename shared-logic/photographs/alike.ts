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

const comparedTo = (a: Prepared, b: Prepared): Alike | undefined => {
  const { id } = b.photograph
  if (a.photograph.sha256 === b.photograph.sha256) return { id, isSame: true }
  return a.bits && b.bits && lookDistance(a.bits, b.bits) <= alikeWithinBits ? { id, isSame: false } : undefined
}

const sameFirst = (found: readonly Alike[]): Alike[] => [...found.filter(({ isSame }) => isSame), ...found.filter(({ isSame }) => !isSame)]

/** For each of a survey's photographs those that are the same or look alike: the same first, otherwise in their order. Those without any are left out. */
export const alikeAmong = (photographs: readonly Looked[]): ReadonlyMap<string, readonly Alike[]> => {
  const all = photographs.map(prepare)
  const found = new Map<string, readonly Alike[]>()
  for (const each of all) {
    const alike = all.flatMap((other) => (other === each ? [] : (comparedTo(each, other) ?? [])))
    if (alike.length > 0) found.set(each.photograph.id, sameFirst(alike))
  }
  return found
}

/** Which of a survey's photographs are the same as this one or look like it. */
export const alikeTo = (photograph: Looked, others: readonly Looked[]): Alike[] => {
  const own = prepare(photograph)
  return sameFirst(others.flatMap((other) => (other.id === photograph.id ? [] : (comparedTo(own, prepare(other)) ?? []))))
}
