import type { Rig } from '../../rig/rig'

/** Drawn length of the longest of trailer and boat, in drawing units. */
const drawnLength = 860

/** Proportions used for the sketch while a length is not known: common practice, no source. */
const sketch = { lengthM: 6.4, widthM: 2.3, axleShare: 0.64, bowShare: 0.2, wheelM: 0.66, tyreM: 0.2 }

/**
 * Where things stand in the plan, in drawing units: x across (left negative, as seen from above with the coupler up),
 * y along, 0 at the ball. Taken from the rig; `toScale` is false when a length was not known and a usual proportion stands in.
 */
export interface PlanLayout {
  readonly toScale: boolean
  readonly unitsPerM: number
  readonly halfWidth: number
  readonly railX: number
  readonly length: number
  readonly tongueEnd: number
  readonly axleYs: readonly number[]
  readonly axleCountKnown: boolean
  readonly wheelLength: number
  readonly tyreWidth: number
  readonly bowY: number
  readonly sternY: number
  readonly halfBeam: number
  readonly bottom: number
}

const axlePlaces = (centre: number, count: number, pitch: number): number[] =>
  Array.from({ length: count }, (_, index) => centre + (index - (count - 1) / 2) * pitch)

export const planLayout = ({ trailer, boat }: Rig): PlanLayout => {
  const lengthM = trailer.lengthM ?? (boat?.lengthM === undefined ? sketch.lengthM : boat.lengthM * 1.1)
  const widthM = trailer.widthM ?? sketch.widthM
  const bowM = lengthM * sketch.bowShare
  const boatLengthM = boat?.lengthM ?? lengthM - bowM
  const unitsPerM = drawnLength / Math.max(lengthM, bowM + boatLengthM)
  const halfWidth = (widthM / 2) * unitsPerM
  const tyreWidth = sketch.tyreM * unitsPerM
  const wheelLength = sketch.wheelM * unitsPerM
  const count = trailer.axleCount ?? 1
  const railX = Math.max(halfWidth - tyreWidth - 26, halfWidth * 0.5)
  const length = lengthM * unitsPerM
  const centre = Math.min((trailer.ballToAxleM ?? lengthM * sketch.axleShare) * unitsPerM, length - wheelLength * 0.6)
  return {
    toScale: trailer.lengthM !== undefined && trailer.widthM !== undefined && trailer.ballToAxleM !== undefined,
    unitsPerM,
    halfWidth,
    railX,
    length,
    tongueEnd: length * 0.3,
    axleYs: axlePlaces(centre, count, wheelLength * 1.16),
    axleCountKnown: trailer.axleCount !== undefined,
    wheelLength,
    tyreWidth,
    bowY: bowM * unitsPerM,
    sternY: (bowM + boatLengthM) * unitsPerM,
    halfBeam: Math.min(((boat?.beamM ?? widthM * 0.92) / 2) * unitsPerM, halfWidth * 1.15),
    bottom: Math.max(length, (bowM + boatLengthM) * unitsPerM),
  }
}
