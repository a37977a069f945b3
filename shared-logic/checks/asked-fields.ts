import type { FieldValues } from '../survey/answer'
import type { Check, Field } from './check'

/** Whether a field is asked, given what the others hold. */
export const isAsked = (field: Field, values: FieldValues): boolean => {
  if (field.when === undefined) return true
  const gate = values[field.when.field]
  return typeof gate === 'string' && field.when.oneOf.includes(gate)
}

/** Only the values of fields that are asked, given the others: a hidden field's old value is not judged. */
export const askedValues = (check: Check, values: FieldValues): FieldValues =>
  Object.fromEntries(check.fields.filter((field) => values[field.id] !== undefined && isAsked(field, values)).map((field) => [field.id, values[field.id]]))
