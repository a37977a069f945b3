import type { Rig } from '../rig/rig'
import type { Applies } from './check'
import { underRuleBook, type Condition } from './equipment'

/** A test of one fact of the rig: 'unknown' while the fact is. */
export const ifKnown = <Fact>(factOf: (rig: Rig) => Fact | undefined, holds: (fact: Fact) => boolean): Condition => {
  const applies = (rig: Rig): Applies => {
    const fact = factOf(rig)
    return fact === undefined ? 'unknown' : holds(fact)
  }
  return applies
}

export const underUs: Condition = underRuleBook('us')
export const underEu: Condition = underRuleBook('eu')

/** A boat described lies on the trailer; without one it is not known, unless the register says so. */
export const carriesBoat: Condition = ({ boat, trailer }) => boat !== undefined || (trailer.carriesBoat ?? 'unknown')
