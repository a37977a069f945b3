/** What a vehicle identification number comes to. Nothing is said of title or rating. */
export type IdentificationCheck =
  /** `allSame`: seventeen equal characters satisfy the sum by accident. */
  | { readonly kind: 'valid'; readonly allSame: boolean }
  | { readonly kind: 'bad digit'; readonly expected: string; readonly found: string }
  | { readonly kind: 'not 17'; readonly length: number }
  | { readonly kind: 'bad character'; readonly character: string; readonly place: number }

/** Table III of 49 CFR 565.15: what each letter counts. I, O and Q are not used. */
const letterValues: Readonly<Record<string, number>> = {
  A: 1, B: 2, C: 3, D: 4, E: 5, F: 6, G: 7, H: 8, J: 1, K: 2, L: 3, M: 4, N: 5, P: 7, R: 9, S: 2, T: 3, U: 4, V: 5, W: 6, X: 7, Y: 8, Z: 9,
}
/** Table IV of 49 CFR 565.15: what each place weighs; the check digit itself weighs nothing. */
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const
const checkPlace = 8

/** Spaces and hyphens out, capitals: as stamped. */
export const asStamped = (text: string): string => text.toUpperCase().replaceAll(/[\s-]/g, '')

const valueOf = (character: string): number | undefined => (/^\d$/.test(character) ? Number(character) : letterValues[character])

/**
 * Checks a vehicle identification number: seventeen characters, none of I, O, Q, and the check digit in the ninth place.
 * Outside North America no check digit is required: the caller decides what a bad one means.
 * Source: 49 CFR 565.15.
 */
export const checkIdentificationNumber = (text: string): IdentificationCheck => {
  const characters = asStamped(text).split('')
  if (characters.length !== weights.length) return { kind: 'not 17', length: characters.length }
  const wrong = characters.findIndex((character) => valueOf(character) === undefined)
  if (wrong >= 0) return { kind: 'bad character', character: characters[wrong] ?? '', place: wrong + 1 }
  const sum = characters.reduce((total, character, index) => total + (valueOf(character) ?? 0) * (weights[index] ?? 0), 0)
  const remainder = sum % 11
  const expected = remainder === 10 ? 'X' : String(remainder)
  const found = characters[checkPlace] ?? ''
  return found === expected ? { kind: 'valid', allSame: new Set(characters).size === 1 } : { kind: 'bad digit', expected, found }
}

/** Thirty letters and digits of a model year cycle, from 1980. From memory: Table VII of 49 CFR 565.15. */
const yearLetters = 'ABCDEFGHJKLMNPRSTVWXY123456789'

/** Both model years the tenth place may mean, thirty years apart; none when it is not a year letter. */
export const modelYearsOf = (text: string): readonly number[] => {
  const index = yearLetters.indexOf(asStamped(text).charAt(9) || ' ')
  return index < 0 ? [] : [1980 + index, 2010 + index]
}
