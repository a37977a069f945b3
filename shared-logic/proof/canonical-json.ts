/** What JSON can carry. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json }

const text = (value: string): string => {
  if (!value.isWellFormed()) throw new Error('a text with half a surrogate pair has no canonical form')
  return JSON.stringify(value)
}

const number = (value: number): string => {
  if (!Number.isFinite(value)) throw new Error(`${value} has no canonical form`)
  return JSON.stringify(value)
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)

/**
 * The one way to write a value, so that it has one hash: RFC 8785, JSON Canonicalization Scheme. No white space, members
 * sorted by the UTF-16 code units of their names, text and numbers as ECMAScript's JSON.stringify writes them.
 * Throws for what the scheme refuses: numbers that are none, and halves of surrogate pairs.
 */
export const canonicalJson = (value: Json): string => {
  if (value === null || typeof value === 'boolean') return String(value)
  if (typeof value === 'number') return number(value)
  if (typeof value === 'string') return text(value)
  if (isList(value)) return `[${value.map(canonicalJson).join(',')}]`
  const members = Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
  return `{${members.map(([name, member]) => `${text(name)}:${canonicalJson(member)}`).join(',')}}`
}
