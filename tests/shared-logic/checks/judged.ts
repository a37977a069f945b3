import { expect } from 'vitest'
import { catalogue, checkOf } from '../../../shared-logic/checks/catalogue'
import type { Check } from '../../../shared-logic/checks/check'
import { problemsOf } from '../../../shared-logic/checks/parse-values'
import type { Rig } from '../../../shared-logic/rig/rig'
import type { Boat } from '../../../shared-logic/rig/boat'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import type { RuleBook } from '../../../shared-logic/rules/rule-book'
import type { FieldValues } from '../../../shared-logic/survey/answer'
import { answerSchema } from '../../../shared-logic/survey/answer'
import { askedChecks, assessOne } from '../../../shared-logic/survey/assess'
import type { StationId } from '../../../shared-logic/survey/station'
import type { ByWhen, Verdict } from '../../../shared-logic/survey/verdict'
import { becauseOf, remedyOf } from '../../../shared-logic/words/check-sentences'
import { en } from '../../../shared-logic/words/en'

/** Where and of what a check is asked in a test. */
export interface Situation {
  readonly trailer?: Trailer
  readonly boat?: Boat
  /** What the sums are worked from. */
  readonly more?: Omit<Partial<Rig>, 'trailer' | 'boat'>
  readonly ruleBook?: RuleBook
  readonly position?: string
  readonly surveyDate?: string
}

export interface Judged {
  readonly outcome: string | undefined
  readonly verdict: Verdict
  readonly by: ByWhen | undefined
  readonly because: string | undefined
}

const known = (id: string): Check => {
  const check = checkOf(id)
  if (!check) throw new Error(`no check ${id}`)
  return check
}

/** Judges values as the survey does: parsed within their bounds first, and with no gap left open in the sentences. */
export const judged = (id: string, values: FieldValues, situation: Situation = {}): Judged => {
  const check = known(id)
  const facts = { rig: { name: 'Rig', ...situation.more, trailer: situation.trailer ?? {}, ...(situation.boat && { boat: situation.boat }) }, ruleBook: situation.ruleBook ?? 'us', surveyDate: situation.surveyDate ?? '2025-06-01' } as const
  expect(problemsOf(check, values, facts.surveyDate), `${id}: values within their bounds`).toEqual([])
  const assessed = assessOne(check, situation.position ?? 'rig', answerSchema.parse({ values }), facts)
  for (const units of ['us', 'metric'] as const) {
    expect(`${becauseOf(en, assessed, units) ?? ''}${remedyOf(en, assessed, units) ?? ''}`, `${id}: gaps filled`).not.toMatch(/[{}]|NaN|undefined/)
  }
  return { outcome: assessed.found?.outcome, verdict: assessed.verdict, by: assessed.by, because: becauseOf(en, assessed, 'metric') }
}

/** Options of a check answered by one choice, by the verdict each must come to. */
export type ByVerdict = Partial<Record<Verdict, readonly string[]>>

/** Judges every option listed and checks that none of the check's options was left out. */
export const expectChoices = (id: string, expected: ByVerdict, situation: Situation = {}): void => {
  const field = known(id).fields[0]
  if (field?.kind !== 'choice') throw new Error(`${id} is not answered by a choice`)
  expect(Object.values(expected).flat().toSorted(), `${id}: every option is judged`).toEqual([...field.options].toSorted())
  for (const verdict of ['pass', 'advisory', 'fail', 'not seen', 'not applicable'] as const) {
    for (const option of expected[verdict] ?? []) expect(judged(id, { [field.id]: option }, situation).verdict, `${id}: ${option}`).toBe(verdict)
  }
}

/** The station's checks that are not answered by one plain choice: each has to be tested by name. */
export const measuredChecks = (station: StationId): string[] =>
  catalogue.filter((check) => check.station === station && !isPlainChoice(check)).map((check) => check.id)

export const isPlainChoice = (check: Check): boolean => {
  const [field, second] = check.fields
  return second === undefined && field?.kind === 'choice' && field.options.join() === Object.keys(check.outcomes).join()
}

/** One measured check at one value: what it states, and what it must come to. */
export interface Case {
  readonly states: string
  readonly check: string
  readonly values: FieldValues
  readonly given?: Situation
  readonly outcome: string | undefined
  readonly verdict: Verdict
  readonly by?: ByWhen
}

export const expectCase = ({ check, values, given, outcome, verdict, by }: Case): void => {
  const result = judged(check, values, given)
  expect({ outcome: result.outcome, verdict: result.verdict }).toEqual({ outcome, verdict })
  if (by !== undefined) expect(result.by).toBe(by)
}

/** Every outcome of the station's measured checks is reached by one of the cases. */
export const expectEveryOutcomeReached = (station: StationId, cases: readonly Case[]): void => {
  const reached = new Set(cases.map(({ check, outcome }) => `${check}: ${outcome}`))
  const all = measuredChecks(station).flatMap((id) => Object.keys(known(id).outcomes).map((outcome) => `${id}: ${outcome}`))
  expect(all.filter((each) => !reached.has(each))).toEqual([])
}

/** Ids of the checks a whole survey asks of this trailer at a station, in order. */
export const askedAt = (station: StationId, trailer: Trailer, ruleBook: RuleBook = 'us'): string[] => [
  ...new Set(
    askedChecks(catalogue, { rig: { name: 'Rig', trailer }, ruleBook, purpose: 'purchase' })
      .filter(({ check }) => check.station === station)
      .map(({ check }) => check.id),
  ),
]
