import { isOver, isUnder } from '../rules/beyond'
import { formatQuantity } from '../units/convert'
import type { Measured, UnitSystem } from '../units/quantity'
import type { PhraseValue, PhraseValues } from './phrase'

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']

/** '2026-11-25' as '25 November 2026': one form for every screen and page. */
export const sayDate = (iso: string): string => {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number)
  return `${day ?? ''} ${months[(month ?? 1) - 1] ?? ''} ${year ?? ''}`
}

/** '20 Nov', with its year where that is not told by what is around it: for places where the whole date has no room. */
export const sayDay = (iso: string, isYearKnown: boolean): string => {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number)
  return [day ?? '', months[(month ?? 1) - 1]?.slice(0, 3) ?? '', ...(isYearKnown ? [] : [year ?? ''])].join(' ')
}

const isMeasured = (value: PhraseValue | undefined): value is Measured => typeof value === 'object' && 'quantity' in value

const areTwo = (a: Measured, b: Measured): boolean => a.quantity === b.quantity && (isOver(a.si, b.si) || isUnder(a.si, b.si))

/** A figure that rounding would make equal to another of its sentence is shown as finely as its unit allows: '3,503 lb; rated 3,500 lb'. */
const showMeasured = (value: Measured, beside: readonly Measured[], system: UnitSystem): string => {
  const shown = formatQuantity(value.quantity, value.si, system)
  const readsAlike = beside.some((other) => areTwo(value, other) && formatQuantity(other.quantity, other.si, system) === shown)
  return readsAlike ? formatQuantity(value.quantity, value.si, system, 'fine') : shown
}

const show = (value: PhraseValue, beside: readonly Measured[], system: UnitSystem): string => {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  if (isMeasured(value)) return showMeasured(value, beside, system)
  return sayDate(value.date)
}

/** Fills the gaps of a sentence: 'Tread {depth}; at least {limit}.' A gap without a value stays visible, for the tests to find. */
export const say = (template: string, values: PhraseValues | undefined, system: UnitSystem): string => {
  const figures = Object.values(values ?? {}).filter(isMeasured)
  return template.replaceAll(/\{(\w+)\}/g, (gap, name: string) => {
    const value = values?.[name]
    return value === undefined ? gap : show(value, figures, system)
  })
}
