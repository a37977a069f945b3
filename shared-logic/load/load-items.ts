import type { Rig } from '../rig/rig'
import { exactly, type Bounded } from './bounded'
import { densities, fullShare } from './densities'

/** What can be carried: the trailer itself, the boat, its engine, a tank's contents, gear. */
export type LoadKind = 'trailer' | 'boat' | 'engine' | 'tank' | 'gear'

/** One line of the load sheet. `atM` aft of the ball, `heightM` above the ground. */
export interface LoadItem extends Bounded {
  readonly id: string
  readonly kind: LoadKind
  /** Contents of a tank, name of a piece of gear. */
  readonly name?: string
  /** With the tank full; the same as `massKg` for everything else. Absent while not known. */
  readonly fullKg?: number
  readonly atM?: number
  readonly heightM?: number
  /** Whether it moves along when the boat is moved on the trailer. */
  readonly inBoat: boolean
  /** Dotted paths of the fields that mass and place wait for, and both together. */
  readonly massWaitsFor: readonly string[]
  readonly placeWaitsFor: readonly string[]
  readonly waitsFor: readonly string[]
}

type LoadedRig = Pick<Rig, 'trailer' | 'boat' | 'loading'>
type Unfinished = Omit<LoadItem, 'waitsFor'>

const massOf = (massKg: number | undefined, field: string): Bounded & Pick<LoadItem, 'massWaitsFor' | 'fullKg'> =>
  massKg === undefined ? { lowKg: 0, massWaitsFor: [field] } : { ...exactly(massKg), fullKg: massKg, massWaitsFor: [] }

interface Place {
  readonly atM?: number
  readonly placeWaitsFor: readonly string[]
}

const atBall = (atM: number | undefined, field: string): Place => (atM === undefined ? { placeWaitsFor: [field] } : { atM, placeWaitsFor: [] })

/** A place in the boat, by its distance from the stem. */
const inBoat = (stemM: number | undefined, aftOfStemM: number | undefined, field: string): Place => {
  if (stemM !== undefined && aftOfStemM !== undefined) return { atM: stemM + aftOfStemM, placeWaitsFor: [] }
  return { placeWaitsFor: [...(stemM === undefined ? ['loading.stemAftOfBallM'] : []), ...(aftOfStemM === undefined ? [field] : [])] }
}

const height = (heightM: number | undefined): { heightM?: number } => (heightM === undefined ? {} : { heightM })

/** Contents of a tank as a share of its capacity, whichever way it is written down. */
export const fillOf = (capacityM3: number, at: { readonly fill?: number | undefined; readonly contentsM3?: number | undefined } | undefined): number | undefined =>
  at?.fill ?? (at?.contentsM3 === undefined ? undefined : at.contentsM3 / capacityM3)

const tankItems = ({ boat, loading }: LoadedRig): Unfinished[] =>
  (boat?.tanks ?? []).map(({ contents, capacityM3 }, index): Unfinished => {
    const at = loading?.tanks?.[index]
    const { low, middle, high } = densities[contents]
    const fill = fillOf(capacityM3, at)
    const mass: Bounded = fill === undefined
      ? { lowKg: 0, highKg: capacityM3 * fullShare(contents) * high }
      : { massKg: capacityM3 * fill * middle, lowKg: capacityM3 * fill * low, highKg: capacityM3 * fill * high }
    return {
      id: `tank ${index + 1}`, kind: 'tank', name: contents, inBoat: true, ...mass, fullKg: capacityM3 * fullShare(contents) * middle,
      massWaitsFor: fill === undefined ? [`loading.tanks.${index}.fill`] : [],
      ...inBoat(loading?.stemAftOfBallM, at?.aftOfStemM, `loading.tanks.${index}.aftOfStemM`), ...height(at?.heightM),
    }
  })

const gearItems = ({ loading }: LoadedRig): Unfinished[] =>
  (loading?.gear ?? []).map(({ name, massKg, aftOfBallM, aftOfStemM, heightM }, index): Unfinished => ({
    id: `gear ${index + 1}`, kind: 'gear', name, inBoat: aftOfBallM === undefined || aftOfStemM !== undefined, ...massOf(massKg, `loading.gear.${index}.massKg`),
    ...(aftOfBallM === undefined ? inBoat(loading?.stemAftOfBallM, aftOfStemM, `loading.gear.${index}.aftOfStemM`) : atBall(aftOfBallM, '')), ...height(heightM),
  }))

const trailerItem = ({ trailer, loading }: LoadedRig): Unfinished => ({
  id: 'trailer', kind: 'trailer', inBoat: false, ...massOf(trailer.massKg, 'trailer.massKg'),
  ...atBall(loading?.trailerCentreAftOfBallM, 'loading.trailerCentreAftOfBallM'), ...height(loading?.trailerCentreHeightM),
})

const boatItems = ({ boat, loading }: LoadedRig): Unfinished[] => {
  if (boat === undefined) return []
  const stemM = loading?.stemAftOfBallM
  const hull: Unfinished = {
    id: 'boat', kind: 'boat', inBoat: true, ...massOf(boat.dryMassKg, 'boat.dryMassKg'),
    ...inBoat(stemM, loading?.boatCentreAftOfStemM, 'loading.boatCentreAftOfStemM'), ...height(loading?.boatCentreHeightM),
  }
  if (boat.engineMassKg === undefined) return [hull]
  return [hull, {
    id: 'engine', kind: 'engine', inBoat: true, ...massOf(boat.engineMassKg, 'boat.engineMassKg'),
    ...inBoat(stemM, loading?.engineAftOfStemM, 'loading.engineAftOfStemM'), ...height(loading?.engineHeightM),
  }]
}

/** Every line of the load sheet, from the rig's data; nothing is guessed. */
export const loadItemsOf = (rig: LoadedRig): LoadItem[] =>
  [trailerItem(rig), ...boatItems(rig), ...tankItems(rig), ...gearItems(rig)].map((item) => ({ ...item, waitsFor: [...item.massWaitsFor, ...item.placeWaitsFor] }))
