import { densities, fullShare } from '../load/densities'
import type { LoadItem } from '../load/load-items'
import type { Rig } from '../rig/rig'
import { leverOf, type Mass } from './lever'
import { shareRangeOf, type Ranged, type ShareRange } from './share-range'

/** The coupling at one level of the tanks; `fill` 0 to 1 of what counts as full. */
export interface CurvePoint {
  readonly fill: number
  readonly totalKg: number
  readonly couplingKg: number
  readonly share: number
}

/** What fuel and water do to the coupling load. */
export interface TankCurve {
  /** Every tank at the same level. */
  readonly together: readonly CurvePoint[]
  /** One tank by itself, the others as they are; left out where another one's level is not known. */
  readonly each: readonly { readonly id: string; readonly points: readonly CurvePoint[] }[]
  /** Lightest and heaviest coupling over every combination of empty and full; `high` names the full tanks. */
  readonly worst: ShareRange
}

const steps = 20

interface TankAt {
  readonly id: string
  readonly fullKg: number
  readonly atM: number
  readonly nowKg: number | undefined
}

const tanksOf = (rig: Rig, items: readonly LoadItem[]): TankAt[] | undefined => {
  const tanks: TankAt[] = []
  for (const [index, { contents, capacityM3 }] of (rig.boat?.tanks ?? []).entries()) {
    const item = items.find(({ id }) => id === `tank ${index + 1}`)
    if (item?.atM === undefined) return undefined
    tanks.push({ id: item.id, atM: item.atM, nowKg: item.massKg, fullKg: capacityM3 * fullShare(contents) * densities[contents].middle })
  }
  return tanks.length > 0 ? tanks : undefined
}

const curve = (rest: readonly Mass[], moving: readonly TankAt[], axleM: number): CurvePoint[] =>
  Array.from({ length: steps + 1 }, (_, step) => step / steps).flatMap((fill) => {
    const lever = leverOf([...rest, ...moving.map(({ id, atM, fullKg }) => ({ id, atM, massKg: fullKg * fill }))], axleM)
    return lever ? [{ fill, totalKg: lever.totalKg, couplingKg: lever.couplingKg, share: lever.share }] : []
  })

/** Masses as they are, of all tanks but one; undefined while another one's level is not known. */
const othersOf = (tanks: readonly TankAt[], id: string): Mass[] | undefined => {
  const others = tanks.filter((tank) => tank.id !== id)
  const known = others.flatMap(({ nowKg, ...tank }) => (nowKg === undefined ? [] : [{ id: tank.id, atM: tank.atM, massKg: nowKg }]))
  return known.length === others.length ? known : undefined
}

/**
 * Coupling share over tank levels; `dry` are the masses that stay. Undefined without tanks, or while one has no place.
 * Full is 95 % of the capacity, ballast all of it. Source: statics; ISO 14946:2021 clause 5 d) to f).
 */
export const tankCurveOf = (rig: Rig, items: readonly LoadItem[], dry: readonly Mass[], axleM: number): TankCurve | undefined => {
  const tanks = tanksOf(rig, items)
  const ranged: Ranged[] = [...dry.map(({ id, massKg, atM }) => ({ id, atM, lowKg: massKg, highKg: massKg })), ...(tanks ?? []).map(({ id, atM, fullKg }) => ({ id, atM, lowKg: 0, highKg: fullKg }))]
  const worst = shareRangeOf(ranged, axleM)
  if (!tanks || !worst) return undefined
  return {
    together: curve(dry, tanks, axleM),
    each: tanks.flatMap((tank) => {
      const others = othersOf(tanks, tank.id)
      return others ? [{ id: tank.id, points: curve([...dry, ...others], [tank], axleM) }] : []
    }),
    worst,
  }
}
