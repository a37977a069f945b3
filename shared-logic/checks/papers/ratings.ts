import type { Trailer } from '../../rig/trailer'
import { isOver } from '../../rules/beyond'
import { commonPractice, law, roadworthiness } from '../../rules/cite'
import { axleLoadAtMaximumKg, cargoCapacityKg } from '../../rules/ratings'
import { pounds } from '../../units/us-customary'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'
import { axlesMayCarryKg } from './axles-may-carry'

const massOf = (kg: number) => measured('mass', kg)

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
    sources: { us: [law('us', '49 CFR 567.4', '(g)(3), GVWR and GAWR on the label'), commonPractice], eu: [roadworthiness('0.2'), commonPractice] },
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
    sources: [law('us', '49 CFR 571.110', 'S4.3.5')],
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
    sources: [law('us', 'NHTSA letter of 15 January 1976', 'boat trailers: the sum of axle ratings may be less than the GVWR'), commonPractice],
  },
]
