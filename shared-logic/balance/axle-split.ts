import { momentOf, totalOf, type Mass } from './lever'

/** Loads on each axle of a group and at the coupling, kg. */
export interface AxleSplit {
  readonly axlesKg: readonly number[]
  readonly couplingKg: number
}

/** Equalising beams share the group's load evenly, whatever the coupler height. `axlesM`: each axle, m aft of the ball. */
export const equalisedSplit = (masses: readonly Mass[], axlesM: readonly number[]): AxleSplit | undefined => {
  const middle = axlesM.reduce((sum, x) => sum + x, 0) / axlesM.length
  if (!(middle > 0) || axlesM.length === 0) return undefined
  const groupKg = momentOf(masses) / middle
  return { axlesKg: axlesM.map(() => groupKg / axlesM.length), couplingKg: totalOf(masses) - groupKg }
}

/**
 * Independent arms or springs of equal rate: the share depends on how high the coupler is carried.
 *
 * `raisedM`: the ball above the height at which the trailer stands level (all axles equal), negative below.
 * `ratePerAxleKgPerM`: load an axle takes up per metre it is pressed in. Undefined for a single axle or a rate that is not positive.
 * A negative load means that axle lifts. Model: rigid frame held at the ball on equal linear springs. Source: statics.
 */
export const independentSplit = (masses: readonly Mass[], axlesM: readonly number[], raisedM: number, ratePerAxleKgPerM: number): AxleSplit | undefined => {
  const count = axlesM.length
  const sum = axlesM.reduce((total, x) => total + x, 0)
  const squares = axlesM.reduce((total, x) => total + x * x, 0)
  if (count < 2 || !(ratePerAxleKgPerM > 0) || !(sum > 0)) return undefined
  const moment = momentOf(masses)
  // Pressed in by `settled` when level; the frame then turns by `turn` about the ball to keep moments in balance.
  const settled = moment / (ratePerAxleKgPerM * sum)
  const turn = ((settled - raisedM) * sum - moment / ratePerAxleKgPerM) / squares
  const axlesKg = axlesM.map((x) => ratePerAxleKgPerM * (settled - raisedM - turn * x))
  return { axlesKg, couplingKg: totalOf(masses) - axlesKg.reduce((total, load) => total + load, 0) }
}
