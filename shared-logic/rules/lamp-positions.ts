import type { Trailer } from '../rig/trailer'
import type { LampRow } from './lamp-row'
import { isRequired, lampTable } from './lamp-table'
import type { RuleBook } from './rule-book'

/** A lamp that may be required is asked about too: its judge says what the answer waits for. */
const asked = (rows: readonly LampRow[], trailer: Trailer): string[] =>
  rows.filter((row) => isRequired(row, trailer) !== false).map((row) => row.position)

export const lampPositions = (trailer: Trailer, ruleBook: RuleBook): string[] => asked(lampTable(ruleBook).lamps, trailer)
export const reflectorPositions = (trailer: Trailer, ruleBook: RuleBook): string[] => asked(lampTable(ruleBook).reflectors, trailer)
