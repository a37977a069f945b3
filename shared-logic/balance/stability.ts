import type { Rig } from '../rig/rig'
import { centreHeightM, type Lever, type Mass } from './lever'
import { couplingGainedBrakingKg, onSideSlope, tipsAtRad } from './load-transfer'
import type { WeighedResult } from './weighed'

const degree = Math.PI / 180
const slopesRad = [5 * degree, 10 * degree] as const
/** Ordinary braking and hard braking on a dry road, as shares of gravity. Common practice, no source. */
const decelerations = [0.3, 0.6] as const

/** What the height of the centre of mass does on a side slope and while braking; parts that wait name their fields. */
export interface Stability {
  readonly centreHeightM?: number
  readonly heightFrom?: 'reckoned' | 'weighed'
  readonly tipsAtRad?: number
  readonly slopes: readonly { readonly slopeRad: number; readonly upperKg: number; readonly lowerKg: number }[]
  /** Coupling load gained, kg: with the trailer braking itself, and with the tow vehicle doing it all. */
  readonly braking: readonly { readonly deceleration: number; readonly braked: number; readonly unbraked: number }[]
  readonly waitsFor: readonly string[]
}

/** The two weighings decide, where they were made; else the heights of the masses. */
const heightOf = (masses: readonly Mass[], weighed: readonly WeighedResult[]): Pick<Stability, 'centreHeightM' | 'heightFrom'> => {
  const measured = weighed.find((result) => result.centreHeightM !== undefined)?.centreHeightM
  if (measured !== undefined) return { centreHeightM: measured, heightFrom: 'weighed' }
  const reckoned = centreHeightM(masses)
  return reckoned === undefined ? {} : { centreHeightM: reckoned, heightFrom: 'reckoned' }
}

/** Side slope and braking, by statics; `lever` as loaded now. */
export const stabilityOf = ({ stance, trailer }: Rig, masses: readonly Mass[], lever: Lever, weighed: readonly WeighedResult[]): Stability => {
  const height = heightOf(masses, weighed)
  const heightM = height.centreHeightM
  const trackM = stance?.trackM
  const ballHeightM = stance?.ballHeightM
  const axleM = trailer.ballToAxleM
  const sideways = heightM === undefined || trackM === undefined ? undefined : { heightM, trackM }
  const lengthways = heightM === undefined || ballHeightM === undefined || axleM === undefined ? undefined : { heightM, ballHeightM, axleM }
  const gained = (deceleration: number, share: number): number => (lengthways ? couplingGainedBrakingKg(lever.totalKg, lengthways.heightM, lengthways.ballHeightM, lengthways.axleM, deceleration, share) : 0)
  return {
    ...height,
    ...(sideways && { tipsAtRad: tipsAtRad(sideways.heightM, sideways.trackM) }),
    slopes: sideways ? slopesRad.map((slopeRad) => ({ slopeRad, ...onSideSlope(lever.axleKg, sideways.heightM, sideways.trackM, slopeRad) })) : [],
    braking: lengthways ? decelerations.map((deceleration) => ({ deceleration, braked: gained(deceleration, 1), unbraked: gained(deceleration, 0) })) : [],
    waitsFor: [
      ...(heightM === undefined ? ['loading.trailerCentreHeightM', 'loading.boatCentreHeightM'] : []),
      ...(trackM === undefined ? ['stance.trackM'] : []), ...(ballHeightM === undefined ? ['stance.ballHeightM'] : []),
    ],
  }
}
