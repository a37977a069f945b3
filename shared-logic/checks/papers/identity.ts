import { commercialRule, commonPractice, law, roadworthiness } from '../../rules/cite'
import { daysPast, dueOn } from '../../rules/service-interval'
import { underEu, underUs } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, passed, textOf, unseen } from '../builders'
import type { Check } from '../check'

const identification = roadworthiness('0.2, identification, chassis or serial number')
/** 49 CFR 396.17: at least once in twelve months. */
const inspectionMonths = 12

export const paperIdentityChecks: readonly Check[] = [
  choiceCheck({
    id: 'papers.identification-plate',
    station: 'papers',
    positions: 'once',
    drawing: 'plate',
    photograph: true,
    outcomes: { legible: passed, 'hard to read': advisory('within a month'), missing: failed('before next trip'), altered: failed('before it is towed') },
    sources: { us: [law('us', '49 CFR 567.4', 'certification label'), identification], eu: [identification] },
  }),
  choiceCheck({
    id: 'papers.number-matches',
    station: 'papers',
    positions: 'once',
    photograph: true,
    outcomes: { matches: passed, differs: failed('before it is towed'), 'no number on the frame': failed('before next trip'), 'papers not shown': unseen },
    sources: [identification, commonPractice],
  }),
  choiceCheck({
    id: 'papers.owner',
    station: 'papers',
    positions: 'once',
    outcomes: { agrees: passed, 'another name': advisory('before next trip'), 'lien or finance': advisory('before next trip'), 'not shown': unseen },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'papers.registration',
    station: 'papers',
    positions: 'once',
    photograph: true,
    outcomes: {
      'current and matching': passed,
      'hard to read': advisory('before next trip'),
      expired: advisory('before it is towed'),
      'does not match': failed('before it is towed'),
      missing: failed('before it is towed'),
      'not required': notApplicable,
    },
    sources: { us: [commonPractice], eu: [roadworthiness('0.1, number plates')] },
  }),
  {
    id: 'papers.annual-inspection',
    station: 'papers',
    positions: 'once',
    applies: underUs,
    fields: [
      { kind: 'choice', id: 'record', options: ['seen', 'no record', 'not commercial'] },
      { kind: 'date', id: 'inspected', when: { field: 'record', oneOf: ['seen'] } },
    ],
    outcomes: { current: passed, overdue: advisory('before it is towed'), 'no record': advisory('before it is towed'), 'not commercial': notApplicable },
    judge: (values, { surveyDate }) => {
      const record = textOf(values, 'record')
      const inspected = textOf(values, 'inspected')
      if (record === undefined) return undefined
      if (record !== 'seen') return { outcome: record }
      if (inspected === undefined) return undefined
      const due = dueOn(inspected, inspectionMonths)
      return { outcome: daysPast(due, surveyDate) > 0 ? 'overdue' : 'current', values: { inspected: { date: inspected }, due: { date: due } } }
    },
    sources: [commercialRule('396.17', 'at least once in 12 months')],
  },
  choiceCheck({
    id: 'papers.periodic-test',
    station: 'papers',
    positions: 'once',
    applies: underEu,
    outcomes: { valid: passed, expired: failed('before it is towed'), 'not required': notApplicable, 'not shown': unseen },
    sources: [law('eu', 'Directive 2014/45/EU', 'intervals for light trailers are national'), commonPractice],
  }),
  choiceCheck({
    id: 'papers.recall',
    station: 'papers',
    positions: 'once',
    outcomes: { 'none open': passed, 'open recall': advisory('before next trip'), 'not looked up': unseen },
    sources: [commonPractice],
  }),
]
