import { catalogue } from '../../../shared-logic/checks/catalogue'
import { positionsOf } from '../../../shared-logic/checks/positions'
import type { Boat } from '../../../shared-logic/rig/boat'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import type { RuleBook } from '../../../shared-logic/rules/rule-book'

/** Positions at which a rig's equipment has a check asked, by check; none for a check it does not have. */
export const positionsAsked = (id: string, trailer: Trailer, ruleBook: RuleBook = 'us', boat?: Boat): readonly string[] => {
  const rig = { name: 'Rig', trailer, ...(boat && { boat }) }
  return catalogue.filter((check) => check.id === id && check.applies?.(rig, ruleBook) !== false).flatMap((check) => positionsOf(check.positions, rig, ruleBook))
}

/** Ids of all checks a trailer's equipment calls for. */
export const askedOf = (trailer: Trailer, ruleBook: RuleBook = 'us'): string[] =>
  catalogue.filter((check) => check.applies?.({ name: 'Rig', trailer }, ruleBook) !== false).map((check) => check.id)
