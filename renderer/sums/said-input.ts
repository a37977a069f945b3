import { assertNever } from '../../shared-logic/assert-never'
import type { Rig } from '../../shared-logic/rig/rig'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say, sayDate } from '../../shared-logic/words/say'
import type { SumsGroup, SumsInput } from './fields'
import { labelOf } from './label-of'
import { valueAt } from './rig-paths'

const sayChoice = ({ screens: { sums } }: Words, input: Extract<SumsInput, { kind: 'choice' }>, value: string): string => {
  const labels: Readonly<Record<string, string>> = sums[input.words]
  return (labels[value] ?? value).toLowerCase()
}

const sayValue = (words: Words, input: SumsInput, value: unknown, units: UnitSystem): string => {
  const { yes, no } = words.screens.sums
  switch (input.kind) {
    case 'quantity':
      return typeof value === 'number' ? formatQuantity(input.quantity, value, units) : ''
    case 'choice':
      return typeof value === 'string' ? sayChoice(words, input, value) : ''
    case 'flag':
      return (value === true ? yes : no).toLowerCase()
    case 'date':
      return typeof value === 'string' ? sayDate(value) : ''
    case 'count':
      return String(value)
    default:
      return assertNever(input)
  }
}

/** What a group holds, in a line: how many of its fields are known, and what they say. */
export const sayGroup = (words: Words, { inputs }: SumsGroup, rig: Rig, units: UnitSystem): { readonly count: string; readonly line: string } => {
  const known = inputs.filter(({ path }) => valueAt(rig, path) !== undefined)
  return {
    count: say(words.screens.sums.known, { known: known.length, all: inputs.length }, units),
    line: known.map((input) => `${labelOf(words, input.path)} ${sayValue(words, input, valueAt(rig, input.path), units)}`).join('; '),
  }
}
