import type { Trailer } from '../rig/trailer'
import type { RuleBook, Source } from '../rules/rule-book'
import { fromMemory, published } from '../rules/cite'
import { loadOfIndexKg, passengerTyreOnTrailerKg } from '../rules/tyre-load-index'
import { trailerTyreLoadKg } from '../rules/us-tyre-loads'

export type Tyre = NonNullable<Trailer['tyre']>

/** What one tyre of the marking may carry, kg, and on whose word. */
export interface TyreCapacity {
  readonly massKg: number
  /** A passenger-car tyre counts for less on a trailer. */
  readonly reducedFromKg?: number
  readonly source: Source
}

const loadIndexTable = published('load index tables, two independent ones')
const trailerTyreTable = published('ST tyre load and pressure table')

/** 'P205/75R15': a passenger-car tyre by its marking. */
const isPassengerTyre = (size: string | undefined): boolean => /^P\s*\d{3}/i.test(size ?? '')

/**
 * By load index where it is known, else by size and load range of an ST tyre; undefined when neither tells.
 * Under the United States rule book a passenger-car tyre counts for its rating divided by 1.10. Source: 49 CFR 571.120 S5.1.2,
 * as quoted in the agency's letter of 17 November 1976.
 */
export const tyreCapacityOf = (tyre: Tyre | undefined, ruleBook: RuleBook): TyreCapacity | undefined => {
  if (tyre === undefined) return undefined
  const { loadIndex, size, loadRange } = tyre
  const byIndexKg = loadIndex === undefined ? undefined : loadOfIndexKg(loadIndex)
  if (byIndexKg !== undefined)
    return ruleBook === 'us' && isPassengerTyre(size)
      ? { massKg: passengerTyreOnTrailerKg(byIndexKg), reducedFromKg: byIndexKg, source: published('49 CFR 571.120', 'S5.1.2, letter of 17 November 1976') }
      : { massKg: byIndexKg, source: loadIndexTable }
  const byRangeKg = size === undefined || loadRange === undefined ? undefined : trailerTyreLoadKg(size, loadRange)
  return byRangeKg === undefined ? undefined : { massKg: byRangeKg, source: loadRange === 'F' ? fromMemory('ST tyre load range F') : trailerTyreTable }
}
