import type { Rig } from '../../rig/rig'

const drawnLength = 900
const margin = 50

/** Heights and lengths drawn while they are not known: common practice, no source. */
const sketch = { lengthM: 6.4, axleShare: 0.64, stemM: 1.3, spacingM: 0.85, wheelM: 0.33, ballM: 0.45, deckAboveWheelM: 0.2, hullShare: 0.16, leastHullM: 0.55, mostHullM: 1.5 }

/** What is shown along the ground, m aft of the ball. Held fast while something is dragged, so that the scale does not move under the hand. */
export interface SideSpan {
  readonly firstM: number
  readonly lastM: number
}

/** Where things stand in the side view, in drawing units; `x` and `y` turn metres aft of the ball and above the ground into them. */
export interface SideLayout {
  readonly perM: number
  readonly width: number
  readonly groundY: number
  readonly ballM: number
  readonly wheelM: number
  /** Upper side of the rails. */
  readonly deckM: number
  readonly keelM: number
  readonly sheerM: number
  readonly stemM: number
  readonly sternM: number
  readonly lengthM: number
  readonly axlesM: readonly number[]
  readonly middleM: number
  /** Where the winch strap takes hold, below the stem's head. */
  readonly bowEye: { readonly aftM: number; readonly heightM: number }
  readonly known: { readonly axle: boolean; readonly boat: boolean; readonly length: boolean }
  /** Whether everything along its length is the rig's own data. */
  readonly toScale: boolean
  readonly x: (aftM: number) => number
  readonly y: (heightM: number) => number
}

interface Lengths {
  readonly lengthM: number
  readonly stemM: number
  readonly sternM: number
  readonly middleM: number
}

const lengthsOf = ({ trailer, boat, loading }: Rig): Lengths => {
  const stemM = loading?.stemAftOfBallM ?? sketch.stemM
  const sternM = boat?.lengthM === undefined ? (loading?.transomAftOfBallM ?? stemM + 5) : stemM + boat.lengthM
  const lengthM = trailer.lengthM ?? Math.max(boat ? sternM - 0.3 : 0, (trailer.ballToAxleM ?? 0) + 1, boat ? 0 : sketch.lengthM)
  return { stemM, sternM: Math.max(sternM, stemM + 0.5), lengthM, middleM: trailer.ballToAxleM ?? lengthM * sketch.axleShare }
}

/** What has to be shown for this rig, on whole metres: a small move seldom changes it. */
export const sideSpanOf = (rig: Rig): SideSpan => {
  const { stemM, sternM, lengthM, middleM } = lengthsOf(rig)
  const gear = (rig.loading?.gear ?? []).flatMap(({ aftOfBallM, aftOfStemM }) => aftOfBallM ?? (aftOfStemM === undefined ? [] : stemM + aftOfStemM))
  const least = Math.min(0, rig.boat ? stemM : 0, ...gear)
  return { firstM: Math.floor(least * 2) / 2, lastM: Math.ceil(Math.max(lengthM, rig.boat ? sternM + 0.4 : 0, middleM + 1, ...gear)) }
}

const axlesOf = ({ trailer, stance }: Rig, middleM: number): number[] => {
  const count = trailer.axleCount ?? 1
  return Array.from({ length: count }, (_, index) => middleM + (index - (count - 1) / 2) * (stance?.axleSpacingM ?? sketch.spacingM))
}

/** `topRoom`: height above the boat that arrows and labels take, in drawing units. */
export const sideLayout = (rig: Rig, span: SideSpan, topRoom: number): SideLayout => {
  const { trailer, boat, loading, stance } = rig
  const lengths = lengthsOf(rig)
  const wheelM = stance?.wheelCentreHeightM ?? sketch.wheelM
  const deckM = wheelM + sketch.deckAboveWheelM
  const keelM = deckM + 0.12
  const sheerM = keelM + Math.min(Math.max((lengths.sternM - lengths.stemM) * sketch.hullShare, sketch.leastHullM), sketch.mostHullM)
  const perM = drawnLength / Math.max(span.lastM - span.firstM, 1)
  const groundY = Math.round(topRoom + (boat ? sheerM + 0.1 : deckM + 0.9) * perM)
  const known = { axle: trailer.ballToAxleM !== undefined && trailer.axleCount !== undefined, boat: loading?.stemAftOfBallM !== undefined && boat?.lengthM !== undefined, length: trailer.lengthM !== undefined }
  return {
    ...lengths, perM, bowEye: { aftM: lengths.stemM + (lengths.sternM - lengths.stemM) * 0.035, heightM: sheerM - (sheerM - keelM) * 0.42 }, groundY, wheelM, deckM, keelM, sheerM, known,
    width: drawnLength + 2 * margin, ballM: stance?.ballHeightM ?? sketch.ballM, axlesM: axlesOf(rig, lengths.middleM),
    toScale: known.axle && known.length && (boat === undefined || known.boat),
    x: (aftM) => margin + (aftM - span.firstM) * perM,
    y: (heightM) => groundY - heightM * perM,
  }
}
