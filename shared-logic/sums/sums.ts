import { balanceOf, type Balance } from '../balance/balance'
import { brakeSumsOf, type BrakeSums } from '../brakes/brake-sums'
import type { RefusalData } from '../contract/refusal'
import { couplingSumsOf, type CouplingSums } from '../coupling/coupling-sums'
import { exactly, type Bounded } from '../load/bounded'
import { loadItemsOf } from '../load/load-items'
import { limitsOf, smallestStaticOf, type LoadFigures } from '../load/limits'
import { loadSheetOf, totalOfItems, type HeldAgainst, type LoadSheet } from '../load/load-sheet'
import type { Rig } from '../rig/rig'
import type { RuleBook } from '../rules/rule-book'
import { tyreSumsOf, type TyreSums } from '../tyres/tyre-sums'
import { faultsOf, withoutFaults } from './check-input'
import { bandsFrom, bandsOf, type SumsSettings } from './settings'

/** All sums of one rig. Masses kg, lengths m, forces N, shares as fractions; what cannot be worked out is absent and its part says what it waits for. */
export interface Sums {
  readonly load: LoadSheet
  readonly balance: Balance
  readonly tyres: TyreSums
  readonly coupling: CouplingSums
  readonly brakes: BrakeSums
  /** Fields that cannot be right; no number rests on them. */
  readonly faults: readonly RefusalData[]
}

/** What rests on the most loaded axle: as weighed, else as reckoned; else between an even share and all of it. */
const worstAxleOf = ({ axleLoads, weighed, axles }: Balance, onAxles: Bounded | undefined): Bounded | undefined => {
  const each = weighed.find(({ eachAxle }) => eachAxle?.length === axles.count)?.eachAxle
  if (each && each.length > 0) return exactly(Math.max(...each.map(({ massKg }) => massKg)))
  if (axleLoads?.axlesKg) return exactly(Math.max(...axleLoads.axlesKg))
  if (axles.count === undefined || onAxles === undefined) return undefined
  return axles.count === 1 ? onAxles : { lowKg: onAxles.lowKg / axles.count, ...(onAxles.highKg !== undefined && { highKg: onAxles.highKg }) }
}

const half = (load: Bounded): Bounded => ({
  lowKg: load.lowKg / 2, ...(load.massKg !== undefined && { massKg: load.massKg / 2 }), ...(load.highKg !== undefined && { highKg: load.highKg / 2 }),
})

/** The most loaded tyre, as the tyres' own sums have it: weighed by itself where it was, for the two sides of an axle seldom weigh alike. */
const worstTyreOf = ({ loads }: TyreSums, worstAxle: Bounded | undefined): Bounded | undefined =>
  loads.length > 0 ? exactly(Math.max(...loads.map(({ loadKg }) => loadKg))) : worstAxle && half(worstAxle)

const withAxles = (balance: Balance, tyres: TyreSums, basis: LoadSheet['basis'], given: LoadFigures): HeldAgainst => {
  const axle = worstAxleOf(balance, given.axles)
  const tyre = worstTyreOf(tyres, axle)
  return { basis, figures: { ...given, ...(axle && { 'worst axle': axle }), ...(tyre && { tyre }) } }
}

/** What the newest whole weighing showed. */
const scalesOf = ({ weighed }: Balance): HeldAgainst['scales'] => {
  const newest = weighed.find(({ totalKg, couplingKg }) => totalKg !== undefined && couplingKg !== undefined)
  if (newest?.totalKg === undefined || newest.couplingKg === undefined) return undefined
  return { date: newest.date, figures: { total: exactly(newest.totalKg), axles: exactly(newest.totalKg - newest.couplingKg), coupling: exactly(newest.couplingKg) } }
}

/** The loads that limits are held against: reckoned where every line is known, else as last weighed, else as bounded. */
const figuresOf = (total: Bounded, balance: Balance, tyres: TyreSums): HeldAgainst => {
  const { lever, axleLoads, bounds } = balance
  const scales = scalesOf(balance)
  if (lever) {
    const couplingKg = axleLoads?.couplingKg ?? lever.couplingKg
    return { ...withAxles(balance, tyres, 'reckoned', { total, axles: exactly(lever.totalKg - couplingKg), coupling: exactly(couplingKg) }), ...(scales && { scales }) }
  }
  if (scales) return { ...withAxles(balance, tyres, 'weighed', scales.figures), weighedOn: scales.date }
  // Nothing is known of the share: the axles may carry all of it, as long as the coupling is not lifted.
  const coupling = bounds && { lowKg: bounds.least.couplingKg, highKg: bounds.most.couplingKg }
  return withAxles(balance, tyres, 'reckoned', { total, axles: { lowKg: 0, ...(total.highKg !== undefined && { highKg: total.highKg }) }, ...(coupling && { coupling }) })
}

/** Every sum of a rig by a rule book: load sheet, balance, tyres, coupling, brakes. Pure; a rig of any completeness. */
export const sumsOf = (given: Rig, ruleBook: RuleBook, wanted: SumsSettings): Sums => {
  const faults = faultsOf(given)
  const rig = withoutFaults(given, faults)
  const items = loadItemsOf(rig)
  const limits = limitsOf(rig.trailer, rig.couplingRatings ?? {}, ruleBook)
  const bands = bandsOf(wanted, ruleBook)
  const balance = balanceOf({ rig, items, bands, bandsFrom: bandsFrom(bands, ruleBook), smallestStaticKg: smallestStaticOf(limits)?.massKg, reserveWanted: wanted.reserve })
  const tyres = tyreSumsOf(rig, balance, ruleBook, wanted.reserve)
  const load = loadSheetOf(items, limits, figuresOf(totalOfItems(items), balance, tyres), wanted.reserve)
  return {
    load, balance, tyres, faults,
    coupling: couplingSumsOf(rig, load, balance, ruleBook),
    brakes: brakeSumsOf(rig, load, balance, ruleBook),
  }
}
