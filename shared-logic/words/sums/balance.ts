import type { Balance } from '../../balance/balance'
import type { BalanceStanding } from '../../balance/bands'
import type { Move } from '../../balance/goal'
import type { Corner } from '../../balance/share-range'
import type { WeighedResult } from '../../balance/weighed'
import type { LoadItem } from '../../load/load-items'
import { isOldWeighing, weighingMonths } from '../../rules/weighing-age'
import { measured, type UnitSystem } from '../../units/quantity'
import type { Words } from '../en'
import { say } from '../say'
import { nameOfItem } from './load'
import { sayWaits, type SumsLine, type SumsSection } from './section'

const mass = (massKg: number) => measured('mass', massKg)
const length = (metres: number) => measured('length', metres)
const share = (value: number) => measured('ratio', Math.round(value * 1000) / 1000)
const degrees = (radians: number): string => ((radians * 180) / Math.PI).toFixed(0)

const nameOf = (words: Words, items: readonly LoadItem[], id: string): string => {
  const item = items.find((each) => each.id === id)
  return item ? nameOfItem(words, item) : id
}

const sayStanding = (words: Words, standing: BalanceStanding, { bands, smallestStaticKg }: Balance, units: UnitSystem): string =>
  say(words.sums.balance.standings[standing], {
    passFrom: share(bands.passFrom), passTo: share(bands.passTo), noticeFrom: share(bands.noticeFrom), noticeTo: share(bands.noticeTo), failBelow: share(bands.failBelow), limit: mass(smallestStaticKg ?? 0),
  }, units)

const sayLever = (words: Words, balance: Balance, units: UnitSystem): SumsLine[] => {
  const said = words.sums.balance
  const { lever, bounds, standing, verdict } = balance
  return [
    ...(lever ? [{ text: say(said.reckoned, { coupling: mass(lever.couplingKg), share: share(lever.share), total: mass(lever.totalKg), axles: mass(lever.axleKg), centre: length(lever.centreM) }, units) }] : []),
    ...(bounds ? [{ text: say(said.bounds, { low: mass(bounds.least.couplingKg), high: mass(bounds.most.couplingKg), lowShare: share(bounds.least.share), highShare: share(bounds.most.share) }, units) }] : []),
    ...(standing && verdict ? [{ text: sayStanding(words, standing, balance, units), verdict }] : []),
  ]
}

const sayAxles = (words: Words, { axleLoads }: Balance, units: UnitSystem): SumsLine[] => {
  if (!axleLoads) return []
  const said = words.sums.balance
  return [
    ...(axleLoads.axlesKg ?? []).map((load, index): SumsLine => ({ text: say(said.axle, { axle: index + 1, load: mass(load) }, units) })),
    ...(axleLoads.mustBeWeighed ? [{ text: axleLoads.sharing === 'independent' ? said.mustBeWeighed : said.sharingUnknown, verdict: 'not seen' as const }] : []),
    ...sayWaits(words, axleLoads.waitsFor, units),
  ]
}

const sayCorner = (words: Words, items: readonly LoadItem[], { high }: Corner): string =>
  high.length === 0 ? words.sums.balance.allEmpty : say(words.sums.balance.fullTanks, { tanks: high.map((id) => nameOf(words, items, id)).join(', ') }, 'metric')

const sayTanks = (words: Words, { tanks }: Balance, items: readonly LoadItem[], units: UnitSystem): SumsLine[] => {
  const empty = tanks?.together[0]
  const full = tanks?.together.at(-1)
  if (!tanks || !empty || !full) return []
  const { least, most } = tanks.worst
  const said = words.sums.balance
  return [
    { text: say(said.tanks, { empty: mass(empty.couplingKg), full: mass(full.couplingKg), emptyShare: share(empty.share), fullShare: share(full.share) }, units) },
    { text: say(said.worst, { least: share(least.share), leastFull: sayCorner(words, items, least), most: share(most.share), mostFull: sayCorner(words, items, most) }, units) },
  ]
}

/** One way to the share wanted, and what rests where then. */
export const sayMove = (words: Words, items: readonly LoadItem[], move: Move, units: UnitSystem): SumsLine => {
  const said = words.sums.balance
  const way = move.forwardM < 0 ? 'aft' : 'forward'
  const what = say(said.moves[move.what][way], { distance: length(Math.abs(move.forwardM)), name: move.id === undefined ? '' : nameOf(words, items, move.id) }, units)
  const notes = [...(move.neglectsAxleMass ? [said.neglected] : []), ...(move.possible ? [] : [said.notPossible])]
  const text = say(said.after, { move: what, coupling: mass(move.after.couplingKg), axles: mass(move.after.axleKg) }, units)
  return { text: notes.length === 0 ? text : `${text} (${notes.join('; ')})` }
}

const sayGoal = (words: Words, { goal }: Balance, items: readonly LoadItem[], units: UnitSystem): SumsLine[] => {
  if (!goal || goal.moves.length === 0) return []
  const said = words.sums.balance
  return [{ text: say(goal.because === 'target' ? said.goalTarget : said.goalStatic, { share: share(goal.share) }, units) }, ...goal.moves.map((move) => sayMove(words, items, move, units))]
}

