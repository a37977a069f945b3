import { formatQuantity } from '../units/convert'
import type { UnitSystem } from '../units/quantity'
import type { PhraseValue, PhraseValues } from './phrase'

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']

/** '2026-11-25' as '25 November 2026': one form for every screen and page. */
export const sayDate = (iso: string): string => {
  const [year, month, day] = iso.slice(0, 10).split('-').map(Number)
  return `${day ?? ''} ${months[(month ?? 1) - 1] ?? ''} ${year ?? ''}`
}

const show = (value: PhraseValue, system: UnitSystem): string => {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  if ('date' in value) return sayDate(value.date)
  return formatQuantity(value.quantity, value.si, system)
}

/** Fills the gaps of a sentence: 'Tread {depth}; at least {limit}.' A gap without a value stays visible, for the tests to find. */
export const say = (template: string, values: PhraseValues | undefined, system: UnitSystem): string =>
  template.replaceAll(/\{(\w+)\}/g, (gap, name: string) => {
    const value = values?.[name]
    return value === undefined ? gap : show(value, system)
  })
