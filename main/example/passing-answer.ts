import { isAsked } from '../../shared-logic/checks/asked-fields'
import type { Check, Field, JudgeContext } from '../../shared-logic/checks/check'
import type { FieldValues } from '../../shared-logic/survey/answer'

type Values = Readonly<Record<string, string>>

const mustBeFilled = (field: Field): boolean => field.optional !== true

/** Every way to answer the choices of a check in order, as far as its further fields are choices too or may stay empty. */
const waysToAnswer = (fields: readonly Field[], chosen: Values = {}): readonly Values[] => {
  const [field, ...rest] = fields
  if (field === undefined) return [chosen]
  if (!isAsked(field, chosen) || !mustBeFilled(field)) return waysToAnswer(rest, chosen)
  if (field.kind !== 'choice') return []
  return field.options.flatMap((option) => waysToAnswer(rest, { ...chosen, [field.id]: option }))
}

const verdictOf = (check: Check, values: FieldValues, context: JudgeContext): string | undefined => {
  const found = check.judge(values, context)
  return found && check.outcomes[found.outcome]?.verdict
}

/**
 * The first answer by choices alone with which a check passes here, or else does not apply; undefined where it takes a
 * reading, which has to be written by hand.
 */
export const passingAnswer = (check: Check, context: JudgeContext): Values | undefined => {
  const ways = waysToAnswer(check.fields)
  return ways.find((values) => verdictOf(check, values, context) === 'pass') ?? ways.find((values) => verdictOf(check, values, context) === 'not applicable')
}
