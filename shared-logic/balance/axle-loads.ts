import type { Rig } from '../rig/rig'
import { independentSplit, type AxleSplit } from './axle-split'
import type { Axles } from './axles'
import type { Lever, Mass } from './lever'

/** What each axle carries, front to rear. */
export interface AxleLoads {
  readonly sharing: Axles['sharing']
  readonly axlesKg?: readonly number[]
  /** At the coupler height as towed, where that differs from the level lever (independent arms). */
  readonly couplingKg?: number
  /** Ball above the height at which the trailer stands level, m. */
  readonly raisedM?: number
  /** Independent axles have to be weighed one by one: the split from springs and statics is a model only. */
  readonly mustBeWeighed: boolean
  readonly waitsFor: readonly string[]
}

const independentWaits = ({ stance }: Rig): string[] => [
  ...(stance?.ballHeightM === undefined ? ['stance.ballHeightM'] : []),
  ...(stance?.levelBallHeightM === undefined ? ['stance.levelBallHeightM'] : []),
  ...(stance?.axleRateKgPerM === undefined ? ['stance.axleRateKgPerM'] : []),
]

const modelled = ({ stance }: Rig, axles: Axles, masses: readonly Mass[]): { readonly split: AxleSplit; readonly raisedM: number } | undefined => {
  const { ballHeightM, levelBallHeightM, axleRateKgPerM } = stance ?? {}
  if (axles.eachM === undefined || ballHeightM === undefined || levelBallHeightM === undefined || axleRateKgPerM === undefined) return undefined
  const raisedM = ballHeightM - levelBallHeightM
  const split = independentSplit(masses, axles.eachM, raisedM, axleRateKgPerM)
  return split && { split, raisedM }
}

/** Loads on the axles from the lever, or from the spring model where each axle has its own arms. Source: statics. */
export const axleLoadsOf = (rig: Rig, axles: Axles, masses: readonly Mass[], lever: Lever): AxleLoads => {
  const { sharing, count } = axles
  if (sharing === 'one axle') return { sharing, axlesKg: [lever.axleKg], mustBeWeighed: false, waitsFor: [] }
  if (sharing === 'equalised' && count !== undefined)
    return { sharing, axlesKg: Array.from({ length: count }, () => lever.axleKg / count), mustBeWeighed: false, waitsFor: [] }
  const model = sharing === 'independent' ? modelled(rig, axles, masses) : undefined
  const waitsFor = [...axles.waitsFor, ...(sharing === 'independent' ? independentWaits(rig) : [])]
  return { sharing, mustBeWeighed: true, waitsFor, ...(model && { axlesKg: model.split.axlesKg, couplingKg: model.split.couplingKg, raisedM: model.raisedM }) }
}
