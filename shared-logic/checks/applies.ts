import type { Rig } from '../rig/rig'
import type { Applies, Check } from './check'

/** A test of one fact of the rig: 'unknown' while the fact is. */
export const ifKnown = <Fact>(factOf: (rig: Rig) => Fact | undefined, holds: (fact: Fact) => boolean): NonNullable<Check['applies']> => {
  const applies = (rig: Rig): Applies => {
    const fact = factOf(rig)
    return fact === undefined ? 'unknown' : holds(fact)
  }
  return applies
}

export const underUs: NonNullable<Check['applies']> = (_rig, ruleBook) => ruleBook === 'us'
export const underEu: NonNullable<Check['applies']> = (_rig, ruleBook) => ruleBook === 'eu'

/** Without a boat in the rig's data it is not known whether one lies on the trailer. */
export const carriesBoat: NonNullable<Check['applies']> = (rig) => (rig.boat === undefined ? 'unknown' : true)
