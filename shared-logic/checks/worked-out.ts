import { tieDownPlanOf, type TieDownPlan } from '../lashing/plan'
import { isTiedown } from '../lashing/tiedowns'
import type { Rig } from '../rig/rig'
import type { RuleBook } from '../rules/rule-book'
import { defaultSumsSettings } from '../sums/settings'
import { sumsOf, type Sums } from '../sums/sums'
import type { JudgeContext } from './check'

/** What the rig's record gives the judges: its sums, its tie-down plan, and the plan without the winch strap where that is not counted among the tiedowns. */
interface WorkedOut {
  readonly sums: Sums
  readonly plan: TieDownPlan
  readonly planWithoutWinch: TieDownPlan
}

/** A rig is never changed in place, so its sums are worked out once, however many checks ask for them. */
const kept = new WeakMap<Rig, Map<RuleBook, WorkedOut>>()

const withoutWinchStrap = (rig: Rig): Rig => {
  const { tieDown } = rig
  return tieDown ? { ...rig, tieDown: { ...tieDown, straps: tieDown.straps.filter((strap) => isTiedown(strap, tieDown)) } } : rig
}

/** The sums judges take their figures from, by the usual margins: a verdict does not hang on a desk's settings. */
export const workedOut = ({ rig, ruleBook }: Pick<JudgeContext, 'rig' | 'ruleBook'>): WorkedOut => {
  const byBook = kept.get(rig) ?? new Map<RuleBook, WorkedOut>()
  kept.set(rig, byBook)
  const known = byBook.get(ruleBook)
  if (known) return known
  const fresh: WorkedOut = { sums: sumsOf(rig, ruleBook, defaultSumsSettings), plan: tieDownPlanOf(rig, ruleBook), planWithoutWinch: tieDownPlanOf(withoutWinchStrap(rig), ruleBook) }
  byBook.set(ruleBook, fresh)
  return fresh
}

/** A figure with where it comes from: scales, or sums of papers. What is only reckoned never fails by itself. */
export interface Figure {
  readonly massKg: number
  readonly from: 'weighed' | 'reckoned'
}

const weighed = (massKg: number): Figure => ({ massKg, from: 'weighed' })
const reckoned = (massKg: number | undefined): Figure | undefined => (massKg === undefined ? undefined : { massKg, from: 'reckoned' })

/** Everything on its wheels and coupling: the newest weighing, else the sum of the load sheet. */
export const totalOf = ({ balance, load }: Sums): Figure | undefined => {
  const scales = balance.weighed.find(({ totalKg }) => totalKg !== undefined)?.totalKg
  return scales === undefined ? reckoned(load.total.massKg) : weighed(scales)
}

/** What rests on all axles, coupled: the newest weighing, else the lever. */
export const axlesOf = ({ balance }: Sums): Figure | undefined => {
  const scales = balance.weighed.find(({ axlesKg }) => axlesKg !== undefined)?.axlesKg
  return scales === undefined ? reckoned(balance.lever?.axleKg) : weighed(scales)
}

/** What rests on the coupling: the newest weighing, else the lever. */
export const couplingOf = ({ balance }: Sums): Figure | undefined => {
  const scales = balance.weighed.find(({ couplingKg }) => couplingKg !== undefined)?.couplingKg
  return scales === undefined ? reckoned(balance.lever?.couplingKg) : weighed(scales)
}
