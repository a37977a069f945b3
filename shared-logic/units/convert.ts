import type { Quantity, UnitSystem } from './quantity'
import { roundForReading, tapeFraction } from './rounding'
import { shownIn, units, type Unit } from './unit-table'
import { readTerms, type WrittenTerm } from './written-terms'

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

const sayNumber = (value: number, isGrouped: boolean): string => {
  const [whole = '0', decimals] = Math.abs(value).toString().split('.')
  return `${value < 0 ? '−' : ''}${isGrouped ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole}${decimals ? `.${decimals}` : ''}`
}

/** 'as read': rounded as the quantity is read. 'fine': as finely as its unit is ever shown, where two figures must not read alike. */
export type Fineness = 'as read' | 'fine'

/** '12.7 mm', '0.5 in', '3/8 in', '1,974 kg': rounded for reading, never for reckoning; what was entered in this unit comes back as it was. A minus is a true minus sign. */
export const formatQuantity = (quantity: Quantity, si: number, system: UnitSystem, fineness: Fineness = 'as read'): string => {
  const { symbol, decimals } = shownIn[system][quantity]
  const value = fromSi(si, shownUnit(quantity, system))
  const fraction = symbol === 'in' ? tapeFraction(value) : undefined
  const rounded = fineness === 'fine' ? Number(value.toFixed(decimals)) : roundForReading(value, quantity, system, decimals)
  return `${fraction ?? sayNumber(rounded, quantity !== 'years')}${symbol === '°' ? '' : ' '}${symbol}`
}

/** In the unit it was written in, by that unit's symbol; as this reader's where the symbol is none of the quantity's. Comes back as it was entered: six digits are more than any rule has. */
export const formatAsWritten = (quantity: Quantity, si: number, symbol: string, system: UnitSystem): string => {
  const unit = units[quantity].find((each) => each.symbol === symbol)
  if (unit === undefined) return formatQuantity(quantity, si, system)
  const value = fromSi(si, unit)
  return `${(symbol === 'in' ? tapeFraction(value) : undefined) ?? sayNumber(Number(value.toPrecision(6)), true)} ${symbol}`
}

/** What was wrong with a written quantity; the sentence stands in the words under `refusals`. */
export type QuantityProblem =
  | { readonly code: 'quantity.empty' }
  | { readonly code: 'quantity.not-a-number'; readonly written: string }
  | { readonly code: 'quantity.unknown-unit'; readonly unit: string; readonly known: string }
  | { readonly code: 'quantity.no-unit-after'; readonly written: string; readonly number: string; readonly known: string }

/** `unit` is the symbol of the unit it was written in; of feet and inches, the inch's. */
export type ParsedQuantity = { readonly ok: true; readonly si: number; readonly unit: string } | { readonly ok: false; readonly problem: QuantityProblem }

const refused = (problem: QuantityProblem): ParsedQuantity => ({ ok: false, problem })

/** The unit of a number that has none: at the beginning the reader's own, after feet inches that do not make another foot; else nobody can tell. */
const unitOfBare = (quantity: Quantity, system: UnitSystem, before: Unit | undefined, value: number): Unit | undefined => {
  if (before === undefined) return shownUnit(quantity, system)
  return before.symbol === 'ft' && value < 12 ? findUnit(quantity, 'in') : undefined
}

/** A minus before the first number goes for the whole: −5 ft 6 in. */
const isMinus = ([first]: readonly WrittenTerm[]): boolean => first !== undefined && (first.value < 0 || Object.is(first.value, -0))

/**
 * Reads a quantity as people write it: '3/8 in', '1.6 mm', '4500 lb', '2.04 t', '5 ft 7 in', '6 ft 9', '18 gal', '45°'.
 * A number without a unit is taken in the unit shown for `system`, after feet in inches. Answers the SI value, or what was wrong.
 */
export const parseQuantity = (written: string, quantity: Quantity, system: UnitSystem): ParsedQuantity => {
  if (written.trim() === '') return refused({ code: 'quantity.empty' })
  const notANumber = refused({ code: 'quantity.not-a-number', written })
  const terms = readTerms(written.trim(), (name) => findUnit(quantity, name))
  const known = units[quantity].map(({ symbol }) => symbol).join(', ')
  if (terms === undefined) return notANumber
  let si = 0
  let last: Unit | undefined
  for (const { value, text, name } of terms) {
    const unit = name === undefined ? unitOfBare(quantity, system, last, value) : findUnit(quantity, name)
    if (!unit) return refused(name === undefined ? { code: 'quantity.no-unit-after', written, number: text, known } : { code: 'quantity.unknown-unit', unit: name, known })
    if (last !== undefined && (unit.offset !== undefined || value < 0)) return notANumber
    si += isMinus(terms) && last !== undefined ? -toSi(value, unit) : toSi(value, unit)
    last = unit
  }
  return { ok: true, si, unit: last?.symbol ?? '' }
}
