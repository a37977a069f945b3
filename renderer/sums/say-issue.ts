import type { z } from 'zod'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { Quantity, UnitSystem } from '../../shared-logic/units/quantity'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'

/** A field as a sentence names it, and how its limits are told. */
export interface NamedField {
  readonly label: string
  readonly quantity?: Quantity | undefined
}

/** Why a value cannot be taken: the field and what would be right. */
export const sayIssue = (words: Words, issue: z.core.$ZodIssue | undefined, { label, quantity }: NamedField, units: UnitSystem): string => {
  const { problems } = words.screens.sums
  const limit = (value: number | bigint): string => (quantity ? formatQuantity(quantity, Number(value), units) : String(value))
  if (issue?.code === 'too_small') return say(issue.inclusive === true ? problems.atLeast : problems.moreThan, { limit: limit(issue.minimum), field: label }, units)
  if (issue?.code === 'too_big') return say(problems.atMost, { limit: limit(issue.maximum), field: label }, units)
  return issue?.code === 'custom' ? problems.apart : say(problems.other, { field: label }, units)
}
