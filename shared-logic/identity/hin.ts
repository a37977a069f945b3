import { asStamped } from './vin'

/** What a hull identification number comes to. `month` 1 to 12. */
export type HullNumberCheck =
  | { readonly kind: 'valid'; readonly form: 'current' | 'older'; readonly maker: string; readonly serial: string; readonly month: number; readonly year: number | undefined; readonly modelYear: number }
  /** Fourteen characters beginning with a country: ISO 10087, not decoded here. */
  | { readonly kind: 'international'; readonly country: string }
  | { readonly kind: 'bad length'; readonly length: number }
  | { readonly kind: 'bad maker' }
  | { readonly kind: 'bad serial'; readonly character: string }
  | { readonly kind: 'bad month'; readonly character: string }
  | { readonly kind: 'bad year' }

const serialCharacter = /^[A-HJ-NPR-Z0-9]$/

/** Two digits of a model year; numbers began in 1972. */
const centuryOf = (twoDigits: number): number => (twoDigits >= 72 ? 1900 : 2000) + twoDigits

/** The year ending in this digit that lies nearest to the model year, the earlier of two. */
const nearestYear = (digit: number, modelYear: number): number => {
  const candidates = Array.from({ length: 11 }, (_, index) => modelYear - 5 + index).filter((year) => year % 10 === digit)
  return candidates.toSorted((a, b) => Math.abs(a - modelYear) - Math.abs(b - modelYear) || a - b)[0] ?? modelYear
}

/** Months A to L. The current form begins in January, the older one with the model year, in August. */
const monthOf = (letter: string, first: number): number | undefined => {
  const index = letter >= 'A' && letter <= 'L' ? letter.charCodeAt(0) - 65 : -1
  return index < 0 ? undefined : ((first - 1 + index) % 12) + 1
}

const decode = (maker: string, serial: string, date: string): HullNumberCheck => {
  const older = /^M(\d\d)([A-L])$/.exec(date)
  if (older) {
    const month = monthOf(older[2] ?? '', 8) ?? 0
    return { kind: 'valid', form: 'older', maker, serial, month, year: undefined, modelYear: centuryOf(Number(older[1])) }
  }
  const month = monthOf(date.charAt(0), 1)
  if (month === undefined) return { kind: 'bad month', character: date.charAt(0) }
  if (!/^\d{3}$/.test(date.slice(1))) return { kind: 'bad year' }
  const modelYear = centuryOf(Number(date.slice(2)))
  return { kind: 'valid', form: 'current', maker, serial, month, year: nearestYear(Number(date.charAt(1)), modelYear), modelYear }
}

/**
 * Checks the form of a hull identification number: three letters of the maker, five of the serial (no I, O, Q), month and
 * year of certification, model year. A 'US-' before it is set aside. The older form M, two digits, letter is known too.
 * Source: 33 CFR 181.25; the older form and the prefix from notes on it; fourteen characters, ISO 10087, from memory.
 */
export const checkHullNumber = (text: string): HullNumberCheck => {
  const stamped = asStamped(text)
  const number = stamped.length === 14 && stamped.startsWith('US') ? stamped.slice(2) : stamped
  if (number.length === 14 && /^[A-Z]{2}/.test(number)) return { kind: 'international', country: number.slice(0, 2) }
  if (number.length !== 12) return { kind: 'bad length', length: number.length }
  if (!/^[A-Z]{3}/.test(number)) return { kind: 'bad maker' }
  const wrong = number.slice(3, 8).split('').find((character) => !serialCharacter.test(character))
  return wrong === undefined ? decode(number.slice(0, 3), number.slice(3, 8), number.slice(8)) : { kind: 'bad serial', character: wrong }
}
