import type { Check, Found, Outcome } from '../checks/check'
import { askedValues } from '../checks/asked-fields'
import { positionsOf } from '../checks/positions'
import { depthOf, walkRoundChecks, walkRoundOnly } from '../checks/depth'
import { askedOfEveryKind, rigAsEachKind } from '../checks/gear-kinds'
import type { Rig } from '../rig/rig'
import type { RuleBook } from '../rules/rule-book'
import type { Answer } from './answer'
import { placeKey } from './keys'
import type { Purpose } from './purpose'
import type { StationId } from './station'
import { stations } from './station'
import { tally, type Tallies } from './tallies'
import { worstVerdict, type ByWhen, type Verdict } from './verdict'

/** All that judging a survey needs. `answers` by `placeKey`. */
export interface SurveyFacts {
  readonly rig: Rig
  readonly ruleBook: RuleBook
  /** Decides how deep the survey goes. */
  readonly purpose: Purpose
  /** The surveyor's local date, ISO. */
  readonly surveyDate: string
  readonly answers: ReadonlyMap<string, Answer>
}

/** One check at one position, with what was recorded and what it came to. */
export interface Assessed {
  readonly key: string
  readonly check: Check
  readonly position: string
  readonly answer: Answer | undefined
  /** What the judge found, before any overrule; absent while open or set aside. */
  readonly found: Found | undefined
  readonly judged: Verdict | undefined
  /** The verdict that counts. An open check counts as not seen. */
  readonly verdict: Verdict
  readonly by: ByWhen | undefined
  readonly open: boolean
}

export interface AskedCheck {
  readonly check: Check
  readonly position: string
}

type Asking = Pick<SurveyFacts, 'rig' | 'ruleBook' | 'purpose'>

const isOfDepth = ({ id }: Check, purpose: Purpose): boolean => (depthOf(purpose) === 'thorough' ? !walkRoundOnly.has(id) : walkRoundChecks.has(id) || walkRoundOnly.has(id))

/** Every check that may be answered on this rig for this purpose, at every position, in walking order: also of gear whose kind is not recorded. */
export const answerableChecks = (catalogue: readonly Check[], { rig, ruleBook, purpose }: Asking): AskedCheck[] =>
  stations.flatMap((station) =>
    catalogue
      .filter((check) => check.station === station && isOfDepth(check, purpose) && check.applies?.(rig, ruleBook) !== false)
      .flatMap((check) => positionsOf(check.positions, rig, ruleBook).map((position) => ({ check, position }))),
  )

/**
 * Every check asked. A walk-round asks of gear whose kind is not recorded only what is common to all kinds, and which kind it is;
 * what was answered all the same stays (`answers` by `placeKey`). A thorough survey asks everything.
 */
export const askedChecks = (catalogue: readonly Check[], facts: Asking, answers?: ReadonlyMap<string, unknown>): AskedCheck[] => {
  const answerable = answerableChecks(catalogue, facts)
  if (depthOf(facts.purpose) === 'thorough') return answerable
  return answerable.filter(({ check, position }) => askedOfEveryKind(check, facts.rig, facts.ruleBook) || answers?.has(placeKey(check.id, position)) === true)
}

/** How many more places are asked once the record says what this check asks: at most, over the kinds it could be; none for any other check. */
export const moreOnceRecorded = (catalogue: readonly Check[], { check }: AskedCheck, facts: Asking): number => {
  const now = new Set(askedChecks(catalogue, facts).map((each) => placeKey(each.check.id, each.position)))
  const more = rigAsEachKind(check, facts.rig).map((rig) => askedChecks(catalogue, { ...facts, rig }).filter((each) => !now.has(placeKey(each.check.id, each.position))).length)
  return Math.max(0, ...more)
}

/** By when a finding is due. A fail of the surveyor's own, over a milder judgement, is due at once: the judge's date was for something lesser. */
const dueBy = (verdict: Verdict, outcome: Outcome | undefined): ByWhen | undefined => {
  if (verdict !== 'fail' && verdict !== 'advisory') return undefined
  return verdict === 'fail' && outcome?.verdict !== 'fail' ? 'before it is towed' : (outcome?.by ?? 'before next trip')
}

/** Judges one answer. Pure: the same answer gives the same verdict for ever. */
export const assessOne = (check: Check, position: string, answer: Answer | undefined, facts: Omit<SurveyFacts, 'answers' | 'purpose'>): Assessed => {
  const base = { key: placeKey(check.id, position), check, position, answer }
  if (answer?.aside) return { ...base, found: undefined, judged: undefined, verdict: answer.aside.as, by: undefined, open: false }
  const found = answer === undefined ? undefined : check.judge(askedValues(check, answer.values), { rig: facts.rig, ruleBook: facts.ruleBook, position, surveyDate: facts.surveyDate })
  const outcome = found === undefined ? undefined : check.outcomes[found.outcome]
  if (found !== undefined && outcome === undefined) throw new Error(`check ${check.id} has no outcome ${found.outcome}`)
  const verdict = answer?.overrule?.verdict ?? outcome?.verdict
  if (verdict === undefined) return { ...base, found: undefined, judged: undefined, verdict: 'not seen', by: undefined, open: true }
  return { ...base, found, judged: outcome?.verdict, verdict, by: dueBy(verdict, outcome), open: false }
}

export const assess = (catalogue: readonly Check[], facts: SurveyFacts): Assessed[] =>
  askedChecks(catalogue, facts, facts.answers).map(({ check, position }) =>
    assessOne(check, position, facts.answers.get(placeKey(check.id, position)), facts),
  )

/** What a list of assessed checks comes to. */
export interface Summary {
  readonly verdict: Verdict
  readonly tallies: Tallies
  readonly asked: number
  readonly open: number
}

export const summarize = (assessed: readonly Assessed[]): Summary => ({
  verdict: worstVerdict(assessed.map((each) => each.verdict)),
  tallies: tally(assessed.map((each) => each.verdict)),
  asked: assessed.length,
  open: assessed.filter((each) => each.open).length,
})

export const summarizeByStation = (assessed: readonly Assessed[]): { readonly station: StationId; readonly summary: Summary }[] =>
  stations
    .map((station) => ({ station, own: assessed.filter((each) => each.check.station === station) }))
    .filter(({ own }) => own.length > 0)
    .map(({ station, own }) => ({ station, summary: summarize(own) }))