const sayWeighed = (words: Words, result: WeighedResult, units: UnitSystem): SumsLine => {
  const { weighed, told, sides } = words.sums.balance
  const { totalKg, couplingKg, share: part, axlesKg, offsetToRightM, centreHeightM } = result
  const parts = [
    ...(totalKg === undefined ? [] : [say(told.total, { total: mass(totalKg) }, units)]),
    ...(couplingKg === undefined || part === undefined ? [] : [say(told.coupling, { coupling: mass(couplingKg), share: share(part) }, units)]),
    ...(axlesKg === undefined ? [] : [say(told.axles, { axles: mass(axlesKg) }, units)]),
    ...(offsetToRightM === undefined ? [] : [say(told.offset, { offset: measured('smallLength', Math.abs(offsetToRightM)), side: offsetToRightM < 0 ? sides.left : sides.right }, units)]),
    ...(centreHeightM === undefined ? [] : [say(told.height, { height: length(centreHeightM) }, units)]),
  ]
  return { text: say(weighed, { date: { date: result.date }, method: words.sums.methods[result.method], told: parts.join(', ') }, units) }
}

/** How the newest weighing has it, where what stands above is reckoned. */
const sayScales = (words: Words, balance: Balance, units: UnitSystem): SumsLine[] => {
  const { scales, standingFrom } = balance
  if (!scales || standingFrom === 'weighed') return []
  return [{ text: say(words.sums.balance.byScales, { date: { date: scales.date }, standing: sayStanding(words, scales.standing, balance, units) }, units), verdict: scales.verdict }]
}

/** A weighing too old to speak for the rig as it is loaded now: one line, about the newest; no line while the day is not known. */
const sayAge = (words: Words, { weighed: [newest] }: Balance, units: UnitSystem, today: string | undefined): SumsLine[] =>
  newest && today !== undefined && isOldWeighing(newest.date, today)
    ? [{ text: say(words.sums.balance.oldWeighing, { date: { date: newest.date }, months: weighingMonths }, units), verdict: 'advisory' }]
    : []

const sayComparison = (words: Words, { comparison }: Balance, units: UnitSystem): SumsLine[] => {
  if (!comparison) return []
  const said = words.sums.balance
  const agrees = comparison.meanings.includes('agrees')
  return [
    { text: say(said.difference, { total: mass(comparison.totalKg), coupling: mass(comparison.couplingKg) }, units) },
    ...comparison.meanings.map((meaning): SumsLine => ({ text: said.comparisons[meaning], ...(!agrees && { verdict: 'advisory' }) })),
    ...(comparison.asIf ? [{ text: say(comparison.asIf.massKg < 0 ? said.asIf.less : said.asIf.more, { mass: mass(Math.abs(comparison.asIf.massKg)), place: length(comparison.asIf.atM) }, units) }] : []),
  ]
}

const sayStability = (words: Words, { stability }: Balance, units: UnitSystem): SumsLine[] => {
  if (!stability) return []
  const said = words.sums.balance
  const { centreHeightM, heightFrom, tipsAtRad, slopes, braking } = stability
  return [
    ...(centreHeightM === undefined || heightFrom === undefined ? [] : [{ text: say(said.height[heightFrom], { height: length(centreHeightM) }, units) }]),
    ...(tipsAtRad === undefined ? [] : [{ text: say(said.tips, { degrees: degrees(tipsAtRad) }, units) }]),
    ...slopes.map(({ slopeRad, upperKg, lowerKg }): SumsLine => ({ text: say(said.slope, { degrees: degrees(slopeRad), upper: mass(upperKg), lower: mass(lowerKg) }, units) })),
    ...braking.map(({ deceleration, braked, unbraked }): SumsLine => ({ text: say(said.braking, { share: share(deceleration), braked: mass(braked), unbraked: mass(unbraked) }, units) })),
  ]
}

/** `today`: the day a weighing's age is counted to, ISO date: the survey's, or the day of reading. */
export const sayBalance = (words: Words, balance: Balance, items: readonly LoadItem[], units: UnitSystem, today: string | undefined): SumsSection => ({
  id: 'balance', title: words.sums.parts.balance, formula: words.sums.balance.formula, sources: [words.sums.balance.sources.statics, words.sums.balance.sources[balance.bandsFrom]],
  cautions: [words.sums.balance.caution, ...(balance.goal ? [words.sums.balance.moveCaution] : [])],
  lines: [
    ...sayLever(words, balance, units), ...(balance.lever ? [] : sayWaits(words, balance.waitsFor, units)), ...sayAxles(words, balance, units), ...sayTanks(words, balance, items, units),
    ...sayGoal(words, balance, items, units), ...balance.weighed.map((result) => sayWeighed(words, result, units)), ...sayScales(words, balance, units), ...sayAge(words, balance, units, today), ...sayComparison(words, balance, units), ...sayStability(words, balance, units),
  ],
})
