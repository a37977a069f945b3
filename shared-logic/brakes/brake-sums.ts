import { decelerationReached } from '../balance/load-transfer'
import type { Balance } from '../balance/balance'
import type { LoadSheet } from '../load/load-sheet'
import type { Rig } from '../rig/rig'
import { leastReserve, longTravelM, strokeReserve } from '../rules/actuator'
import { isOver, isUnder } from '../rules/beyond'
import { brakeThresholds, callsForBrakes, heaviestOnOverrunKg, heaviestOnSurgeKg, overrunOnsetN, restsTooHeavily, secondaryCouplingFrom, surgeBrakesAllowed, usBrakePlaces } from '../rules/brake-thresholds'
import { trailerCategoryOf, type TrailerCategory } from '../rules/ratings'
import type { RuleBook } from '../rules/rule-book'

export type BrakePlace = (typeof usBrakePlaces)[number] | 'Europe'

/** Whether one place's rule calls for brakes at this mass, on how many axles, and whether the trailer has them. */
export interface BrakeNeed {
  readonly place: BrakePlace
  readonly needed: boolean | 'unknown'
  readonly binding: boolean
  /** How many axles: all of them, or one where two wheels are enough. */
  readonly axles?: number
  /** Where brakes are needed, a breakaway device is too. */
  readonly breakaway: boolean | 'unknown'
  readonly standing: 'met' | 'not met' | 'waits'
}

export interface BrakeSums {
  readonly massKg?: number
  readonly needs: readonly BrakeNeed[]
  /** Surge brakes behind this tow vehicle. */
  readonly surge?: { readonly allowed?: boolean; readonly heaviestTrailerKg?: number; readonly waitsFor: readonly string[] }
  readonly category?: TrailerCategory
  readonly actuator?: { readonly travelM: number; readonly strokeM?: number; readonly reserveShare?: number; readonly standing: 'within' | 'long' | 'spent' }
  /** Overrun brakes on a trailer above category O2. From memory; decides nothing. */
  readonly overrunBeyond: boolean
  /** Unbraked and allowed to be: it has to have a secondary coupling instead. */
  readonly secondaryCoupling: boolean
  /** From memory; decides nothing. */
  readonly onset?: { readonly fromN: number; readonly toN: number }
  readonly deceleration?: { readonly share: number; readonly forceN: number; readonly massKg: number }
  /** Left and right of one axle apart, as a share of the larger. */
  readonly imbalance: readonly { readonly axle: number; readonly share: number }[]
  readonly waitsFor: readonly string[]
}

const brakedAxlesOf = ({ brakes, brakedAxleCount }: Rig['trailer']): number | undefined => (brakes === 'none' ? 0 : brakedAxleCount)

const standingOf = (needed: boolean | 'unknown', braked: number | undefined, axles: number | undefined): BrakeNeed['standing'] => {
  if (needed === false) return 'met'
  if (needed === 'unknown' || braked === undefined) return 'waits'
  if (braked === 0) return 'not met'
  return axles === undefined ? 'waits' : braked >= axles ? 'met' : 'not met'
}

const needOf = (place: BrakePlace, { trailer, couplingRatings }: Rig, massKg: number, couplingKg: number | undefined): BrakeNeed => {
  const threshold = brakeThresholds[place]
  const towAxlesKg = couplingRatings?.towVehicleAxlesKg
  const restsHeavily = place === 'federal benchmark' && couplingKg !== undefined && towAxlesKg !== undefined && restsTooHeavily(couplingKg, towAxlesKg)
  const needed = restsHeavily ? true : callsForBrakes(threshold, massKg, trailer.builtYear)
  const axles = threshold.allWheels ? trailer.axleCount : 1
  return { place, needed, binding: threshold.binding, ...(axles !== undefined && { axles }), breakaway: needed, standing: standingOf(needed, brakedAxlesOf(trailer), axles) }
}

const surgeOf = ({ trailer, couplingRatings }: Rig, massKg: number | undefined): BrakeSums['surge'] => {
  const towKg = couplingRatings?.towVehicleMaximumKg
  const waitsFor = [...(towKg === undefined ? ['couplingRatings.towVehicleMaximumKg'] : []), ...(massKg === undefined ? ['trailer.maximumMassKg'] : [])]
  if (trailer.brakes !== 'surge') return undefined
  if (towKg === undefined) return { waitsFor }
  return { heaviestTrailerKg: heaviestOnSurgeKg(towKg), ...(massKg !== undefined && { allowed: surgeBrakesAllowed(massKg, towKg) }), waitsFor }
}

