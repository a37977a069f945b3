import { assertNever } from '../assert-never'
import { isAsked } from '../checks/asked-fields'
import type { Check, Field } from '../checks/check'
import { asShownUnder, isBenchmark } from '../rules/cite'
import type { RuleBook, Source } from '../rules/rule-book'
import type { Assessed } from '../survey/assess'
import type { FieldValues } from '../survey/answer'
import { formatQuantity } from '../units/convert'
import type { UnitSystem } from '../units/quantity'
import type { CheckWords } from './check-words'
import type { Words } from './en'
import { sources as said } from './en/sources'
import { say, sayDate } from './say'

export const wordsOf = (words: Words, check: Check): CheckWords => {
  const found = words.checks[check.id]
  if (!found) throw new Error(`no words for check ${check.id}`)
  return found
}

/** Why the judged verdict is what it is; undefined while open or set aside. */
export const becauseOf = (words: Words, { check, found }: Assessed, units: UnitSystem): string | undefined =>
  found && say(wordsOf(words, check).outcomes[found.outcome]?.because ?? '', found.values, units)

/** What to do; undefined where nothing is to be done. */
export const remedyOf = (words: Words, { check, found }: Assessed, units: UnitSystem): string | undefined => {
  const remedy = found && wordsOf(words, check).outcomes[found.outcome]?.remedy
  return remedy === undefined ? undefined : say(remedy, found?.values, units)
}

/** What can come of it: the outcome's own sentence where it has one, unless the surveyor judged otherwise; else the check's. */
export const consequenceOf = (words: Words, { check, found, answer }: Assessed): string => {
  const own = wordsOf(words, check)
  return (answer?.overrule === undefined && found ? own.outcomes[found.outcome]?.consequence : undefined) ?? own.consequence
}

export const criterionOf = (words: Words, check: Check, ruleBook: RuleBook): string => {
  const { criterion } = wordsOf(words, check)
  return typeof criterion === 'string' ? criterion : criterion[ruleBook]
}

/** The sources of a check as this rule book has them: what does not bind under it is marked a benchmark. */
export const sourcesOf = (check: Check, ruleBook: RuleBook): readonly Source[] =>
  ('us' in check.sources ? check.sources[ruleBook] : check.sources).map((source) => asShownUnder(ruleBook, source))

const withClause = ({ title, clause }: { readonly title: string; readonly clause?: string }): string => (clause === undefined ? title : `${title}, ${clause}`)

/** '49 CFR 571.108', '49 CFR 393.75(c) (benchmark: binds commercial vehicles only)', 'common practice, no source', 'from memory, not confirmed: …'. */
export const saySource = (source: Source): string => {
  switch (source.kind) {
    case 'published':
      return source.binds !== undefined && isBenchmark(source) ? `${withClause(source)} (${said.benchmarks[source.binds]})` : withClause(source)
    case 'trade literature':
      return `${said.tradeLiterature}: ${withClause(source)}`
    case 'common practice':
      return said.commonPractice
    case 'from memory':
      return `${said.fromMemory}: ${source.title}`
    default:
      return assertNever(source)
  }
}

/** The label of one option of a choice field. */
export const optionLabel = (words: Words, check: Check, field: Field, option: string): string => {
  const own = wordsOf(words, check)
  return own.fields?.[field.id]?.options?.[option] ?? own.outcomes[option]?.option ?? option
}

export interface ShownReading {
  readonly label: string
  readonly value: string
}

/** What was recorded, field by field, as a person reads it. */
export const readingsOf = (words: Words, check: Check, values: FieldValues, units: UnitSystem): ShownReading[] =>
  check.fields.flatMap((field): ShownReading[] => {
    const value = values[field.id]
    if (value === undefined || !isAsked(field, values)) return []
    const own = wordsOf(words, check)
    const label = own.fields?.[field.id]?.label ?? own.title
    if (field.kind === 'reading' && typeof value === 'number') return [{ label, value: formatQuantity(field.quantity, value, units) }]
    if (field.kind === 'choice' && typeof value === 'string') return [{ label, value: optionLabel(words, check, field, value) }]
    if (field.kind === 'date' && typeof value === 'string') return [{ label, value: sayDate(value) }]
    if (field.kind === 'spots' && Array.isArray(value))
      return value.map((spot, index) => ({
        label: `${label} ${index + 1}`,
        value: [spot.place, spot.kind, spot.areaM2 === undefined ? undefined : formatQuantity('area', spot.areaM2, units), spot.pitDepthM === undefined ? undefined : `${formatQuantity('smallLength', spot.pitDepthM, units)} deep`]
          .filter((part) => part !== undefined)
          .join(', '),
      }))
    return typeof value === 'object' ? [] : [{ label, value: String(value) }]
  })
