import type { Check } from '../../shared-logic/checks/check'
import { problemsOf, type FieldProblem } from '../../shared-logic/checks/parse-values'
import { Refusal, type RefusalData } from '../../shared-logic/contract/refusal'
import type { FieldValues } from '../../shared-logic/survey/answer'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { formatQuantity } from '../../shared-logic/units/convert'

/** The bounds of the field in the surveyor's units: '0.5 mm'. */
const gapsOf = (check: Check, { field: id, limitSi }: FieldProblem, units: UnitSystem): RefusalData['values'] => {
  const field = check.fields.find((candidate) => candidate.id === id)
  if (field === undefined) return { name: id }
  if (field.kind === 'text') return { limit: field.maxLength }
  if (limitSi === undefined) return undefined
  return { limit: field.kind === 'reading' ? formatQuantity(field.quantity, limitSi, units) : limitSi }
}

/** Refuses an answer whose values do not fit its check's fields, naming the first as '<check>.<field>'. */
export const refuseProblems = (check: Check, values: FieldValues, surveyDate: string, units: UnitSystem): void => {
  const [problem] = problemsOf(check, values, surveyDate)
  if (problem) throw new Refusal({ code: problem.code, field: `${check.id}.${problem.field}`, values: gapsOf(check, problem, units) })
}
