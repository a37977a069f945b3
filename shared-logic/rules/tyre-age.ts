import type { TyreDateCode } from '../identity/tyre-date-code'

/** Years after which a trailer tyre is old, and too old. Common practice, no source; the US agency defers to the makers. */
export const oldTyreYears = 6
export const tooOldTyreYears = 10

const dayMs = 86_400_000

/** Monday of an ISO week, UTC ms. The rule does not say that its week is the ISO week: one week either way is normal. */
const mondayOf = (year: number, week: number): number => {
  const fourth = new Date(Date.UTC(year, 0, 4))
  const sinceMonday = (fourth.getUTCDay() + 6) % 7
  return fourth.getTime() - sinceMonday * dayMs + (week - 1) * 7 * dayMs
}

/** Monday of the week a code names, ISO date. */
export const madeOn = ({ year, week }: TyreDateCode): string => new Date(mondayOf(year, week)).toISOString().slice(0, 10)

/** Age on a date, in years of 365.25 days; negative for a code that lies ahead. */
export const tyreAgeYears = ({ year, week }: TyreDateCode, date: string): number =>
  (Date.parse(`${date}T00:00:00Z`) - mondayOf(year, week)) / dayMs / 365.25
