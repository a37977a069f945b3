/** What scales say of the rig: all from statics. Masses kg, lengths m, angles rad. */
export interface Weighed {
  readonly totalKg: number
  readonly centreM: number
  readonly couplingKg: number
}

/** Scale under the jockey wheel or stand at `standM` aft of the ball, and under the wheels; uncoupled, level. */
export const weighedOnPads = (standKg: number, standM: number, wheelsKg: number, axleM: number): Weighed => {
  const totalKg = standKg + wheelsKg
  return { totalKg, centreM: (standKg * standM + wheelsKg * axleM) / totalKg, couplingKg: (standKg * (axleM - standM)) / axleM }
}

/** Centre of mass off the middle, m to the right; `trackM` between the tyre centres. */
export const offsetToRightM = (leftKg: number, rightKg: number, trackM: number, totalKg: number): number => ((rightKg - leftKg) * (trackM / 2)) / totalKg

/** Public weighbridge: the tow vehicle alone, its axles with the trailer coupled, and the trailer's axles alone. */
export const weighedOnBridge = (towAloneKg: number, towCoupledKg: number, trailerAxlesKg: number, axleM: number): Weighed => {
  const couplingKg = towCoupledKg - towAloneKg
  const totalKg = couplingKg + trailerAxlesKg
  return { totalKg, centreM: (trailerAxlesKg * axleM) / totalKg, couplingKg }
}

/** Household scale under a beam: the coupling stands `supportToCouplingM` from the support, the scale that much plus `couplingToScaleM`. */
export const couplingByBeamKg = (readingKg: number, supportToCouplingM: number, couplingToScaleM: number): number =>
  (readingKg * (supportToCouplingM + couplingToScaleM)) / supportToCouplingM

/** The boat's mass from two coupling readings, the boat slid aft between them. */
export const boatBySlidingKg = (axleToScaleM: number, slidM: number, beforeKg: number, afterKg: number): number => (axleToScaleM * (beforeKg - afterKg)) / slidM

/** Two weighings of the coupling, level and with the nose raised, wheels on the ground. */
export interface NoseRaised {
  readonly totalKg: number
  readonly couplingLevelKg: number
  readonly couplingRaisedKg: number
  readonly axleM: number
  /** Angle the frame is raised by. */
  readonly raisedRad: number
  /** Height of the wheel centre above the ground. */
  readonly axleHeightM: number
  /** Height of the weighed point of the coupling above the ground, level. */
  readonly couplingHeightM: number
}

/**
 * Height of the centre of mass above the ground, m, from the coupling load level and with the nose raised.
 *
 * Undefined for an angle too small to tell (under half a degree). Source: statics, moments about the wheel centre after turning
 * the trailer by the angle.
 */
export const centreHeightByRaisingM = (weighings: NoseRaised): number | undefined => {
  const { totalKg, couplingLevelKg, couplingRaisedKg, axleM, raisedRad, axleHeightM, couplingHeightM } = weighings
  if (Math.abs(raisedRad) < Math.PI / 360 || !(totalKg > 0)) return undefined
  const aheadM = (couplingLevelKg * axleM) / totalKg
  const armM = axleM * Math.cos(raisedRad) - (couplingHeightM - axleHeightM) * Math.sin(raisedRad)
  return axleHeightM + (aheadM * Math.cos(raisedRad) - (couplingRaisedKg / totalKg) * armM) / Math.sin(raisedRad)
}
