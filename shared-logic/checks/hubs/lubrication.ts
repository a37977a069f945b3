import { bearingDistanceM, bearingMonths } from '../../rules/bearings'
import { commonPractice } from '../../rules/cite'
import { bearingArticles, careArticles } from '../../rules/running-gear-sources'
import { dueOn, serviceState } from '../../rules/service-interval'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check } from '../check'
import { lubricatedBy } from '../equipment'

const oilBath = lubricatedBy('oil bath')
const grease = lubricatedBy('grease')

/** Oil, grease, and when they were last renewed. */
export const hubLubricationChecks: readonly Check[] = [
  choiceCheck({
    id: 'hubs.oil-condition',
    station: 'hubs',
    positions: 'hub',
    applies: oilBath,
    drawing: 'sight glass',
    photograph: true,
    outcomes: { clear: passed, dark: advisory('at next service'), milky: failed('before it is towed'), 'metal in it': failed('before it is towed') },
    sources: [bearingArticles],
  }),
  {
    id: 'hubs.oil-level',
    station: 'hubs',
    positions: 'hub',
    applies: oilBath,
    drawing: 'sight glass',
    photograph: true,
    fields: [{ kind: 'reading', id: 'level', quantity: 'ratio', min: 0, max: 1, drawing: 'sight glass' }],
    outcomes: { above: passed, half: passed, below: advisory('before next trip'), empty: failed('before it is towed') },
    judge: (values) => {
      const level = numberOf(values, 'level')
      if (level === undefined) return undefined
      if (level === 0) return { outcome: 'empty' }
      return { outcome: level > 0.5 ? 'above' : level === 0.5 ? 'half' : 'below' }
    },
    sources: [bearingArticles, commonPractice],
  },
  choiceCheck({
    id: 'hubs.sight-glass',
    station: 'hubs',
    positions: 'hub',
    applies: oilBath,
    drawing: 'sight glass',
    photograph: true,
    outcomes: {
      clear: passed,
      clouded: advisory('at next service'),
      'plug weeping': advisory('before next trip'),
      cracked: failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'hubs.grease-condition',
    station: 'hubs',
    positions: 'hub',
    applies: grease,
    photograph: true,
    drawing: 'hub',
    outcomes: {
      clean: passed,
      dark: advisory('at next service'),
      'dry or hard': advisory('before next trip'),
      milky: failed('before it is towed'),
      'metal in it': failed('before it is towed'),
      'hub not opened': unseen,
    },
    sources: [bearingArticles],
  }),
  {
    id: 'hubs.grease-interval',
    station: 'hubs',
    positions: 'once',
    applies: grease,
    fields: [
      { kind: 'choice', id: 'record', options: ['date known', 'date not known'] },
      { kind: 'date', id: 'greased', when: { field: 'record', oneOf: ['date known'] } },
      { kind: 'reading', id: 'distance', quantity: 'distance', min: 0, max: 1e9, optional: true, when: { field: 'record', oneOf: ['date known'] } },
    ],
    outcomes: {
      'in date': passed,
      overdue: advisory('before next trip'),
      'over the distance': advisory('before next trip'),
      'long overdue': failed('before next trip'),
      'not determined': advisory('within a month'),
    },
    judge: (values, { surveyDate }) => {
      if (textOf(values, 'record') === 'date not known') return { outcome: 'not determined' }
      const greased = textOf(values, 'greased')
      if (greased === undefined) return undefined
      const state = serviceState(greased, bearingMonths, surveyDate)
      const dates = { greased: { date: greased }, due: { date: dueOn(greased, bearingMonths) } }
      const isFar = (numberOf(values, 'distance') ?? 0) > bearingDistanceM
      return { outcome: state === 'in date' && isFar ? 'over the distance' : state, values: dates }
    },
    sources: [bearingArticles, careArticles, commonPractice],
  },
  choiceCheck({
    id: 'hubs.service-record',
    station: 'hubs',
    positions: 'once',
    outcomes: {
      'papers seen': passed,
      'said, no papers': advisory('at next service'),
      'over a year ago': advisory('before next trip'),
      none: advisory('within a month'),
    },
    sources: [bearingArticles, careArticles],
  }),
]
