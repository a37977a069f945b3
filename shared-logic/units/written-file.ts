import { refuse } from '../contract/refusal'
import { parseQuantity } from './convert'
import type { Quantity } from './quantity'
import { units } from './unit-table'

/** Fields carry their SI unit in their name. */
const endings: Readonly<Record<string, Quantity>> = { Kg: 'mass', M: 'length', M2: 'area', M3: 'volume', Pa: 'pressure', N: 'force', Rad: 'angle' }

/** What a field of this name measures, by the unit in it; undefined for fields that take no unit. */
export const quantityOf = (field: string): Quantity | undefined => {
  if (field === 'fill' || field === 'share') return 'ratio'
  return field.endsWith('KgPerM') ? 'springRate' : endings[/[a-z](Kg|M2|M3|M|Pa|N|Rad)$/.exec(field)?.[1] ?? '']
}

const onlyNumber = /^[\s\d.,−+/-]*$/

const notRead = (path: string, written: string, known: string): never => refuse('file.unit-not-read', { written, known }, path)

const readText = (field: string, path: string, written: string): unknown => {
  const quantity = quantityOf(field)
  if (quantity === undefined) return written
  const known = units[quantity].map(({ symbol }) => symbol).join(', ')
  const parsed = onlyNumber.test(written) ? undefined : parseQuantity(written, quantity, 'metric')
  return parsed?.ok ? parsed.si : notRead(path, written, known)
}

/** The field a value stands in; the rows of a list are of the list's own. */
const fieldOf = (path: string): string => path.split('.').findLast((step) => !/^\d+$/.test(step)) ?? ''

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Reads every text with a unit as its SI number: '4500 lb', '2.04 t', '18 gal', '50 %', '4.5°'. Refuses by field what cannot be read. */
export const readUnits = (value: unknown, path = ''): unknown => {
  if (Array.isArray(value)) return value.map((each: unknown, index) => readUnits(each, `${path}.${index}`))
  if (isGroup(value)) return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, readUnits(inner, path === '' ? name : `${path}.${name}`)]))
  return typeof value === 'string' ? readText(fieldOf(path), path, value) : value
}

/** Path of the first field of `given` that the parsed value does not hold: one that is misspelt would otherwise be left away without a word. */
export const unknownField = (given: unknown, kept: unknown, path = ''): string | undefined => {
  if (Array.isArray(given)) return given.map((each: unknown, index) => unknownField(each, Array.isArray(kept) ? kept[index] : undefined, `${path}.${index}`)).find((found) => found !== undefined)
  if (!isGroup(given)) return undefined
  for (const [name, inner] of Object.entries(given)) {
    const at = path === '' ? name : `${path}.${name}`
    if (!isGroup(kept) || !Object.hasOwn(kept, name)) return at
    const below = unknownField(inner, kept[name], at)
    if (below !== undefined) return below
  }
  return undefined
}

const textFor = (field: string): Record<string, unknown> | undefined => {
  if (field.endsWith('Rad')) return { type: 'string', description: 'Degrees, such as "4.5°"; a number is radians.' }
  if (field === 'fill' || field === 'share') return { type: 'string', description: 'Per cent, such as "50 %"; a number is a share from 0 to 1.' }
  const quantity = quantityOf(field)
  return quantity && { type: 'string', description: `A number with its unit: ${units[quantity].map(({ symbol }) => symbol).join(', ')}.` }
}

/** A JSON Schema in which measured fields also take a text with its unit. */
export const withTexts = (schema: unknown, field = ''): unknown => {
  if (Array.isArray(schema)) return schema.map((each: unknown) => withTexts(each, field))
  if (!isGroup(schema)) return schema
  const text = schema['type'] === 'number' ? textFor(field) : undefined
  if (text) return { anyOf: [schema, text] }
  return Object.fromEntries(Object.entries(schema).map(([name, inner]) =>
    name === 'properties' && isGroup(inner) ? [name, Object.fromEntries(Object.entries(inner).map(([property, of]) => [property, withTexts(of, property)]))] : [name, withTexts(inner, '')]))
}
