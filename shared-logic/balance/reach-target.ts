import { leverOf, momentOf, totalOf, type Mass } from './lever'

/**
 * How far to move some masses together, m forward (negative: aft), so that the coupling carries `targetShare` of the total.
 *
 * `moved`: ids of what goes together, such as the boat with everything fixed to it. Undefined without mass to move.
 * Source: statics; from T = M − Σ m·x / L, dT/dx = −m / L.
 */
export const moveForShareM = (masses: readonly Mass[], axleM: number, moved: ReadonlySet<string>, targetShare: number): number | undefined => {
  const lever = leverOf(masses, axleM)
  const movedKg = totalOf(masses.filter(({ id }) => moved.has(id)))
  if (lever === undefined || !(movedKg > 0)) return undefined
  return ((targetShare * lever.totalKg - lever.couplingKg) * axleM) / movedKg
}

/** The same masses with some of them moved forward by `forwardM`. */
export const withMoved = (masses: readonly Mass[], moved: ReadonlySet<string>, forwardM: number): Mass[] =>
  masses.map((mass) => (moved.has(mass.id) ? { ...mass, atM: mass.atM - forwardM } : mass))

/**
 * Where the axle has to stand, m aft of the ball, so that the coupling carries `targetShare`.
 *
 * `axleGroupKg`: mass of axle, wheels and brakes that moves with it; 0 where it is neglected. `masses` then holds the rest.
 * Undefined when no place gives that share. Source: statics.
 */
export const axleForShareM = (masses: readonly Mass[], targetShare: number, axleGroupKg = 0): number | undefined => {
  const totalKg = totalOf(masses) + axleGroupKg
  const carried = totalKg * (1 - targetShare) - axleGroupKg
  if (!(carried > 0)) return undefined
  const axleM = momentOf(masses) / carried
  return axleM > 0 ? axleM : undefined
}
