import { assertNever } from '../assert-never'
import type { Rig } from '../rig/rig'
import type { Weighing, WeighingMethod } from '../rig/weighings'
import { centreHeightByRaisingM, offsetToRightM, weighedOnBridge, weighedOnPads, type Weighed } from './weighing'

/** One axle as weighed, kg; sides where both were weighed. */
export interface WeighedAxle {
  readonly massKg: number
  readonly leftKg?: number
  readonly rightKg?: number
}

/** What one weighing tells; what needs a figure that is missing is absent, and `waitsFor` names it. */
export interface WeighedResult {
  readonly method: WeighingMethod
  readonly date: string
  readonly totalKg?: number
  readonly couplingKg?: number
  readonly share?: number
  /** Centre of mass, m aft of the ball. */
  readonly centreM?: number
  readonly axlesKg?: number
  readonly eachAxle?: readonly WeighedAxle[]
  readonly offsetToRightM?: number
  readonly centreHeightM?: number
  readonly waitsFor: readonly string[]
}

type Told = Omit<WeighedResult, 'method' | 'date' | 'waitsFor'>

const asTold = ({ totalKg, centreM, couplingKg }: Weighed): Told =>
  totalKg > 0 ? { totalKg, centreM, couplingKg, axlesKg: totalKg - couplingKg, share: couplingKg / totalKg } : {}

const massOfAxle = ({ leftKg, rightKg, massKg }: { readonly leftKg?: number | undefined; readonly rightKg?: number | undefined; readonly massKg?: number | undefined }): WeighedAxle | undefined => {
  if (leftKg !== undefined && rightKg !== undefined) return { massKg: leftKg + rightKg, leftKg, rightKg }
  return massKg === undefined ? undefined : { massKg }
}

/** Coupling and axles as the scales showed; the centre of mass needs the place of the axle. */
const fromTwo = (couplingKg: number, axlesKg: number, axleM: number | undefined): Told => {
  const totalKg = couplingKg + axlesKg
  return totalKg > 0 ? { totalKg, couplingKg, axlesKg, share: couplingKg / totalKg, ...(axleM !== undefined && { centreM: (axlesKg * axleM) / totalKg }) } : {}
}

const fromEachAxle = ({ axles, couplingKg }: Extract<Weighing, { method: 'each axle' }>, axleM: number | undefined): Told => {
  const eachAxle = axles.map(massOfAxle).filter((axle) => axle !== undefined)
  if (eachAxle.length < axles.length) return { eachAxle }
  const axlesKg = eachAxle.reduce((sum, { massKg }) => sum + massKg, 0)
  // With independent axles the middle of the load is not the middle of the group: the centre follows only from one axle or equal loads.
  return { eachAxle, axlesKg, ...(couplingKg !== undefined && fromTwo(couplingKg, axlesKg, axles.length === 1 ? axleM : undefined)) }
}

const fromPads = ({ standKg, standAftOfBallM, leftKg, rightKg }: Extract<Weighing, { method: 'pads' }>, axleM: number | undefined, trackM: number | undefined): Told => {
  const totalKg = standKg + leftKg + rightKg
  if (!(totalKg > 0)) return {}
  const offset = trackM === undefined ? {} : { offsetToRightM: offsetToRightM(leftKg, rightKg, trackM, totalKg) }
  return axleM === undefined ? { totalKg, ...offset } : { ...asTold(weighedOnPads(standKg, standAftOfBallM, leftKg + rightKg, axleM)), ...offset }
}

const fromRaising = (weighing: Extract<Weighing, { method: 'nose raised' }>, axleM: number | undefined, axleHeightM: number | undefined): Told => {
  const { totalKg, couplingLevelKg } = weighing
  const level = fromTwo(couplingLevelKg, Math.max(0, totalKg - couplingLevelKg), axleM)
  const centreHeightM = axleM === undefined || axleHeightM === undefined ? undefined : centreHeightByRaisingM({ ...weighing, axleM, axleHeightM })
  return { ...level, ...(centreHeightM !== undefined && { centreHeightM }) }
}

const told = (weighing: Weighing, { trailer, stance }: Rig): Told => {
  const axleM = trailer.ballToAxleM
  switch (weighing.method) {
    case 'pads':
      return fromPads(weighing, axleM, stance?.trackM)
    case 'weighbridge': {
      const couplingKg = weighing.towCoupledKg - weighing.towAloneKg
      return axleM === undefined ? fromTwo(couplingKg, weighing.trailerAxlesKg, undefined) : asTold(weighedOnBridge(weighing.towAloneKg, weighing.towCoupledKg, weighing.trailerAxlesKg, axleM))
    }
    case 'tongue and axles':
      return fromTwo(weighing.couplingKg, weighing.axlesKg, axleM)
    case 'each axle':
      return fromEachAxle(weighing, axleM)
    case 'nose raised':
      return fromRaising(weighing, axleM, stance?.wheelCentreHeightM)
    default:
      return assertNever(weighing)
  }
}

const waitsFor = ({ method }: Weighing, result: Told, { trailer, stance }: Rig): string[] => [
  ...(trailer.ballToAxleM === undefined && result.centreM === undefined ? ['trailer.ballToAxleM'] : []),
  ...(method === 'pads' && stance?.trackM === undefined ? ['stance.trackM'] : []),
  ...(method === 'nose raised' && stance?.wheelCentreHeightM === undefined ? ['stance.wheelCentreHeightM'] : []),
]

/** Every weighing worked out, the newest first. Source: statics. */
export const weighedOf = (rig: Rig): WeighedResult[] =>
  (rig.weighings ?? [])
    .map((weighing) => {
      const result = told(weighing, rig)
      return { method: weighing.method, date: weighing.date, ...result, waitsFor: waitsFor(weighing, result, rig) }
    })
    .toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0))
