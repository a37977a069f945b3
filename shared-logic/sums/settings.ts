import { z } from 'zod'
import { usualBands, type UsualBands } from '../rules/balance-bands'
import { reserveTarget } from '../rules/ratings'
import type { RuleBook } from '../rules/rule-book'

const share = z.number().min(0).max(0.5)

/**
 * Where the coupling load should lie, as shares of the total of trailer and boat.
 *
 * Pass from `passFrom` to `passTo`, or to `mostKg` where that is less; advisory outside it; fail below `failBelow`, when the coupling is
 * lifted, and over the smallest marked static load. What stands here unless it is set: `usualBands`, with its sources.
 */
const bandsSchema = (usual: UsualBands) => z.object({
  target: share.default(usual.target),
  passFrom: share.default(usual.passFrom),
  passTo: share.default(usual.passTo),
  /** Beyond these an advisory turns urgent. */
  noticeFrom: share.default(usual.noticeFrom),
  noticeTo: share.default(usual.noticeTo),
  failBelow: share.default(usual.failBelow),
  mostKg: z.number().positive().max(40_000).optional(),
})
export type BalanceBands = z.infer<ReturnType<typeof bandsSchema>>

const keys = ['target', 'passFrom', 'passTo', 'noticeFrom', 'noticeTo', 'failBelow'] as const
const isSame = (bands: UsualBands, other: UsualBands): boolean => keys.every((key) => bands[key] === other[key])

/**
 * Bands kept before Europe had its own carry the United States figures and no `mostKg`: nobody chose them, and no screen asked. They become
 * Europe's own. Whoever wants the other figures under this rule book sets them again, and they are then kept with a `mostKg`.
 */
const settled = (bands: BalanceBands): BalanceBands => {
  if (bands.mostKg !== undefined) return bands
  return isSame(bands, usualBands.us) ? { ...usualBands.eu } : { ...bands, mostKg: usualBands.eu.mostKg }
}

/** Margins the sums are judged by; kept with the settings, one set of bands a rule book. */
export const sumsSettingsSchema = z.object({
  /** Reserve wanted under each limit, as a share of the rating. Common practice, no source. */
  reserve: z.number().min(0).max(0.5).default(reserveTarget),
  balance: z.object({ us: bandsSchema(usualBands.us).prefault({}), eu: bandsSchema(usualBands.eu).prefault({}).transform(settled) }).prefault({}),
})
export type SumsSettings = z.infer<typeof sumsSettingsSchema>
export const defaultSumsSettings: SumsSettings = sumsSettingsSchema.parse({})

/** The bands from the lowest to the highest; each has to lie at or above the one before. */
const bandOrder = ['failBelow', 'noticeFrom', 'passFrom', 'target', 'passTo', 'noticeTo'] as const satisfies readonly (keyof BalanceBands)[]

/** The first two bands that lie the wrong way round, so that nothing could be judged by them; undefined when all are in order. */
export const bandsOutOfOrder = (bands: BalanceBands): { readonly lower: keyof BalanceBands; readonly upper: keyof BalanceBands } | undefined => {
  for (const [index, upper] of bandOrder.entries()) {
    const lower = bandOrder[index - 1]
    if (lower !== undefined && bands[lower] > bands[upper]) return { lower, upper }
  }
  return undefined
}

export const bandsOf = (settings: SumsSettings, ruleBook: RuleBook): BalanceBands => settings.balance[ruleBook]

/** Whose bands they are: the rule book's usual ones, or the reader's own. */
export type BandsFrom = RuleBook | 'own settings'
export const bandsFrom = (bands: BalanceBands, ruleBook: RuleBook): BandsFrom =>
  isSame(bands, usualBands[ruleBook]) && bands.mostKg === usualBands[ruleBook].mostKg ? ruleBook : 'own settings'
