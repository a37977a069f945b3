/** Standard gravity, m/s2, exact by definition (CGPM 1901). */
export const standardGravity = 9.80665

/** Wheel loads on a side slope, kg as the scales would show. Source: statics, moments about the lower tyre. */
export const onSideSlope = (axleKg: number, centreHeightM: number, trackM: number, slopeRad: number): { readonly upperKg: number; readonly lowerKg: number } => {
  const upright = axleKg * Math.cos(slopeRad)
  const shift = (axleKg * Math.sin(slopeRad) * centreHeightM) / trackM
  return { upperKg: upright / 2 - shift, lowerKg: upright / 2 + shift }
}

/** Side slope at which the upper wheel lifts, rad. Source: statics. */
export const tipsAtRad = (centreHeightM: number, trackM: number): number => Math.atan(trackM / 2 / centreHeightM)

/**
 * Coupling load gained while braking, kg.
 *
 * `deceleration` as share of gravity; `trailerBrakesShare`: how much of its own slowing the trailer's brakes do (1 all of it,
 * 0 the tow vehicle does). Source: statics with the inertia force at the centre of mass, brake force at the ground and coupling
 * force at the ball.
 */
export const couplingGainedBrakingKg = (
  totalKg: number, centreHeightM: number, ballHeightM: number, axleM: number, deceleration: number, trailerBrakesShare: number,
): number => (totalKg * deceleration * (centreHeightM - (1 - trailerBrakesShare) * ballHeightM)) / axleM

/** Deceleration reached, as share of gravity, from the brake forces measured at the wheels. Source: Newton's second law. */
export const decelerationReached = (brakeForcesN: readonly number[], totalKg: number): number =>
  brakeForcesN.reduce((sum, force) => sum + force, 0) / (totalKg * standardGravity)
