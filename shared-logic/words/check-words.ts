import type { RuleBook } from '../rules/rule-book'

/** The sentences of one outcome. Gaps in braces are filled from the judge's values. */
export interface OutcomeWords {
  /** The answer's label where the check is answered by one choice. */
  readonly option?: string
  /** Why the verdict is what it is: 'Oil below halfway.' */
  readonly because: string
  /** What to do about it; advisory and fail have one. */
  readonly remedy?: string
  /** What can come of this one, where the check's own consequence speaks of something else. */
  readonly consequence?: string
}

export interface FieldWords {
  readonly label: string
  readonly hint?: string
  readonly options?: Readonly<Record<string, string>>
}

/** All that is read of one check. Keyed by the check's id; `outcomes` by its outcomes, `fields` by its fields. */
export interface CheckWords {
  /** Short name, for lists and tables: 'Oil level'. */
  readonly title: string
  /** The question at the rig: 'Does the oil stand above the halfway mark?' */
  readonly question: string
  /** How to look, in one or two sentences. */
  readonly how: string
  /** The criterion in words, one for both rule books or one each. */
  readonly criterion: string | Readonly<Record<RuleBook, string>>
  /** What can come of a finding here. */
  readonly consequence: string
  readonly caution?: string
  readonly fields?: Readonly<Record<string, FieldWords>>
  readonly outcomes: Readonly<Record<string, OutcomeWords>>
}

export type StationCheckWords = Readonly<Record<string, CheckWords>>
