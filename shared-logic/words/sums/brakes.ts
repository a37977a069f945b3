import type { BrakeNeed, BrakeSums } from '../../brakes/brake-sums'
import { longTravelM } from '../../rules/actuator'
import { measured, type UnitSystem } from '../../units/quantity'
import type { Words } from '../en'
import { say } from '../say'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const mass = (massKg: number) => measured('mass', massKg)
const share = (value: number) => measured('ratio', Math.round(value * 1000) / 1000)
const millimetres = (metres: number) => measured('smallLength', metres)

/** A rule that binds is failed; a benchmark not met is an advisory. */
const verdictOf = ({ standing, binding }: BrakeNeed): SumsLine['verdict'] => {
  if (standing === 'met') return 'pass'
  if (standing === 'waits') return 'not seen'
  return binding ? 'fail' : 'advisory'
}

const sayNeed = (words: Words, need: BrakeNeed, massKg: number, units: UnitSystem): SumsLine => {
  const said = words.sums.brakes
  const place = said.places[need.place]
  if (need.needed === 'unknown') return { text: say(said.unknown, { place }, units), verdict: 'not seen' }
  if (!need.needed) return { text: say(said.notNeeded, { place, mass: mass(massKg) }, units), verdict: 'pass' }
  const axles = need.axles === undefined ? said.allAxles : say(said.axles, { count: need.axles }, units)
  return { text: say(said.needed, { place, mass: mass(massKg), axles, standing: said.standings[need.standing] }, units), verdict: verdictOf(need) ?? 'not seen' }
}

const travelVerdicts = { within: 'pass', long: 'advisory', spent: 'fail' } as const

const sayActuator = (words: Words, { actuator }: BrakeSums, units: UnitSystem): SumsLine[] =>
  actuator
    ? [{ text: say(words.sums.brakes.travel[actuator.standing], { travel: millimetres(actuator.travelM), limit: millimetres(longTravelM), stroke: millimetres(actuator.strokeM ?? 0) }, units), verdict: travelVerdicts[actuator.standing] }]
    : []

const saySurge = (words: Words, { surge }: BrakeSums, units: UnitSystem): SumsLine[] => {
  if (surge?.allowed === undefined || surge.heaviestTrailerKg === undefined) return []
  const said = words.sums.brakes
  return [{ text: say(surge.allowed ? said.surgeAllowed : said.surgeRefused, { heaviest: mass(surge.heaviestTrailerKg) }, units), verdict: surge.allowed ? 'pass' : 'advisory' }]
}

const sayMeasured = (words: Words, { deceleration, imbalance, onset }: BrakeSums, units: UnitSystem): SumsLine[] => {
  const said = words.sums.brakes
  return [
    ...(deceleration ? [{ text: say(said.deceleration, { force: measured('force', deceleration.forceN), mass: mass(deceleration.massKg), share: share(deceleration.share) }, units) }] : []),
    ...imbalance.map((each): SumsLine => ({ text: say(said.imbalance, { axle: each.axle, share: share(each.share) }, units) })),
    ...(onset ? [{ text: say(said.onset, { from: measured('force', onset.fromN), to: measured('force', onset.toN) }, units) }] : []),
  ]
}

export const sayBrakes = (words: Words, sums: BrakeSums, units: UnitSystem): SumsSection => {
  const said = words.sums.brakes
  const { massKg, needs, category, surge, waitsFor, secondaryCoupling, overrunBeyond } = sums
  return {
    id: 'brakes', title: words.sums.parts.brakes, formula: said.formula, sources: [said.source], cautions: [said.caution],
    lines: [
      ...(category === undefined ? [] : [{ text: say(said.category, { category }, units) }]),
      ...(massKg === undefined ? [] : needs.map((need) => sayNeed(words, need, massKg, units))),
      ...(secondaryCoupling ? [{ text: say(said.secondary, { place: said.places.Europe }, units) }] : []),
      ...(overrunBeyond ? [{ text: said.overrunBeyond, verdict: 'advisory' as const }] : []),
      ...saySurge(words, sums, units), ...sayActuator(words, sums, units), ...sayMeasured(words, sums, units),
      ...sayWaits(words, [...waitsFor, ...(surge?.waitsFor ?? [])], units),
    ],
  }
}
