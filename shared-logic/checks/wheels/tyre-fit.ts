import { commonPractice, law, maryland, roadworthiness, tradeLiterature } from '../../rules/cite'
import { speedOfSymbolKmPerHour, unmarkedTrailerTyreKmPerHour } from '../../rules/speed-symbols'
import { judgeLoad as judgeMass, reserveOf, reserveTarget } from '../../rules/ratings'
import { mostCouplingShare } from '../../rules/tyre-pressure'
import { passengerTyreOnTrailerKg, tyresCarryKg } from '../../rules/tyre-load-index'
import { trailerTyreLoadKg } from '../../rules/us-tyre-loads'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { workedOut } from '../worked-out'

const sameSize = (size: string): string => size.toUpperCase().replaceAll(/[\s-]/g, '')

/** What one axle has to carry: its rating, or else its share of the maximum mass, part of which rests on the coupling. */
const loadFound = (carried: number, { trailer }: JudgeContext['rig']): Found => {
  const carriedShown = measured('mass', carried)
  if (trailer.axleRatingKg !== undefined) {
    const values = { carried: carriedShown, rating: measured('mass', trailer.axleRatingKg), margin: measured('ratio', carried / trailer.axleRatingKg - 1) }
    return { outcome: carried >= trailer.axleRatingKg - 1e-6 ? 'enough' : 'too little', values }
  }
  if (trailer.maximumMassKg === undefined || trailer.axleCount === undefined) return { outcome: 'rating not known', values: { carried: carriedShown } }
  const share = trailer.maximumMassKg / trailer.axleCount
  const values = { carried: carriedShown, share: measured('mass', share) }
  if (carried >= share - 1e-6) return { outcome: 'enough for the whole mass', values }
  return { outcome: carried >= share * (1 - mostCouplingShare) - 1e-6 ? 'may be short' : 'short of the mass', values }
}

/** Two tyres as recorded: by load index, else by size and load range where the ST table has them. */
const recordedPairKg = ({ trailer: { tyre } }: JudgeContext['rig']): number | undefined => {
  if (tyre?.loadIndex !== undefined) return tyresCarryKg(tyre.loadIndex, 2)
  const each = tyre?.size === undefined || tyre.loadRange === undefined ? undefined : trailerTyreLoadKg(tyre.size, tyre.loadRange)
  return each === undefined ? undefined : 2 * each
}

/** Outcomes by rating alone that the load on the axle cannot better: the tyres must suit the axle, however little rests on it today. */
const ratingDecides = new Set(['too little', 'short of the mass'])

/** The tyre's own load from the sums against what it carries, kg; weighed on record before reckoned. What is only reckoned never fails. */
const ownLoadFound = (eachKg: number, byRating: Found, context: JudgeContext): Found => {
  const axle = Number(/^axle (\d)/.exec(context.position)?.[1] ?? 1)
  const own = workedOut(context).sums.tyres.loads.filter((load) => load.axle === axle).toSorted((a, b) => b.loadKg - a.loadKg)[0]
  if (own === undefined) return { outcome: 'load not worked out', values: { each: measured('mass', eachKg) } }
  if (byRating.outcome === 'may be short' && own.from === 'reckoned') return byRating
  const values = { load: measured('mass', own.loadKg), each: measured('mass', eachKg), reserve: measured('ratio', reserveOf(own.loadKg, eachKg)), target: measured('ratio', reserveTarget) }
  const verdict = judgeMass(own.loadKg, eachKg)
  return { outcome: verdict === 'within' ? 'carries its load' : verdict === 'over' ? (own.from === 'weighed' ? 'overloaded' : 'overloaded on paper') : 'little reserve', values }
}

const judgeLoad = (values: FieldValues, context: JudgeContext): Found | undefined => {
  const marking = textOf(values, 'marking')
  const kind = textOf(values, 'kind')
  if (marking === undefined) return undefined
  if (marking === 'cannot be read') return { outcome: 'not readable' }
  const read = numberOf(values, 'loadIndex')
  if (marking === 'another' && read === undefined) return undefined
  const rated = read === undefined ? recordedPairKg(context.rig) : tyresCarryKg(read, 2)
  if (rated === undefined) return { outcome: 'index not known' }
  const carried = kind === 'passenger car' && context.ruleBook === 'us' ? passengerTyreOnTrailerKg(rated) : rated
  const byRating = loadFound(carried, context.rig)
  return textOf(values, 'against') === 'load worked out' && !ratingDecides.has(byRating.outcome) ? ownLoadFound(carried / 2, byRating, context) : byRating
}

