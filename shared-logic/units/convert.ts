import type { Quantity, UnitSystem } from './quantity'
import { shownIn, units, type Unit } from './unit-table'

const findUnit = (quantity: Quantity, written: string): Unit | undefined => {
  const exact = units[quantity].find((unit) => unit.symbol === written)
  if (exact) return exact
  const wanted = written.toLowerCase()
  return units[quantity].find((unit) => unit.symbol.toLowerCase() === wanted || unit.spellings.includes(wanted))
}

export const toSi = (value: number, unit: Unit): number => value * unit.perSi + (unit.offset ?? 0)
export const fromSi = (si: number, unit: Unit): number => (si - (unit.offset ?? 0)) / unit.perSi

/** The unit this quantity is shown in for this reader. */
export const shownUnit = (quantity: Quantity, system: UnitSystem): Unit => {
  const { symbol } = shownIn[system][quantity]
  const unit = units[quantity].find((candidate) => candidate.symbol === symbol)
  if (!unit) throw new Error(`no unit ${symbol} for ${quantity}`)
  return unit
}

/** '12.7 mm', '0.5 in', '1,974 kg': rounded for reading, never for reckoning. A minus is a true minus sign. */
export const formatQuantity = (quantity: Quantity, si: number, system: UnitSystem): string => {
  const shown = shownIn[system][quantity]
  const value = fromSi(si, shownUnit(quantity, system))
  const rounded = Number(value.toFixed(shown.decimals))
  const [whole = '0', fraction] = Math.abs(rounded).toString().split('.')
  const grouped = quantity === 'years' ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ',')
  const number = `${rounded < 0 ? '−' : ''}${grouped}${fraction ? `.${fraction}` : ''}`
  return shown.symbol === '%' ? `${number} %` : `${number} ${shown.symbol}`
}

/** What was wrong with a written quantity; the sentence stands in the words under `refusals`. */
export type QuantityProblem =
  | { readonly code: 'quantity.empty' }
  | { readonly code: 'quantity.not-a-number'; readonly written: string }
  | { readonly code: 'quantity.unknown-unit'; readonly unit: string; readonly known: string }

export type ParsedQuantity = { readonly ok: true; readonly si: number } | { readonly ok: false; readonly problem: QuantityProblem }

/** A decimal, a fraction, or a whole number with a fraction: '1.6', '1,5', '3/8', '1-3/4', '1 3/4', '4,500'. */
const number = String.raw`[-−+]?(?:\d+(?:[ -]\d+\/\d+)|\d+\/\d+|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?|[.,]\d+)`
const term = new RegExp(String.raw`^\s*(${number})\s*([^\d\s+\-−][^\d]*?)?\s*(?=$|\d)`)

const readNumber = (written: string): number => {
  const negative = /^[-−]/.test(written)
  const bare = written.replace(/^[-−+]/, '')
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(bare)
  const value = mixed
    ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3])
    : Number(/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare) ? bare.replaceAll(',', '') : bare.replace(',', '.'))
  return negative ? -value : value
}

/**
 * Reads a quantity as people write it: '3/8 in', '1.6 mm', '4500 lb', '2.04 t', '5 ft 7 in', '18 gal'.
 * A number without a unit is taken in the unit shown for `system`. Answers the SI value, or what was wrong.
 */
export const parseQuantity = (written: string, quantity: Quantity, system: UnitSystem): ParsedQuantity => {
  let rest = written.trim()
  if (rest === '') return { ok: false, problem: { code: 'quantity.empty' } }
  let si = 0
  let terms = 0
  let negative = false
  while (rest !== '') {
    const match = term.exec(rest)
    const value = match?.[1] === undefined ? Number.NaN : readNumber(match[1])
    if (!match || !Number.isFinite(value)) return { ok: false, problem: { code: 'quantity.not-a-number', written } }
    const name = match[2]?.trim()
    if (name === undefined && (terms > 0 || match[0].length < rest.length)) return { ok: false, problem: { code: 'quantity.not-a-number', written } }
    const unit = name === undefined ? shownUnit(quantity, system) : findUnit(quantity, name)
    if (!unit) return { ok: false, problem: { code: 'quantity.unknown-unit', unit: name ?? '', known: units[quantity].map((known) => known.symbol).join(', ') } }
    if (terms > 0 && (unit.offset !== undefined || value < 0)) return { ok: false, problem: { code: 'quantity.not-a-number', written } }
    negative = negative || value < 0 || Object.is(value, -0)
    si += terms > 0 && negative ? -toSi(value, unit) : toSi(value, unit)
    terms += 1
    rest = rest.slice(match[0].length)
  }
  return { ok: true, si }
}
