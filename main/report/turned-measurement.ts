import { turnedPoint, turnedSize } from '../../shared-logic/marking/turned'
import type { Measurement, PixelPoint, Scale } from '../../shared-logic/measuring/measurement'
import type { Marks } from '../photos/marked-copy'

type Turn = (point: PixelPoint) => PixelPoint

const turnedScale = (scale: Scale, turn: Turn): Scale => {
  if (scale.kind === 'length') return { ...scale, from: turn(scale.from), to: turn(scale.to) }
  const [first, second, third, fourth] = scale.corners
  return { ...scale, corners: [turn(first), turn(second), turn(third), turn(fourth)] }
}

/** What is drawn into a copy, where it lies when the picture is turned clockwise by so many quarters. */
export const turnedMeasurement = (measurement: Measurement, rings: Marks['rings'], quarterTurns: number): Pick<Marks, 'measurement' | 'rings'> => {
  const turn: Turn = (point) => turnedPoint(point, measurement, quarterTurns)
  return {
    measurement: { ...turnedSize(measurement, quarterTurns), scale: turnedScale(measurement.scale, turn), face: measurement.face?.map(turn) },
    rings: rings.map((ring) => ring.map(turn)),
  }
}
