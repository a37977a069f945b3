import type { TieDownAdvisory } from '../../lashing/advise'
import { verdictOfHold, type DirectionHold } from '../../lashing/direction-hold'
import type { MethodSum, StrapToBuy, TieDownPlan } from '../../lashing/plan'
import { isUnder } from '../../rules/beyond'
import { measured, type UnitSystem } from '../../units/quantity'
import { saySource } from '../check-sentences'
import type { Words } from '../en'
import { sayPosition } from '../position'
import { say } from '../say'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const force = (newtons: number) => measured('force', newtons)

const sayStrap = ({ straps }: TieDownPlan, index: number): string => {
  const name = sayPosition(straps[index]?.strap.position ?? '', undefined)
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`
}

const sayMass = (words: Words, { reckoned }: TieDownPlan, units: UnitSystem): string => {
  const { boatUnknown, boat, boatAtMost, boatAtLeast } = words.tieDownPlan
  if (!reckoned) return boatUnknown
  const template = { exact: boat, 'at most': boatAtMost, 'at least': boatAtLeast }[reckoned.basis]
  return say(template, { mass: measured('mass', reckoned.massKg) }, units)
}

/** 'A pull forward: 4,200 N held of 9,565 N needed, 44 %.' With what the winch strap holds of it, where it holds anything. */
export const sayHold = (words: Words, { direction, heldN, neededN, share, byWinchN }: DirectionHold, units: UnitSystem): string => {
  const { held, heldWithWinch, directions } = words.tieDownPlan
  const gaps = { direction: directions[direction], held: force(heldN), needed: force(neededN), share: measured('ratio', Math.round(share * 100) / 100) }
  return byWinchN === undefined ? say(held, gaps, units) : say(heldWithWinch, { ...gaps, winch: force(byWinchN) }, units)
}

/** The direction with the least share of its need held; no line while no force can be worked out. */
export const sayWeakest = (words: Words, { weakest }: TieDownPlan, units: UnitSystem): SumsLine[] =>
  weakest ? [{ text: say(words.tieDownPlan.weakest, { hold: sayHold(words, weakest, units) }, units), verdict: verdictOfHold[weakest.standing] }] : []

/** The fewest straps that would hold a direction by themselves, at the smallest rating that does with so few. */
const sayWouldDo = (words: Words, { wouldDo }: MethodSum, { direction }: DirectionHold, units: UnitSystem): SumsLine[] => {
  const said = words.tieDownPlan
  const [best] = (wouldDo[direction] ?? []).toSorted((a, b) => a.count - b.count || a.ratedN - b.ratedN)
  if (!best) return []
  const straps = say(said.positions[best.position], { count: best.count, rating: force(best.ratedN), tension: force(best.tensionN) }, units)
  return [{ text: say(said.wouldDo, { direction: said.directions[direction], straps }, units) }]
}

/** What a direction that is not held wants: straps where there are none, what would do, and what falls to the bow stop. */
const sayOpen = (words: Words, sum: MethodSum, hold: DirectionHold, units: UnitSystem): SumsLine[] => {
  const { standing, direction, straps, stopMustBearN } = hold
  if (standing !== 'short' && standing !== 'rests on the bow stop') return []
  const said = words.tieDownPlan
  return [
    ...(straps.length === 0 ? [{ text: say(said.noStrap, { direction: said.directions[direction] }, units) }] : []),
    ...(standing === 'rests on the bow stop' && stopMustBearN !== undefined ? [{ text: say(said.stopMustBear, { force: force(stopMustBearN) }, units), verdict: verdictOfHold[standing] }] : []),
    ...sayWouldDo(words, sum, hold, units),
  ]
}

const sayRules = (words: Words, { aggregate, count, winchLeftOut }: TieDownPlan, units: UnitSystem): SumsLine[] => {
  const said = words.tieDownPlan
  const without = winchLeftOut ? said.without : ''
  const lines: SumsLine[] = []
  if (aggregate)
    lines.push({
      verdict: verdictOfHold[aggregate.standing],
      text: aggregate.neededN === undefined ? say(said.aggregateWaits, { without, counted: force(aggregate.countedN) }, units) : say(said.aggregate, { without, counted: force(aggregate.countedN), needed: force(aggregate.neededN) }, units),
    })
  if (count)
    lines.push({
      verdict: verdictOfHold[count.standing],
      text: count.least === undefined ? say(said.countWaits, { without, fitted: count.fitted }, units) : say(said.count, { without, fitted: count.fitted, least: count.least, blocked: count.blocked ? said.blocked : said.notBlocked }, units),
    })
  return winchLeftOut && lines.length > 0 ? [...lines, { text: said.winchLeftOut }] : lines
}

const degreesOf = (radians: number): string => `${Math.round((radians * 180) / Math.PI)}°`

/** What is set wrongly, or missing. */
export const sayAdvice = (words: Words, plan: TieDownPlan, { id, index }: TieDownAdvisory, units: UnitSystem): string => {
  const downRad = index === undefined ? undefined : plan.straps[index]?.lead?.downRad
  return say(words.tieDownPlan.advice[id], { ...(index !== undefined && { strap: sayStrap(plan, index) }), ...(downRad !== undefined && { angle: degreesOf(downRad) }) }, units)
}

const sayToBuy = (words: Words, plan: TieDownPlan, { index, neededN, ratedN }: StrapToBuy, units: UnitSystem): string => {
  const { toBuy, toBuyNone } = words.tieDownPlan
  const gaps = { strap: sayStrap(plan, index), needed: force(neededN) }
  return ratedN === undefined ? say(toBuyNone, gaps, units) : say(toBuy, { ...gaps, rating: force(ratedN) }, units)
}

/** With no strap recorded nothing is judged: the lines tell what is called for. */
const unlessUnseen = ({ straps }: TieDownPlan, lines: readonly SumsLine[]): SumsLine[] =>
  lines.map((line) => (straps.length > 0 || line.verdict === undefined ? line : { ...line, verdict: 'not seen' }))

/** The tie-down plan in sentences: for the command line, the report and screen readers. */
export const sayTieDown = (words: Words, plan: TieDownPlan, units: UnitSystem): SumsSection => {
  const said = words.tieDownPlan
  const [governing] = plan.methods
  return {
    id: 'tie-down',
    title: said.title,
    lines: unlessUnseen(plan, [
      { text: sayMass(words, plan, units) },
      { text: say(said.grounds[plan.friction.ground], { friction: plan.friction.value.toFixed(2) }, units) },
      ...sayRules(words, plan, units),
      ...(governing?.directions.map((hold): SumsLine => ({ text: sayHold(words, hold, units), verdict: verdictOfHold[hold.standing] })) ?? []),
      ...sayWeakest(words, plan, units),
      ...(governing?.directions.flatMap((hold) => sayOpen(words, governing, hold, units)) ?? []),
      ...plan.advisories.map((advisory): SumsLine => ({ text: sayAdvice(words, plan, advisory, units), verdict: 'advisory' })),
      ...plan.toBuy.filter(({ index, neededN }) => isUnder(plan.straps[index]?.limitN ?? 0, neededN)).map((strap): SumsLine => ({ text: sayToBuy(words, plan, strap, units) })),
      ...sayWaits(words, plan.waitsFor, units),
    ]),
    formula: governing === undefined ? said.equalTension : `${said.methods[governing.method.id].formula} ${said.equalTension}`,
    sources: plan.sources.map(saySource),
    cautions: [said.scopes[plan.ruleBook], said.caution],
  }
}
