import type { Check, Field } from '../../shared-logic/checks/check'
import type { FieldProblem } from '../../shared-logic/checks/parse-values'
import type { Verdict } from '../../shared-logic/survey/verdict'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { measured } from '../../shared-logic/units/quantity'
import { optionLabel, wordsOf } from '../../shared-logic/words/check-sentences'
import type { Words } from '../../shared-logic/words/en'
import { say } from '../../shared-logic/words/say'

/** What is read at one field. */
export interface FieldSaid {
  readonly label: string
  readonly hint: string | undefined
  readonly error: string | undefined
  readonly options: readonly { readonly value: string; readonly label: string; readonly verdict: Verdict | undefined }[]
}

const sentence = (words: Words, field: Field, label: string, problem: FieldProblem, units: UnitSystem): string => {
  const { limitSi } = problem
  const limit = limitSi === undefined ? '' : field.kind === 'reading' ? measured(field.quantity, limitSi) : limitSi
  return say(words.refusals[problem.code] ?? problem.code, { field: label, limit }, units)
}

/** Labels, hints, options and problems of a field in words. An option shows its verdict only where options are the outcomes. */
export const fieldWords = (words: Words, check: Check, field: Field, problems: readonly FieldProblem[], units: UnitSystem): FieldSaid => {
  const own = wordsOf(words, check)
  const label = own.fields?.[field.id]?.label ?? own.title
  const problem = problems.find((each) => each.field === field.id)
  const outcomesAreOptions = check.fields.length === 1
  return {
    label,
    hint: own.fields?.[field.id]?.hint,
    error: problem && sentence(words, field, label, problem, units),
    options:
      field.kind === 'choice'
        ? field.options.map((option) => ({ value: option, label: optionLabel(words, check, field, option), verdict: outcomesAreOptions ? check.outcomes[option]?.verdict : undefined }))
        : [],
  }
}
