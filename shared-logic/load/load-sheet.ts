import { neededRatingKg } from '../rules/ratings'
import { together, type Bounded } from './bounded'
import type { LoadItem } from './load-items'
import { lineOf, type Limit, type LimitId, type LimitLine, type LoadFigures } from './limits'

/** Total of the load; `waitsFor` names the masses not known yet. */
export interface Total extends Bounded {
  readonly waitsFor: readonly string[]
}

/** The limit that carries least, whatever the load is; `underPlateKg`: by how much less than the rating plate says. */
export interface Narrowest {
  readonly id: LimitId
  readonly ratingKg: number
  readonly underPlateKg?: number
}

/** The load against every limit, whether its figure is known or not. */
export interface LoadSheet {
  readonly items: readonly LoadItem[]
  readonly total: Total
  /** What the limits are held against: sums of the lines, or the newest weighing where a line is not known. */
  readonly basis: 'reckoned' | 'weighed'
  /** Day of that weighing. */
  readonly weighedOn?: string
  readonly lines: readonly LimitLine[]
  /** The same limits against the newest weighing, where the lines above are reckoned. Scales decide: what is only reckoned fails nothing that they found within. */
  readonly byScales?: { readonly date: string; readonly lines: readonly LimitLine[] }
  /** The limit with the least reserve; absent while none can be worked out. */
  readonly governing?: LimitId
  readonly narrowest?: Narrowest
  /** With every tank full, and the smallest maximum mass that carries that with the reserve wanted, kg. */
  readonly fullKg?: number
  readonly smallestRatingKg?: number
  readonly reserveWanted: number
  /** Ratings that are not known: dotted paths. */
  readonly limitsWaitFor: readonly string[]
}

/** What the limits are held against. */
export interface HeldAgainst extends Pick<LoadSheet, 'basis' | 'weighedOn'> {
  readonly figures: LoadFigures
  /** What the newest weighing showed, where the figures are reckoned. */
  readonly scales?: { readonly date: string; readonly figures: LoadFigures }
}

export const totalOfItems = (items: readonly LoadItem[]): Total => ({ ...together(items), waitsFor: items.flatMap(({ massWaitsFor }) => massWaitsFor) })

const fullOf = (items: readonly LoadItem[]): number | undefined =>
  items.reduce<number | undefined>((sum, { fullKg }) => (sum === undefined || fullKg === undefined ? undefined : sum + fullKg), 0)

/** Of limits held against everything or against what rests on the axles, the smallest. */
const narrowestOf = (limits: readonly Limit[]): Narrowest | undefined => {
  const known = limits.flatMap(({ id, on, ratingKg }) => ((on === 'total' || on === 'axles') && ratingKg !== undefined ? [{ id, ratingKg }] : []))
  const least = known.toSorted((a, b) => a.ratingKg - b.ratingKg)[0]
  const plateKg = known.find(({ id }) => id === 'maximum mass')?.ratingKg
  return least && { ...least, ...(plateKg !== undefined && plateKg > least.ratingKg && { underPlateKg: plateKg - least.ratingKg }) }
}

const leastReserve = (lines: readonly LimitLine[]): LimitLine | undefined =>
  lines.filter(({ reserveShare }) => reserveShare !== undefined).toSorted((a, b) => (a.reserveShare ?? 0) - (b.reserveShare ?? 0))[0]

/** A fail that is only reckoned is advice where scales showed otherwise. */
const besideScales = (line: LimitLine, weighed: readonly LimitLine[] | undefined): LimitLine =>
  line.verdict === 'fail' && weighed?.some(({ limit, verdict }) => limit.id === line.limit.id && verdict !== 'fail') === true ? { ...line, verdict: 'advisory' } : line

/**
 * The load sheet. `figures` of the loads: what rests where, kg; `reserveWanted`: share of the rating to keep in hand.
 * The smallest rating is what carries the boat full on this trailer's own mass. Common practice, no source (reserve).
 */
export const loadSheetOf = (items: readonly LoadItem[], limits: readonly Limit[], { figures, basis, weighedOn, scales }: HeldAgainst, reserveWanted: number): LoadSheet => {
  const byScales = scales && { date: scales.date, lines: limits.flatMap((limit) => (scales.figures[limit.on] && limit.ratingKg !== undefined ? [lineOf(limit, scales.figures, reserveWanted)] : [])) }
  const lines = limits.map((limit) => besideScales(lineOf(limit, figures, reserveWanted), byScales?.lines))
  const governing = leastReserve(lines)
  const narrowest = narrowestOf(limits)
  const fullKg = fullOf(items)
  return {
    items, total: totalOfItems(items), basis, lines, reserveWanted,
    ...(weighedOn !== undefined && { weighedOn }), ...(byScales && { byScales }),
    ...(governing && { governing: governing.limit.id }),
    ...(narrowest && { narrowest }),
    ...(fullKg !== undefined && { fullKg, smallestRatingKg: neededRatingKg(fullKg, reserveWanted, 'of the rating') }),
    limitsWaitFor: [...new Set(limits.filter(({ ratingKg }) => ratingKg === undefined).map(({ field }) => field))],
  }
}
