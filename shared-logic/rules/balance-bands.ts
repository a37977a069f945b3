import type { RuleBook } from './rule-book'

/** Where the coupling load should lie, as shares of the total of trailer and boat; `mostKg`: at most this, however heavy the trailer. */
export interface UsualBands {
  readonly target: number
  readonly passFrom: number
  readonly passTo: number
  readonly noticeFrom: number
  readonly noticeTo: number
  readonly failBelow: number
  readonly mostKg?: number
}

/**
 * Practice, not law, in both.
 *
 * us: common practice, no source; published tongue-weight literature gives 10 to 15 % for trailers in general and 7 to 12 % for boat trailers.
 * eu: about 7 % and at least 4 % (a vehicle maker's handbook); 5 to 7 % (a published UK towing guide); at most 10 % or 1,000 kg, whichever is
 * less (definition of the centre-axle trailer, as UN regulations and the ISO vocabulary have it: 10 % of the maximum mass or 1,000 daN).
 * 15 %, from where it is urgent, is the upper end of what is published in the United States.
 */
export const usualBands: Readonly<Record<RuleBook, UsualBands>> = {
  us: { target: 0.1, passFrom: 0.07, passTo: 0.15, noticeFrom: 0.05, noticeTo: 0.18, failBelow: 0.04 },
  eu: { target: 0.07, passFrom: 0.05, passTo: 0.1, noticeFrom: 0.04, noticeTo: 0.15, failBelow: 0.04, mostKg: 1000 },
}
