import type { Rig } from '../rig/rig'
import type { TieDown } from '../rig/tie-down'
import type { RuleBook, Source } from '../rules/rule-book'
import { adviceOn, type TieDownAdvisory } from './advise'
import { heldMassOf, type HeldMass } from './boat-mass'
import { holdIn, type DirectionHold, type HoldInputs, type ReckonedMass, type Standing } from './direction-hold'
import { aggregateOf, countOf, type AggregateSum, type CountSum } from './federal-rules'
import { frictionUsed, type FrictionUsed } from './friction'
import { pullDirections, type PullDirection } from './geometry'
import { methodsOf, type Method } from './methods'
import { plannedStrap, type PlannedStrap } from './planned-strap'
import { lashingSources } from './sources'
import { isTiedown } from './tiedowns'
import { ratingToBuyN, strapsThatWouldDo, type StrapsThatWouldDo } from './would-do'

/** The forces by one method, a row a direction, and what would do where a direction is not held. */
export interface MethodSum {
  readonly method: Method
  readonly directions: readonly DirectionHold[]
  readonly wouldDo: Readonly<Partial<Record<PullDirection, readonly StrapsThatWouldDo[]>>>
}

/** A rating for each strap fitted, N, so that all directions it works in and the aggregate are held by straps all alike. */
export interface StrapToBuy {
  readonly index: number
  readonly neededN: number
  /** Absent above the largest rating sold. */
  readonly ratedN?: number
}

/** What holds the boat on the trailer. All forces N, masses kg, angles rad. A benchmark: neither rule book binds private towing. */
export interface TieDownPlan {
  readonly ruleBook: RuleBook
  readonly boat: HeldMass
  /** Absent while not even a bound of the mass is known: then no forces are worked out. */
  readonly reckoned?: ReckonedMass
  readonly friction: FrictionUsed
  readonly straps: readonly PlannedStrap[]
  readonly advisories: readonly TieDownAdvisory[]
  /** The governing method first; empty without a mass. */
  readonly methods: readonly MethodSum[]
  /** A winch strap is recorded and left out of aggregate and number; in the forces it counts. */
  readonly winchLeftOut: boolean
  readonly aggregate?: AggregateSum
  readonly count?: CountSum
  /** The direction with the least share of its need held, by the governing method. */
  readonly weakest?: DirectionHold
  readonly toBuy: readonly StrapToBuy[]
  readonly standing: Standing
  /** Dotted paths of the fields the plan waits for. */
  readonly waitsFor: readonly string[]
  readonly sources: readonly Source[]
}

const reckonedOf = ({ mass: { massKg, highKg, lowKg } }: HeldMass): ReckonedMass | undefined => {
  if (massKg !== undefined) return { massKg, basis: 'exact' }
  if (highKg !== undefined) return { massKg: highKg, basis: 'at most' }
  return lowKg > 0 ? { massKg: lowKg, basis: 'at least' } : undefined
}

const sumBy = (method: Method, inputs: HoldInputs, ruleBook: RuleBook): MethodSum => {
  const directions = pullDirections.map((direction) => holdIn(direction, inputs, method))
  const open = directions.filter(({ standing }) => standing !== 'holds')
  return { method, directions, wouldDo: Object.fromEntries(open.map((hold) => [hold.direction, strapsThatWouldDo(hold, ruleBook, inputs.friction)])) }
}

const weakestOf = ({ directions }: MethodSum): DirectionHold | undefined =>
  directions.filter(({ standing }) => standing !== 'rests on the bow stop').toSorted((a, b) => a.share - b.share)[0]

/** Least share of its tension a strap holds with to be bought for a direction: a transom strap is not bought to hold sideways. Common practice, no source. */
const chiefFactor = 0.5