/** Long travel: adjust the shoes before lining or hose is blamed; spent: less than a third of the stroke left. */
const actuatorOf = ({ brakeTest }: Rig): BrakeSums['actuator'] => {
  const { actuatorTravelM: travelM, actuatorStrokeM: strokeM } = brakeTest ?? {}
  if (travelM === undefined) return undefined
  const reserveShare = strokeM === undefined ? undefined : strokeReserve(travelM, strokeM)
  const spent = reserveShare !== undefined && isUnder(reserveShare, leastReserve)
  return { travelM, ...(strokeM !== undefined && { strokeM }), ...(reserveShare !== undefined && { reserveShare }), standing: spent ? 'spent' : isOver(travelM, longTravelM) ? 'long' : 'within' }
}

const decelerationOf = ({ brakeTest }: Rig, loadedKg: number | undefined): BrakeSums['deceleration'] => {
  const massKg = brakeTest?.massKg ?? loadedKg
  const forces = (brakeTest?.axles ?? []).flatMap(({ leftN, rightN }) => [leftN, rightN])
  const known = forces.filter((force) => force !== undefined)
  if (massKg === undefined || known.length === 0 || known.length < forces.length) return undefined
  return { massKg, forceN: known.reduce((sum, force) => sum + force, 0), share: decelerationReached(known, massKg) }
}

const imbalanceOf = ({ brakeTest }: Rig): BrakeSums['imbalance'] =>
  (brakeTest?.axles ?? []).flatMap(({ leftN, rightN }, index) =>
    leftN === undefined || rightN === undefined || Math.max(leftN, rightN) === 0 ? [] : [{ axle: index + 1, share: Math.abs(leftN - rightN) / Math.max(leftN, rightN) }])

/** Source: UK trailer trade association, as a model of European practice: unbraked trailers built from 1997 on. A year that is not known counts as later. */
const callsForSecondary = ({ brakes, builtYear }: Rig['trailer'], [need]: readonly BrakeNeed[]): boolean =>
  need?.place === 'Europe' && need.needed === false && (brakes === undefined || brakes === 'none') && (builtYear ?? secondaryCouplingFrom) >= secondaryCouplingFrom

/** Brakes by the rating plate's mass, or by the load where the plate is not known. Sources: see the brake thresholds; 49 CFR 393.48(d). */
export const brakeSumsOf = (rig: Rig, load: LoadSheet, balance: Balance, ruleBook: RuleBook): BrakeSums => {
  const massKg = rig.trailer.maximumMassKg ?? load.total.massKg
  const places: readonly BrakePlace[] = ruleBook === 'us' ? usBrakePlaces : ['Europe']
  const surge = ruleBook === 'us' ? surgeOf(rig, massKg) : undefined
  const needs = massKg === undefined ? [] : places.map((place) => needOf(place, rig, massKg, balance.lever?.couplingKg))
  const isOverrun = ruleBook === 'eu' && rig.trailer.brakes === 'surge'
  const actuator = actuatorOf(rig)
  const deceleration = decelerationOf(rig, load.total.massKg)
  return {
    ...(massKg !== undefined && { massKg, ...(ruleBook === 'eu' && { category: trailerCategoryOf(massKg) }) }),
    needs, secondaryCoupling: callsForSecondary(rig.trailer, needs), overrunBeyond: isOverrun && massKg !== undefined && isOver(massKg, heaviestOnOverrunKg),
    ...(surge && { surge }), ...(actuator && { actuator }), ...(deceleration && { deceleration }),
    ...(isOverrun && massKg !== undefined && { onset: overrunOnsetN(massKg) }),
    imbalance: imbalanceOf(rig),
    waitsFor: [
      ...(massKg === undefined ? ['trailer.maximumMassKg'] : []), ...(rig.trailer.brakes === undefined ? ['trailer.brakes'] : []),
      ...(rig.trailer.brakes !== undefined && rig.trailer.brakes !== 'none' && rig.trailer.brakedAxleCount === undefined ? ['trailer.brakedAxleCount'] : []),
    ],
  }
}
