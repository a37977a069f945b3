import { brakeThresholds, callsForBrakes, surgeBrakesAllowed, usBrakePlaces, type UsBrakePlace } from '../../rules/brake-thresholds'
import { commercialRule, law } from '../../rules/cite'
import { ukBrakeGuide } from '../../rules/running-gear-sources'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { allOf, brakedBy, underRuleBook } from '../equipment'

const isPlace = (place: string): place is UsBrakePlace => usBrakePlaces.some((known) => known === place)

const judgeRequired = (values: FieldValues, { rig, ruleBook }: JudgeContext): Found | undefined => {
  const fitted = textOf(values, 'fitted')
  if (fitted === undefined) return undefined
  const place = textOf(values, 'place')
  const threshold = ruleBook === 'eu' ? brakeThresholds.Europe : brakeThresholds[place !== undefined && isPlace(place) ? place : 'federal benchmark']
  const massKg = rig.trailer.maximumMassKg
  if (fitted === 'on all wheels') return { outcome: 'on all wheels' }
  if (massKg === undefined) return { outcome: 'mass not known' }
  const shown = { mass: measured('mass', massKg), limit: measured('mass', threshold.massKg) }
  const called = callsForBrakes(threshold, massKg, rig.trailer.builtYear)
  if (called === 'unknown') return { outcome: 'year not known', values: shown }
  if (!called) return { outcome: 'not called for', values: shown }
  if (fitted === 'on some wheels') return { outcome: threshold.allWheels ? 'on some wheels' : 'some are enough', values: shown }
  return { outcome: threshold.binding ? 'called for by law' : 'called for by the benchmark', values: shown }
}

/** Whether the trailer has the brakes its mass calls for. */
export const brakeRequirementChecks: readonly Check[] = [
  {
    id: 'brakes.required',
    station: 'brakes',
    positions: 'once',
    fields: [
      { kind: 'choice', id: 'fitted', options: ['on all wheels', 'on some wheels', 'none'] },
      { kind: 'choice', id: 'place', options: usBrakePlaces, optional: true, when: { field: 'fitted', oneOf: ['on some wheels', 'none'] } },
    ],
    outcomes: {
      'on all wheels': passed,
      'not called for': passed,
      'some are enough': passed,
      'on some wheels': advisory('within a year'),
      'called for by the benchmark': advisory('before next trip'),
      'called for by law': failed('before it is towed'),
      'mass not known': unseen,
      'year not known': unseen,
    },
    judge: judgeRequired,
    sources: {
      us: [
        commercialRule('393.42(b)(3)'),
        law('one place', 'California Vehicle Code', '26302(b)'),
        law('one place', 'District of Columbia Municipal Regulations', '18-721'),
      ],
      eu: [ukBrakeGuide],
    },
  },
  {
    id: 'brakes.surge-match',
    station: 'brakes',
    positions: 'once',
    applies: allOf(underRuleBook('us'), brakedBy('surge')),
    fields: [
      { kind: 'choice', id: 'vehicle', options: ['known', 'as recorded', 'not known'] },
      { kind: 'reading', id: 'rating', quantity: 'mass', min: 300, max: 40_000, when: { field: 'vehicle', oneOf: ['known'] } },
    ],
    outcomes: { allowed: passed, 'too light a vehicle': advisory('before it is towed'), 'vehicle not known': unseen, 'not recorded': unseen, 'mass not known': unseen },
    judge: (values, { rig }) => {
      if (textOf(values, 'vehicle') === 'not known') return { outcome: 'vehicle not known' }
      const recorded = textOf(values, 'vehicle') === 'as recorded'
      const rating = recorded ? rig.couplingRatings?.towVehicleMaximumKg : numberOf(values, 'rating')
      if (rating === undefined) return recorded ? { outcome: 'not recorded' } : undefined
      const massKg = rig.trailer.maximumMassKg
      if (massKg === undefined) return { outcome: 'mass not known' }
      const shown = { mass: measured('mass', massKg), rating: measured('mass', rating) }
      return { outcome: surgeBrakesAllowed(massKg, rating) ? 'allowed' : 'too light a vehicle', values: shown }
    },
    sources: [commercialRule('393.48(d)')],
  },
]
