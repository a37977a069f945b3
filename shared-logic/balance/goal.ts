import type { LoadItem } from '../load/load-items'
import type { Rig } from '../rig/rig'
import type { BalanceBands } from '../sums/settings'
import { leverOf, momentOf, type Lever, type Mass } from './lever'
import { axleForShareM, moveForShareM, withMoved } from './reach-target'

/** One way to the share wanted. `forwardM` negative means aft; `possible` is false where it would leave the trailer or the boat. */
export interface Move {
  readonly what: 'boat' | 'axle' | 'gear'
  /** The piece of gear. */
  readonly id?: string
  readonly forwardM: number
  /** Where the axle, or the middle of its group, then stands, m aft of the ball. */
  readonly axleM?: number
  /** The axle's own mass was not known and is neglected. */
  readonly neglectsAxleMass?: true
  readonly possible: boolean
  readonly after: Lever
}

/** The share aimed at and the ways there. `because`: the band's target, or less where a marked static load stands in the way. */
export interface Goal {
  readonly share: number
  readonly because: 'target' | 'static limit'
  readonly moves: readonly Move[]
}

const movedTogether = (items: readonly LoadItem[]): Set<string> => new Set(items.filter(({ inBoat }) => inBoat).map(({ id }) => id))

const moveBoat = (rig: Rig, items: readonly LoadItem[], masses: readonly Mass[], axleM: number, share: number): Move | undefined => {
  const moved = movedTogether(items)
  const forwardM = moveForShareM(masses, axleM, moved, share)
  const after = forwardM === undefined ? undefined : leverOf(withMoved(masses, moved, forwardM), axleM)
  const stemM = rig.loading?.stemAftOfBallM
  return forwardM === undefined || !after ? undefined : { what: 'boat', forwardM, possible: stemM === undefined || stemM - forwardM > 0, after }
}

/** The trailer without its axle group, so that the group's mass goes along with the axle. */
const withoutAxleGroup = (masses: readonly Mass[], axleM: number, groupKg: number): Mass[] | undefined => {
  const trailer = masses.find(({ id }) => id === 'trailer')
  if (!trailer || trailer.massKg <= groupKg) return undefined
  const massKg = trailer.massKg - groupKg
  return [...masses.filter(({ id }) => id !== 'trailer'), { id: 'trailer', massKg, atM: (trailer.massKg * trailer.atM - groupKg * axleM) / massKg }]
}

const moveAxle = (rig: Rig, masses: readonly Mass[], axleM: number, share: number): Move | undefined => {
  const groupKg = rig.stance?.axleGroupKg
  const rest = groupKg === undefined ? undefined : withoutAxleGroup(masses, axleM, groupKg)
  const newM = rest && groupKg !== undefined ? axleForShareM(rest, share, groupKg) : axleForShareM(masses, share)
  if (newM === undefined) return undefined
  const then = rest && groupKg !== undefined ? [...rest, { id: 'axle group', massKg: groupKg, atM: newM }] : masses
  const after = leverOf(then, newM)
  return after && { what: 'axle', forwardM: axleM - newM, axleM: newM, ...(!rest && { neglectsAxleMass: true as const }), possible: newM < (rig.trailer.lengthM ?? Infinity), after }
}

/** Gear stays between stem and transom when it lies in the boat, else between the ball and the end of trailer or boat; where no length is known, it stays put. */
const gearStays = ({ loading, boat, trailer }: Rig, { inBoat }: LoadItem, atM: number): boolean => {
  const stemM = loading?.stemAftOfBallM
  const transomM = stemM === undefined || boat?.lengthM === undefined ? undefined : stemM + boat.lengthM
  const endM = inBoat ? transomM : (trailer.lengthM ?? transomM)
  return endM !== undefined && atM >= (inBoat ? stemM ?? 0 : 0) && atM <= endM
}

const moveGear = (rig: Rig, items: readonly LoadItem[], masses: readonly Mass[], axleM: number, share: number): Move[] =>
  items.filter(({ kind }) => kind === 'gear').flatMap((item): Move[] => {
    const moved = new Set([item.id])
    const forwardM = moveForShareM(masses, axleM, moved, share)
    const after = forwardM === undefined ? undefined : leverOf(withMoved(masses, moved, forwardM), axleM)
    return forwardM === undefined || !after ? [] : [{ what: 'gear', id: item.id, forwardM, possible: item.atM !== undefined && gearStays(rig, item, item.atM - forwardM), after }]
  })

/** How far to move boat, axle or gear to reach the share wanted, and what rests where then. Source: statics. */
export const goalOf = (rig: Rig, items: readonly LoadItem[], masses: readonly Mass[], axleM: number, bands: BalanceBands, staticWithReserveKg: number | undefined): Goal | undefined => {
  const lever = leverOf(masses, axleM)
  if (!lever || !(momentOf(masses) > 0)) return undefined
  const mostShare = staticWithReserveKg === undefined ? Infinity : staticWithReserveKg / lever.totalKg
  const share = Math.min(bands.target, mostShare)
  const moves = [moveBoat(rig, items, masses, axleM, share), moveAxle(rig, masses, axleM, share), ...moveGear(rig, items, masses, axleM, share)]
  return { share, because: mostShare < bands.target ? 'static limit' : 'target', moves: moves.filter((move) => move !== undefined) }
}
