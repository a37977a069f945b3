import { standardGravity } from '../balance/load-transfer'
import type { CouplingRatings } from '../rig/loading'
import type { Trailer } from '../rig/trailer'
import { isOver } from '../rules/beyond'
import { classLimitKg, isCouplerClass } from '../rules/coupler-classes'
import type { RuleBook } from '../rules/rule-book'
import type { Verdict } from '../survey/verdict'
import { tyreCapacityOf } from '../tyres/tyre-capacity'
import type { Bounded } from './bounded'

/** What a limit is held against: everything, what rests on all axles, on the most loaded axle, on its tyres, or on the coupling. */
export type LoadOn = 'total' | 'axles' | 'worst axle' | 'tyre' | 'coupling'

export const limitIds = [
  'maximum mass', 'axles together', 'one axle', 'tyres together', 'one tyre', 'coupler class', 'coupler', 'ball', 'hitch', 'tow vehicle', 'chains',
  'coupler, coupling load', 'ball, coupling load', 'hitch, coupling load', 'tow vehicle, coupling load',
] as const
export type LimitId = (typeof limitIds)[number]

/** One limit of trailer, tyres, coupling or tow vehicle. `ratingKg` absent: not known, `field` says which number it waits for. */
export interface Limit {
  readonly id: LimitId
  readonly on: LoadOn
  readonly ratingKg?: number
  readonly field: string
}

/** The loads the limits are held against; absent while nothing can be said of them. */
export type LoadFigures = Readonly<Partial<Record<LoadOn, Bounded>>>

/** 'waits': a number is missing, and its bounds do not settle it either. */
export type LimitStanding = 'within' | 'little reserve' | 'over' | 'waits'

export type LimitVerdict = Extract<Verdict, 'pass' | 'advisory' | 'fail' | 'not seen'>
const verdictOf: Readonly<Record<LimitStanding, LimitVerdict>> = { within: 'pass', 'little reserve': 'advisory', over: 'fail', waits: 'not seen' }

/** A limit with what rests on it. Reserve as a share of the rating, negative when over; absent while the load is only bounded. */
export interface LimitLine {
  readonly limit: Limit
  readonly load?: Bounded
  readonly reserveKg?: number
  readonly reserveShare?: number
  readonly standing: LimitStanding
  readonly verdict: LimitVerdict
}

const standingOf = (loadKg: number, ratingKg: number, reserveWanted: number): Exclude<LimitStanding, 'waits'> => {
  if (isOver(loadKg, ratingKg)) return 'over'
  return isOver(loadKg, ratingKg * (1 - reserveWanted)) ? 'little reserve' : 'within'
}

/** Bounds settle it when both ends come to the same, or the low end is over already. */
const standingOfBounds = ({ lowKg, highKg }: Bounded, ratingKg: number, reserveWanted: number): LimitStanding => {
  const atLeast = standingOf(lowKg, ratingKg, reserveWanted)
  if (atLeast === 'over') return 'over'
  return highKg !== undefined && standingOf(highKg, ratingKg, reserveWanted) === atLeast ? atLeast : 'waits'
}

/** One limit against its load. Reserve counted as a share of the rating. Common practice, no source. */
export const lineOf = (limit: Limit, figures: LoadFigures, reserveWanted: number): LimitLine => {
  const load = figures[limit.on]
  const { ratingKg } = limit
  const stands = (standing: LimitStanding) => ({ limit, ...(load && { load }), standing, verdict: verdictOf[standing] })
  if (load === undefined || ratingKg === undefined) return stands('waits')
  if (load.massKg === undefined) return stands(standingOfBounds(load, ratingKg, reserveWanted))
  return { ...stands(standingOf(load.massKg, ratingKg, reserveWanted)), reserveKg: ratingKg - load.massKg, reserveShare: 1 - load.massKg / ratingKg }
}

const limit = (id: LimitId, on: LoadOn, ratingKg: number | undefined, field: string): Limit => ({ id, on, field, ...(ratingKg !== undefined && { ratingKg }) })

