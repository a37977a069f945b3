import type { FieldValues } from '../survey/answer'
import type { ByWhen } from '../survey/verdict'
import type { Check, Found, Outcome } from './check'

export const passed: Outcome = { verdict: 'pass' }
export const advisory = (by: ByWhen): Outcome => ({ verdict: 'advisory', by })
export const failed = (by: ByWhen): Outcome => ({ verdict: 'fail', by })
/** What was recorded is that it could not be judged. */
export const unseen: Outcome = { verdict: 'not seen' }
export const notApplicable: Outcome = { verdict: 'not applicable' }

export const numberOf = (values: FieldValues, field: string): number | undefined => {
  const value = values[field]
  return typeof value === 'number' ? value : undefined
}

export const textOf = (values: FieldValues, field: string): string | undefined => {
  const value = values[field]
  return typeof value === 'string' ? value : undefined
}

type ChoiceRow = Omit<Check, 'fields' | 'judge'>

/** A check answered by one choice among its outcomes: each option is the outcome of the same name. */
export const choiceCheck = (row: ChoiceRow): Check => ({
  ...row,
  fields: [{ kind: 'choice', id: 'condition', options: Object.keys(row.outcomes) }],
  judge: (values): Found | undefined => {
    const outcome = textOf(values, 'condition')
    return outcome === undefined ? undefined : { outcome }
  },
})
