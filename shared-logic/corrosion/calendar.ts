const yearDays = 365.2425
const dayMs = 86_400_000

const dayOf = (iso: string): number => Date.parse(`${iso.slice(0, 10)}T00:00:00Z`) / dayMs

/** Years from one ISO date to another, parts of a year counted in days. */
export const yearsBetween = (from: string, to: string): number => (dayOf(to) - dayOf(from)) / yearDays

/** The ISO date so many years on, to the day. */
export const dateAfter = (from: string, years: number): string => new Date(Math.round(dayOf(from) + years * yearDays) * dayMs).toISOString().slice(0, 10)

export const yearOf = (iso: string): number => Number(iso.slice(0, 4))
