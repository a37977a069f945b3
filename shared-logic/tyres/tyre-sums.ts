import type { Balance } from '../balance/balance'
import type { Rig } from '../rig/rig'
import type { RuleBook } from '../rules/rule-book'
import { lineOf, type LimitLine } from '../load/limits'
import { exactly } from '../load/bounded'
import { speedOfSymbolKmPerHour } from '../rules/speed-symbols'
import { pressureForLoad, type PressureForLoad } from './pressure-for-load'
import { tyreCapacityOf, type TyreCapacity } from './tyre-capacity'

/** One tyre by its place, with the load on it. A reckoned load takes both sides of an axle as equal. */
export interface TyreLoad {
  readonly axle: number
  readonly side: 'left' | 'right' | 'each'
  readonly loadKg: number
  readonly from: 'weighed' | 'reckoned'
  readonly line: LimitLine
  readonly pressure: PressureForLoad
}

export interface TyreSums {
  readonly capacity?: TyreCapacity
  readonly placardPressurePa?: number
  readonly speedKmPerHour?: number
  readonly loads: readonly TyreLoad[]
  readonly waitsFor: readonly string[]
}

type Place = Pick<TyreLoad, 'axle' | 'side' | 'loadKg' | 'from'>

/** Wheels weighed by themselves, from the newest weighing that has them. */
const weighedPlaces = ({ weighed }: Balance): Place[] => {
  const newest = weighed.find(({ eachAxle }) => eachAxle !== undefined && eachAxle.length > 0)
  return (newest?.eachAxle ?? []).flatMap(({ massKg, leftKg, rightKg }, index): Place[] =>
    leftKg === undefined || rightKg === undefined
      ? [{ axle: index + 1, side: 'each', loadKg: massKg / 2, from: 'weighed' }]
      : [{ axle: index + 1, side: 'left', loadKg: leftKg, from: 'weighed' }, { axle: index + 1, side: 'right', loadKg: rightKg, from: 'weighed' }])
}

const reckonedPlaces = ({ axleLoads }: Balance): Place[] =>
  (axleLoads?.axlesKg ?? []).map((axleKg, index) => ({ axle: index + 1, side: 'each', loadKg: axleKg / 2, from: 'reckoned' }))

/** Each tyre at its own load, measured where it was weighed, with its reserve and the pressure the load needs. */
export const tyreSumsOf = (rig: Rig, balance: Balance, ruleBook: RuleBook, reserveWanted: number): TyreSums => {
  const { tyre } = rig.trailer
  const capacity = tyreCapacityOf(tyre, ruleBook)
  const speed = tyre?.speedSymbol === undefined ? undefined : speedOfSymbolKmPerHour(tyre.speedSymbol)
  const measured = weighedPlaces(balance)
  const places = measured.length > 0 ? measured : reckonedPlaces(balance)
  const limit = { id: 'one tyre', on: 'tyre', field: 'trailer.tyre.loadIndex', ...(capacity && { ratingKg: capacity.massKg }) } as const
  return {
    ...(capacity && { capacity }),
    ...(tyre?.placardPressurePa !== undefined && { placardPressurePa: tyre.placardPressurePa }),
    ...(speed !== undefined && { speedKmPerHour: speed }),
    loads: places.map((place) => ({ ...place, line: lineOf(limit, { tyre: exactly(place.loadKg) }, reserveWanted), pressure: pressureForLoad(tyre, place.loadKg) })),
    waitsFor: [...(capacity ? [] : ['trailer.tyre.loadIndex']), ...(places.length > 0 ? [] : balance.axleLoads?.waitsFor ?? balance.waitsFor)],
  }
}
