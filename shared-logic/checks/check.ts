import type { Rig } from '../rig/rig'
import type { RuleBook, Source } from '../rules/rule-book'
import type { StationId } from '../survey/station'
import type { FieldValues } from '../survey/answer'
import type { ByWhen, Verdict } from '../survey/verdict'
import type { Quantity } from '../units/quantity'
import type { PhraseValues } from '../words/phrase'
import type { PositionFamily } from './positions'

/** Which of the drawn instruments explains a field; `shared-logic/drawings/instruments` draws it. */
export const instrumentDrawings = [
  'sight glass', 'strap width', 'tread gauge', 'actuator travel', 'lining', 'ball gauge', 'tyre sidewall',
  'pressure gauge', 'lamp', 'bow stop', 'bow tie', 'transom straps', 'hub', 'coupler', 'chains', 'corroded spot',
  'leaf spring', 'bunk', 'winch', 'plug', 'weld', 'wheel nuts', 'rotor', 'hose', 'plate',
] as const
export type InstrumentDrawing = (typeof instrumentDrawings)[number]

/** Shown and asked only when another field of the same check holds one of these values. */
interface Gate {
  readonly field: string
  readonly oneOf: readonly string[]
}

interface FieldBase {
  readonly id: string
  readonly when?: Gate
  /** May be left empty without leaving the check open. */
  readonly optional?: true
}

/** What a check records. Readings are in the SI unit of their quantity; `min` and `max` bound what is believable. */
export type Field =
  | (FieldBase & { readonly kind: 'choice'; readonly options: readonly string[] })
  | (FieldBase & { readonly kind: 'reading'; readonly quantity: Quantity; readonly min: number; readonly max: number; readonly drawing?: InstrumentDrawing })
  | (FieldBase & { readonly kind: 'count'; readonly min: number; readonly max: number })
  | (FieldBase & { readonly kind: 'text'; readonly maxLength: number; readonly form?: 'tyre date code' })
  | (FieldBase & { readonly kind: 'date' })
  | (FieldBase & { readonly kind: 'spots' })

/** One way a check can come out. Its sentences stand in the words, under the check's id and this outcome's key. */
export interface Outcome {
  readonly verdict: Verdict
  /** By when the remedy is due; advisory and fail have one. */
  readonly by?: ByWhen
}

/** What a judge hands back: which outcome, and the numbers its sentence needs. */
export interface Found {
  readonly outcome: string
  readonly values?: PhraseValues
}

/** All a judge may know besides the answer. `surveyDate` is the surveyor's local date, ISO yyyy-mm-dd. */
export interface JudgeContext {
  readonly rig: Rig
  readonly ruleBook: RuleBook
  readonly position: string
  readonly surveyDate: string
}

/** Whether a check is asked of this rig: 'unknown' when the rig's data do not say; it is asked then. */
export type Applies = boolean | 'unknown'

/**
 * One question at a station: a row of data and one pure judge.
 *
 * `judge` is called only with values of declared fields, each already parsed and within its bounds, and answers
 * `undefined` while too little is recorded to judge. It must name a declared outcome.
 */
export interface Check {
  readonly id: string
  readonly station: StationId
  readonly positions: PositionFamily
  readonly applies?: (rig: Rig, ruleBook: RuleBook) => Applies
  readonly fields: readonly Field[]
  readonly outcomes: Readonly<Record<string, Outcome>>
  readonly judge: (values: FieldValues, context: JudgeContext) => Found | undefined
  /** One list for both rule books, or one each where they differ. */
  readonly sources: readonly Source[] | Readonly<Record<RuleBook, readonly Source[]>>
  /** A finding of this check wants a photograph; its absence is said in the review, never refused. */
  readonly photograph?: true
  readonly drawing?: InstrumentDrawing
  /** Dotted path of the register's field that this question is really about: until that is known, checks hang on it. */
  readonly record?: string
  /** A safety caution shown with the question; text under `caution` in the words. */
  readonly caution?: true
}
