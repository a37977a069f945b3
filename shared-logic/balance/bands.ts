import { isOver, isUnder } from '../rules/beyond'
import type { BalanceBands } from '../sums/settings'
import type { Verdict } from '../survey/verdict'

export const balanceStandings = ['lifts', 'too light', 'very light', 'light', 'within', 'heavy', 'very heavy', 'over the static limit'] as const
/** How the coupling load lies: lifted, against the bands, or over the smallest static load marked. */
export type BalanceStanding = (typeof balanceStandings)[number]

/** The bands for a trailer and boat of this total, kg: `mostKg` as a share of it, where that is less than the share allowed. */
export const bandsAt = (bands: BalanceBands, totalKg: number): BalanceBands => {
  const most = bands.mostKg === undefined || !(totalKg > 0) ? Infinity : bands.mostKg / totalKg
  return most >= bands.passTo ? bands : { ...bands, passTo: most, target: Math.min(bands.target, most) }
}

/** Bands: practice, see `usualBands`. A lifted coupling and a load over the marked limit fail in any band. */
export const standingOfShare = (share: number, bands: BalanceBands): BalanceStanding => {
  if (share < 0) return 'lifts'
  if (isUnder(share, bands.failBelow)) return 'too light'
  if (isUnder(share, bands.noticeFrom)) return 'very light'
  if (isUnder(share, bands.passFrom)) return 'light'
  if (!isOver(share, bands.passTo)) return 'within'
  return isOver(share, bands.noticeTo) ? 'very heavy' : 'heavy'
}

/** The same with the smallest static load marked on coupler, ball, hitch or in the handbook, kg. */
export const standingOf = (share: number, couplingKg: number, bands: BalanceBands, smallestStaticKg: number | undefined): BalanceStanding =>
  smallestStaticKg !== undefined && isOver(couplingKg, smallestStaticKg) ? 'over the static limit' : standingOfShare(share, share > 0 ? bandsAt(bands, couplingKg / share) : bands)

export type StandingVerdict = Extract<Verdict, 'pass' | 'advisory' | 'fail'>
export const verdictOfStanding: Readonly<Record<BalanceStanding, StandingVerdict>> = {
  lifts: 'fail', 'too light': 'fail', 'over the static limit': 'fail', 'very light': 'advisory', light: 'advisory', heavy: 'advisory', 'very heavy': 'advisory', within: 'pass',
}