const judgeSpeed = (values: FieldValues, { rig }: JudgeContext): Found | undefined => {
  const marking = textOf(values, 'marking')
  if (marking === undefined) return undefined
  if (marking === 'cannot be read') return { outcome: 'not readable' }
  if (marking === 'none, trailer tyre') return { outcome: 'unmarked', values: { kmPerHour: unmarkedTrailerTyreKmPerHour } }
  const symbol = textOf(values, 'symbol') ?? rig.trailer.tyre?.speedSymbol
  if (symbol === undefined) return undefined
  const kmPerHour = speedOfSymbolKmPerHour(symbol)
  if (kmPerHour === undefined) return { outcome: 'no such symbol', values: { symbol: symbol.toUpperCase() } }
  return { outcome: kmPerHour >= 100 ? 'enough' : 'slow', values: { symbol: symbol.toUpperCase(), kmPerHour } }
}

/** Whether the right tyres are on: size, marking, load, speed, pairing. */
export const tyreFitChecks: readonly Check[] = [
  {
    id: 'wheels.tyre-size',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tyre sidewall',
    fields: [{ kind: 'text', id: 'size', maxLength: 40 }],
    outcomes: { 'as the record': passed, differs: advisory('before next trip'), 'nothing to compare': unseen },
    judge: (values, { rig }): Found | undefined => {
      const size = textOf(values, 'size')
      if (size === undefined) return undefined
      const wanted = rig.trailer.tyre?.size
      if (wanted === undefined) return { outcome: 'nothing to compare', values: { size } }
      return { outcome: sameSize(size) === sameSize(wanted) ? 'as the record' : 'differs', values: { size, wanted } }
    },
    sources: { us: [law('us', '49 CFR 571.110', 'S4.3.5'), maryland('11.14.05.05 A(1)(h)')], eu: [roadworthiness('5.2.3')] },
  },
  choiceCheck({
    id: 'wheels.marking',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tyre sidewall',
    photograph: true,
    outcomes: {
      complete: passed,
      'partly worn off': advisory('at next service'),
      'not for highway use': failed('before it is towed'),
      regrooved: failed('before it is towed'),
    },
    sources: { us: [maryland('11.22.04.06 (7), (8)'), commonPractice], eu: [roadworthiness('5.2.3'), maryland('11.22.04.06 (7), (8)')] },
  }),
  {
    id: 'wheels.load',
    station: 'wheels',
    positions: 'axle',
    drawing: 'tyre sidewall',
    fields: [
      { kind: 'choice', id: 'marking', options: ['as the record', 'another', 'cannot be read'] },
      { kind: 'count', id: 'loadIndex', min: 50, max: 130, when: { field: 'marking', oneOf: ['another'] } },
      { kind: 'choice', id: 'kind', options: ['trailer or van', 'passenger car'], optional: true, when: { field: 'marking', oneOf: ['as the record', 'another'] } },
      { kind: 'choice', id: 'against', options: ['axle rating', 'load worked out'], optional: true, when: { field: 'marking', oneOf: ['as the record', 'another'] } },
    ],
    outcomes: {
      enough: passed,
      'carries its load': passed,
      'little reserve': advisory('before next trip'),
      'overloaded on paper': advisory('before it is towed'),
      overloaded: failed('before it is towed'),
      'load not worked out': unseen,
      'enough for the whole mass': passed,
      'may be short': advisory('before next trip'),
      'too little': failed('before it is towed'),
      'short of the mass': failed('before it is towed'),
      'rating not known': unseen,
      'index not known': unseen,
      'not readable': advisory('before next trip'),
    },
    judge: judgeLoad,
    sources: {
      us: [tradeLiterature('load index tables'), tradeLiterature('ST tyre load and pressure table'), law('us', '49 CFR 571.120', 'S5.1.2')],
      eu: [tradeLiterature('load index tables'), roadworthiness('5.2.3')],
    },
  },
  {
    id: 'wheels.speed',
    station: 'wheels',
    positions: 'once',
    drawing: 'tyre sidewall',
    fields: [
      { kind: 'choice', id: 'marking', options: ['a letter', 'none, trailer tyre', 'cannot be read'] },
      { kind: 'text', id: 'symbol', maxLength: 1, optional: true, when: { field: 'marking', oneOf: ['a letter'] } },
    ],
    outcomes: { enough: passed, unmarked: passed, slow: advisory('before next trip'), 'no such symbol': unseen, 'not readable': unseen },
    judge: judgeSpeed,
    sources: [tradeLiterature('speed symbol table'), tradeLiterature('ST tyre load and pressure guidance')],
  },
  choiceCheck({
    id: 'wheels.pair',
    station: 'wheels',
    positions: 'axle',
    outcomes: {
      alike: passed,
      'tread patterns differ': passed,
      'sizes differ': failed('before next trip'),
      'radial and bias': failed('before next trip'),
    },
    sources: [maryland('11.14.05.05 A(1)(f); 11.22.04.06 (6)'), commonPractice],
  }),
]
