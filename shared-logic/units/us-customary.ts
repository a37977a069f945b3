/** 1 lb, exact (international yard and pound agreement of 1959). */
const poundKg = 0.45359237
/** m/s2; the standard gravity that defines the pound-force. */
export const standardGravity = 9.80665

export const pounds = (lb: number): number => lb * poundKg
export const poundsForce = (lbf: number): number => lbf * poundKg * standardGravity
export const inches = (inch: number): number => inch * 0.0254
export const feet = (ft: number): number => ft * 0.3048

/** Force in N with which a mass in kg weighs down, at standard gravity: so that 3,500 lb weigh 3,500 lbf. */
export const weightN = (massKg: number): number => massKg * standardGravity
