import { z } from 'zod'
import { reserveTarget } from '../rules/ratings'
import type { RuleBook } from '../rules/rule-book'

const share = z.number().min(0).max(0.5)

/**
 * Where the coupling load should lie, as shares of the total of trailer and boat.
 *
 * Pass from `passFrom` to `passTo`; advisory outside it; fail below `failBelow`, when the coupling is lifted, and over the smallest
 * marked static load. Common practice, no source: target 10 %, 7 to 15 % good, below 4 % a fail.
 */
export const balanceBandsSchema = z.object({
  target: share.default(0.1),
  passFrom: share.default(0.07),
  passTo: share.default(0.15),
  /** Beyond these an advisory turns urgent. */
  noticeFrom: share.default(0.05),
  noticeTo: share.default(0.18),
  failBelow: share.default(0.04),
})
export type BalanceBands = z.infer<typeof balanceBandsSchema>

/** Margins the sums are judged by; kept with the settings, one set of bands a rule book. */
export const sumsSettingsSchema = z.object({
  /** Reserve wanted under each limit, as a share of the rating. Common practice, no source. */
  reserve: z.number().min(0).max(0.5).default(reserveTarget),
  balance: z.object({ us: balanceBandsSchema.prefault({}), eu: balanceBandsSchema.prefault({}) }).prefault({}),
})
export type SumsSettings = z.infer<typeof sumsSettingsSchema>
export const defaultSumsSettings: SumsSettings = sumsSettingsSchema.parse({})

export const bandsOf = (settings: SumsSettings, ruleBook: RuleBook): BalanceBands => settings.balance[ruleBook]
