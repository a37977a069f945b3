import { weightN } from '../units/us-customary'
import { isUnder } from './beyond'
import { classChainForceN } from './coupler-classes'

export interface ChainNeed {
  /** Strict reading: each chain by itself, the class figure (never less than the weight towed). */
  readonly eachN: number
  /** Federal benchmark: all chains together. */
  readonly togetherN: number
}

/**
 * What safety chains must hold behind a trailer of this maximum mass, N.
 * Together: 49 CFR 393.70(d) and the agency's guidance that two chains count combined.
 * Each: New Hampshire RSA 266:63 'each chain', and the class figure of SAE J684.
 */
export const chainNeedFor = (maximumKg: number): ChainNeed => {
  const weight = weightN(maximumKg)
  return { eachN: Math.max(weight, classChainForceN(maximumKg)), togetherN: weight }
}

export interface ChainStanding {
  readonly eachEnough: boolean
  readonly togetherEnough: boolean
}

/** How equal chains of a breaking force stand against both readings of the rule. */
export const judgeChains = (breakingForceN: number, count: number, need: ChainNeed): ChainStanding => ({
  eachEnough: !isUnder(breakingForceN, need.eachN),
  togetherEnough: !isUnder(breakingForceN * count, need.togetherN),
})
