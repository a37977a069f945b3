/** Forces a securement system must withstand, as shares of the load's weight. Source: 49 CFR 393.102(a), (b). */
const shares = {
  /** Against the breaking strength of the system: 393.102(a)(1). */
  breaking: { forward: 0.8, rearward: 0.5, sideways: 0.5 },
  /** Against its working load limit: 393.102(a)(2). */
  working: { forward: 0.435, rearward: 0.5, sideways: 0.25 },
} as const
/** Downward, where the load is not fully contained: 393.102(b). */
const downwardShare = 0.2

export interface SecurementForces {
  readonly forwardN: number
  readonly rearwardN: number
  readonly sidewaysN: number
  readonly downwardN: number
}

/** The forces on a load of this weight, N. */
export const securementForces = (loadWeightN: number, against: keyof typeof shares): SecurementForces => ({
  forwardN: shares[against].forward * loadWeightN,
  rearwardN: shares[against].rearward * loadWeightN,
  sidewaysN: shares[against].sideways * loadWeightN,
  downwardN: downwardShare * loadWeightN,
})
