import type { Trailer } from '../../rig/trailer'
import { isOver } from '../../rules/beyond'
import { commonPractice, published } from '../../rules/cite'
import { axleLoadAtMaximumKg, cargoCapacityKg, judgeLoad, neededRatingKg, reserveOf, reserveTarget } from '../../rules/ratings'
import { pounds } from '../../units/us-customary'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const massOf = (kg: number) => measured('mass', kg)

/** What the axles may carry together, kg; undefined while rating or number is unknown. */
const axlesMayCarryKg = ({ axleRatingKg, axleCount }: Trailer): number | undefined => (axleRatingKg === undefined || axleCount === undefined ? undefined : axleRatingKg * axleCount)

const judgeAgainst = (loadedKg: number, ratingKg: number, outcomes: { readonly over: string; readonly 'little reserve': string; readonly within: string }): Found => ({
  outcome: outcomes[judgeLoad(loadedKg, ratingKg)],
  values: {
    loaded: massOf(loadedKg),
    rating: massOf(ratingKg),
    over: massOf(Math.max(0, loadedKg - ratingKg)),
    reserve: measured('ratio', reserveOf(loadedKg, ratingKg)),
    target: measured('ratio', reserveTarget),
    needed: massOf(neededRatingKg(loadedKg, reserveTarget, 'of the rating')),
  },
})

/** A placard's cargo figure may exceed rating less unladen mass by this share of the rating: weights of fittings. Common practice. */
const placardSlack = 0.01

const judgePlacard = (condition: string | undefined, cargoKg: number | undefined, { maximumMassKg, massKg }: Trailer): Found | undefined => {
  if (condition !== 'legible') return condition === undefined ? undefined : { outcome: condition }
  if (cargoKg === undefined || maximumMassKg === undefined || massKg === undefined) return { outcome: 'legible' }
  const capacityKg = cargoCapacityKg(maximumMassKg, massKg)
  return isOver(cargoKg, capacityKg + maximumMassKg * placardSlack)
    ? { outcome: 'cargo too high', values: { cargo: massOf(cargoKg), capacity: massOf(capacityKg) } }
    : { outcome: 'legible' }
}

export const paperRatingChecks: readonly Check[] = [
  choiceCheck({
    id: 'papers.rating-plate',
    station: 'papers',
    positions: 'once',
    drawing: 'plate',
    photograph: true,
    outcomes: { legible: passed, 'partly legible': advisory('within a month'), 'differs from papers': failed('before it is towed'), missing: failed('before it is towed') },
    sources: { us: [published('49 CFR 567.4', '(g)(3), GVWR and GAWR on the label'), commonPractice], eu: [published('Directive 2014/45/EU Annex I', 'item 0.2'), commonPractice] },
  }),
  {
    id: 'papers.tyre-placard',
    station: 'papers',
    positions: 'once',
    applies: (rig, ruleBook) => {
      if (ruleBook !== 'us') return false
      const { maximumMassKg } = rig.trailer
      return maximumMassKg === undefined ? 'unknown' : !isOver(maximumMassKg, pounds(10_000))
    },
    drawing: 'plate',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'condition', options: ['legible', 'unreadable', 'missing'] },
      { kind: 'reading', id: 'cargo', quantity: 'mass', min: 50, max: 10_000, optional: true, when: { field: 'condition', oneOf: ['legible'] } },
    ],
    outcomes: { legible: passed, 'cargo too high': advisory('before next trip'), unreadable: advisory('within a month'), missing: advisory('within a month') },
    judge: (values, { rig }) => judgePlacard(textOf(values, 'condition'), numberOf(values, 'cargo'), rig.trailer),
    sources: [published('49 CFR 571.110', 'S4.3.5')],
  },
  {
    id: 'papers.loaded-mass',
    station: 'papers',
    positions: 'once',
    caution: true,
    fields: [
      { kind: 'choice', id: 'basis', options: ['weighed', 'from papers'] },
      { kind: 'reading', id: 'loaded', quantity: 'mass', min: 50, max: 40_000 },
    ],
    outcomes: {
      within: passed,
      'within on paper': passed,
      'little reserve': advisory('before next trip'),
      'little reserve on paper': advisory('before next trip'),
      'over on paper': advisory('before it is towed'),
      over: failed('before it is towed'),
      'rating unknown': unseen,
    },
    judge: (values, { rig }) => {
      const basis = textOf(values, 'basis')
      const loadedKg = numberOf(values, 'loaded')
      if (basis === undefined || loadedKg === undefined) return undefined
      const ratingKg = rig.trailer.maximumMassKg
      if (ratingKg === undefined) return { outcome: 'rating unknown', values: { loaded: massOf(loadedKg) } }
      return basis === 'weighed'
        ? judgeAgainst(loadedKg, ratingKg, { over: 'over', 'little reserve': 'little reserve', within: 'within' })
        : judgeAgainst(loadedKg, ratingKg, { over: 'over on paper', 'little reserve': 'little reserve on paper', within: 'within on paper' })
    },
    sources: [published('49 CFR 571.3', 'gross vehicle weight rating'), commonPractice],
  },
  {
    id: 'papers.axle-load',
    station: 'papers',
    positions: 'once',
    fields: [{ kind: 'reading', id: 'axles', quantity: 'mass', min: 50, max: 40_000 }],
    outcomes: { within: passed, 'little reserve': advisory('before next trip'), over: failed('before it is towed'), 'rating unknown': unseen },
    judge: (values, { rig }) => {
      const axlesKg = numberOf(values, 'axles')
      if (axlesKg === undefined) return undefined
      const ratingKg = axlesMayCarryKg(rig.trailer)
      if (ratingKg === undefined) return { outcome: 'rating unknown', values: { loaded: massOf(axlesKg) } }
      return judgeAgainst(axlesKg, ratingKg, { over: 'over', 'little reserve': 'little reserve', within: 'within' })
    },
    sources: [published('49 CFR 571.3', 'gross axle weight rating, at the tyre-ground interface'), commonPractice],
  },
  {
    id: 'papers.axle-ratings',
    station: 'papers',
    positions: 'once',
    caution: true,
    fields: [{ kind: 'reading', id: 'coupling', quantity: 'mass', min: 0, max: 5_000 }],
    outcomes: { 'axles carry all': passed, 'with the coupling load': passed, short: failed('before next trip'), 'rating unknown': unseen },
    judge: (values, { rig }) => {
      const couplingKg = numberOf(values, 'coupling')
      if (couplingKg === undefined) return undefined
      const carryKg = axlesMayCarryKg(rig.trailer)
      const maximumKg = rig.trailer.maximumMassKg
      if (carryKg === undefined || maximumKg === undefined) return { outcome: 'rating unknown' }
      const axleLoadKg = axleLoadAtMaximumKg(maximumKg, couplingKg)
      const found = { axles: massOf(carryKg), maximum: massOf(maximumKg), load: massOf(axleLoadKg), coupling: massOf(couplingKg) }
      if (!isOver(maximumKg, carryKg)) return { outcome: 'axles carry all', values: found }
      return { outcome: isOver(axleLoadKg, carryKg) ? 'short' : 'with the coupling load', values: found }
    },
    sources: [published('NHTSA letter of 15 January 1976', 'boat trailers: the sum of axle ratings may be less than the GVWR')],
  },
]
