import type { Unit } from './unit-table'

/** One number of a written quantity with the unit behind it, as it stands there; '5 ft 7 in' has two. */
export interface WrittenTerm {
  readonly value: number
  /** The number as written. */
  readonly text: string
  readonly name?: string
}

/** A decimal, a fraction, or a whole number with a fraction: '1.6', '1,5', '3/8', '1-3/4', '1 3/4', '4,500'. */
const number = /^[-−+]?(?:\d+(?:[ -]\d+\/\d+)|\d+\/\d+|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?|[.,]\d+)/
/** What no unit begins with. */
const notAUnit = /^[\d+\-−.,/\\]/

const readNumber = (written: string): number => {
  const negative = /^[-−]/.test(written)
  const bare = written.replace(/^[-−+]/, '')
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(bare)
  const value = mixed
    ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3])
    : Number(/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare) ? bare.replaceAll(',', '') : bare.replace(',', '.'))
  return negative ? -value : value
}

/** A number that stands right behind the unit, with none of its own: the 1 of 'lbf1'. */
const gluedNumber = /^\d[\d.,/]*(?:\s|$)/
const unknownWord = /^.+?(?=\s+[-−+]?[.,]?\d|$)/

type FindUnit = (name: string) => Unit | undefined

/** Whether a bare number may follow: 6 ft 9. */
const isFoot = (unit: Unit | undefined): boolean => unit?.symbol === 'ft'

/** The unit `rest` begins with: the longest that is known ('m2', 'per min'), so that '5ft7in' is two terms; else what was typed, for the refusal to show. */
const unitText = (rest: string, find: FindUnit): string => {
  const ends = [...rest.matchAll(/(?=[-−+]?[.,]?\d)|$/g)].map(({ index }) => index).filter((index) => index > 0)
  const known = ends.toReversed().map((end) => rest.slice(0, end)).find((text) => find(text.trim()) !== undefined)
  if (known !== undefined && (isFoot(find(known.trim())) || !gluedNumber.test(rest.slice(known.length)))) return known
  return unknownWord.exec(rest)?.[0] ?? rest
}

/** The numbers of a written quantity in their order, each with its unit; undefined where a number or a unit should begin and does not. */
export const readTerms = (written: string, find: FindUnit): readonly WrittenTerm[] | undefined => {
  const terms: WrittenTerm[] = []
  for (let rest = written; rest !== '';) {
    const text = number.exec(rest)?.[0]
    const value = text === undefined ? Number.NaN : readNumber(text)
    if (text === undefined || !Number.isFinite(value)) return undefined
    const behind = rest.slice(text.length).trimStart()
    if (notAUnit.test(behind)) return undefined
    const name = unitText(behind, find)
    terms.push({ value, text, ...(name !== '' && { name: name.trim() }) })
    rest = behind.slice(name.length).trimStart()
    // 5'-6": the stroke joins.
    if (isFoot(find(name.trim())) && /^-\d/.test(behind.slice(name.length))) rest = rest.slice(1)
  }
  return terms
}
