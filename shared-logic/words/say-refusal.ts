import { checkOf } from '../checks/catalogue'
import type { RefusalData } from '../contract/refusal'
import type { Words } from './en'

/** 'massKg' as 'Mass', 'identificationNumber' as 'Identification number'. */
const spelledOut = (word: string): string => {
  const plain = word.replace(/(?:Kg|Pa|M2|M3|M|Px)$/, '').replaceAll(/([a-z])([A-Z])/g, '$1 $2').replaceAll('-', ' ').toLowerCase()
  return `${plain.slice(0, 1).toUpperCase()}${plain.slice(1)}`
}

const lastWord = (path: string): string => spelledOut(path.split('.').findLast((part) => !/^\d+$/.test(part)) ?? path)

/** The field's label: the register's by dotted path (from the first step that has one), a check's own, else the path's last word. */
export const sayField = (words: Words, path: string): string => {
  const steps = path.split('.')
  for (let from = 0; from < steps.length; from += 1) {
    const label = words.fields[steps.slice(from).filter((step) => !/^\d+$/.test(step)).join('.')]
    if (label !== undefined) return label
  }
  const fieldId = steps.at(-1) ?? ''
  const check = checkOf(steps.slice(0, -1).join('.'))
  const own = check && words.checks[check.id]
  return own?.fields?.[fieldId]?.label ?? own?.title ?? lastWord(path)
}

/** The sentence of a refusal, its gaps filled; '{field}' is the field's label. A code without a sentence shows itself rather than nothing; the tests look for such. */
export const sayRefusal = (words: Words, refusal: RefusalData): string =>
  (words.refusals[refusal.code] ?? refusal.code).replaceAll(/\{([\w-]+)\}/g, (gap, name: string) =>
    String(refusal.values?.[name] ?? (name === 'field' && refusal.field !== undefined ? sayField(words, refusal.field) : gap)))