/** Greatest trailer mass of the coupler's class; couplers without a class are rated by their own plate alone. */
const classKg = ({ coupler }: Trailer): number | undefined => (coupler !== undefined && isCouplerClass(coupler) ? classLimitKg(coupler) : undefined)

const trailerLimits = (trailer: Trailer, ruleBook: RuleBook): Limit[] => {
  const { axleCount, axleRatingKg, tyre } = trailer
  const each = tyreCapacityOf(tyre, ruleBook)?.massKg
  const times = (one: number | undefined, count: number): number | undefined => (one === undefined || axleCount === undefined ? undefined : one * axleCount * count)
  const waitsForAxles = (field: string, one: number | undefined): string => (one !== undefined && axleCount === undefined ? 'trailer.axleCount' : field)
  return [
    limit('maximum mass', 'total', trailer.maximumMassKg, 'trailer.maximumMassKg'),
    limit('axles together', 'axles', times(axleRatingKg, 1), waitsForAxles('trailer.axleRatingKg', axleRatingKg)),
    ...((axleCount ?? 1) > 1 ? [limit('one axle', 'worst axle', axleRatingKg, 'trailer.axleRatingKg')] : []),
    limit('tyres together', 'axles', times(each, 2), waitsForAxles('trailer.tyre.loadIndex', each)),
    limit('one tyre', 'tyre', each, 'trailer.tyre.loadIndex'),
    ...(ruleBook === 'us' || classKg(trailer) !== undefined ? [limit('coupler class', 'total', classKg(trailer), 'trailer.coupler')] : []),
  ]
}

/** What all chains hold together. Source: 49 CFR 393.70(d) and the agency's guidance. One chain counts once when their number is not known. */
const chainsKg = ({ chainBreakingForceN, chainCount }: CouplingRatings): number | undefined =>
  chainBreakingForceN === undefined ? undefined : (chainBreakingForceN * (chainCount ?? 1)) / standardGravity

const couplingLimits = (ratings: CouplingRatings): Limit[] => [
  limit('coupler', 'total', ratings.couplerRatingKg, 'couplingRatings.couplerRatingKg'),
  limit('ball', 'total', ratings.ballRatingKg, 'couplingRatings.ballRatingKg'),
  limit('hitch', 'total', ratings.hitchRatingKg, 'couplingRatings.hitchRatingKg'),
  limit('tow vehicle', 'total', ratings.towVehicleRatingKg, 'couplingRatings.towVehicleRatingKg'),
  limit('chains', 'total', chainsKg(ratings), 'couplingRatings.chainBreakingForceN'),
  limit('coupler, coupling load', 'coupling', ratings.couplerStaticKg, 'couplingRatings.couplerStaticKg'),
  limit('ball, coupling load', 'coupling', ratings.ballStaticKg, 'couplingRatings.ballStaticKg'),
  limit('hitch, coupling load', 'coupling', ratings.hitchStaticKg, 'couplingRatings.hitchStaticKg'),
  limit('tow vehicle, coupling load', 'coupling', ratings.towVehicleStaticKg, 'couplingRatings.towVehicleStaticKg'),
]

/** Every limit the rig has or should have, whether its figure is known or not. Coupler class: SAE J684 as restated in COMAR 11.13.08.10. */
export const limitsOf = (trailer: Trailer, ratings: CouplingRatings, ruleBook: RuleBook): Limit[] => [...trailerLimits(trailer, ruleBook), ...couplingLimits(ratings)]

/** The smallest static load marked on coupler, ball, hitch or in the vehicle's handbook. */
export const smallestStaticOf = (limits: readonly Limit[]): { readonly id: LimitId; readonly massKg: number } | undefined => {
  const marked = limits.flatMap(({ id, on, ratingKg }) => (on === 'coupling' && ratingKg !== undefined ? [{ id, massKg: ratingKg }] : []))
  return marked.toSorted((a, b) => a.massKg - b.massKg)[0]
}
