/** Week and year a tyre was made in, as moulded on its sidewall. */
export interface TyreDateCode {
  readonly week: number
  /** Of a three-digit code the youngest year it can mean: '317' is 1997, though it may be 1987. */
  readonly year: number
  /** False for three digits: they do not tell the decade. */
  readonly decadeCoded: boolean
  /** False for week 53 of a year that has only 52. */
  readonly weekInYear: boolean
}

const hasWeek53 = (year: number): boolean => {
  const first = new Date(Date.UTC(year, 0, 1)).getUTCDay()
  const last = new Date(Date.UTC(year, 11, 31)).getUTCDay()
  return first === 4 || last === 4
}

/** The last group of a whole identification number counts: 'DOT U2LL LMLR 5107' is '5107'. */
const lastGroup = (written: string): string => written.trim().replace(/^DOT/i, '').replaceAll(/[()<>◁◀]/g, ' ').trim().split(/\s+/).at(-1) ?? ''

/**
 * Reads a tyre's date code: week and year in four digits since 2000, three digits before.
 * Undefined for anything else, and for week 00 or above 53.
 * Source: 49 CFR 574.5; published decodings.
 */
export const readTyreDateCode = (written: string): TyreDateCode | undefined => {
  const match = /^(\d{2})(\d{1,2})$/.exec(lastGroup(written))
  if (match?.[1] === undefined || match[2] === undefined) return undefined
  const week = Number(match[1])
  if (week < 1 || week > 53) return undefined
  const decadeCoded = match[2].length === 2
  const year = (decadeCoded ? 2000 : 1990) + Number(match[2])
  return { week, year, decadeCoded, weekInYear: week < 53 || hasWeek53(year) }
}