const toBuyOf = (straps: readonly PlannedStrap[], governing: MethodSum | undefined, aggregate: AggregateSum | undefined, ruleBook: RuleBook): StrapToBuy[] =>
  straps.flatMap(({ index }): StrapToBuy[] => {
    const isCounted = aggregate?.straps.some((line) => line.index === index) ?? false
    const works = governing?.directions.filter((hold) => hold.straps.some((part) => part.index === index && part.factor >= chiefFactor)) ?? []
    const needs = [...works.map(({ ratingEachN }) => ratingEachN ?? 0), isCounted ? (aggregate?.ratingEachN ?? 0) : 0]
    const neededN = Math.max(...needs)
    const ratedN = ratingToBuyN(ruleBook, neededN)
    return neededN > 0 ? [{ index, neededN, ...(ratedN !== undefined && { ratedN }) }] : []
  })

/**
 * The worst of what decides: by `us` the aggregate and the number, by `eu` the four directions along the road. The forces by
 * 49 CFR 393.102 and the upward benchmark in Europe inform, and do not decide: straps that meet the counting rules are taken to meet them.
 */
const standingOf = (ruleBook: RuleBook, governing: MethodSum | undefined, federal: readonly Standing[]): Standing => {
  const along = governing?.directions.filter(({ direction }) => direction !== 'up').map(({ standing }) => standing) ?? ['waits']
  const deciding = ruleBook === 'us' ? federal : along
  return (['short', 'waits', 'rests on the bow stop'] as const).find((standing) => deciding.includes(standing)) ?? 'holds'
}

const sourcesOf = (ruleBook: RuleBook, { source }: FrictionUsed, methods: readonly MethodSum[]): Source[] => [
  ...(ruleBook === 'us' ? [lashingSources.aggregate, lashingSources.weakestPart, lashingSources.count, lashingSources.dynamicFriction] : []),
  ...(methods[0]?.method.sources ?? []),
  ...(source ? [source] : []),
]

const fieldsWaitedFor = (boat: HeldMass, straps: readonly PlannedStrap[], rig: Rig, ruleBook: RuleBook): string[] => [
  ...boat.waitsFor,
  ...(straps.length === 0 ? ['tieDown.straps'] : straps.flatMap(({ waitsFor }) => waitsFor)),
  ...(ruleBook === 'us' && rig.boat && rig.boat.lengthM === undefined ? ['boat.lengthM'] : []),
]

/** The tie-down plan of a rig; pure, nothing guessed. With no strap recorded it tells what is needed and waits. */
export const tieDownPlanOf = (rig: Rig, ruleBook: RuleBook): TieDownPlan => {
  const tieDown: TieDown = rig.tieDown ?? { straps: [] }
  const straps = tieDown.straps.map(plannedStrap)
  const boat = heldMassOf(rig)
  const mass = reckonedOf(boat)
  const friction = frictionUsed(rig.trailer, tieDown)
  const blocks = tieDown.bowStopBlocks === true
  const inputs = mass && { straps, friction: friction.value, mass, bowStopBlocks: blocks, bowStopRatedN: tieDown.bowStopRatedN }
  const methods = inputs ? methodsOf[ruleBook].map((method) => sumBy(method, inputs, ruleBook)) : []
  const tiedowns = straps.filter(({ strap }) => isTiedown(strap, tieDown))
  const aggregate = ruleBook === 'us' ? aggregateOf(tiedowns, mass) : undefined
  const count = ruleBook === 'us' ? countOf(tiedowns.length, rig.boat?.lengthM, mass, blocks) : undefined
  const weakest = methods[0] && weakestOf(methods[0])
  return {
    ruleBook, boat, friction, straps, methods, winchLeftOut: tiedowns.length < straps.length,
    ...(mass && { reckoned: mass }),
    advisories: rig.tieDown ? adviceOn(straps, rig.boat) : [],
    ...(aggregate && { aggregate }),
    ...(count && { count }),
    ...(weakest && { weakest }),
    toBuy: toBuyOf(straps, methods[0], aggregate, ruleBook),
    standing: rig.tieDown ? standingOf(ruleBook, methods[0], [aggregate, count].flatMap((sum) => (sum ? [sum.standing] : []))) : 'waits',
    waitsFor: fieldsWaitedFor(boat, straps, rig, ruleBook),
    sources: sourcesOf(ruleBook, friction, methods),
  }
}
