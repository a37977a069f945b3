import { commonPractice, tradeLiterature } from '../rules/cite'
import { dueOn, serviceState } from '../rules/service-interval'
import type { FieldValues } from '../survey/answer'
import { advisory, choiceCheck, notApplicable, passed, textOf, unseen } from './builders'
import type { Check, Found, JudgeContext } from './check'
import { braked, hydraulic, lubricatedBy } from './equipment'

const upkeep = tradeLiterature('boat trailer maintenance articles', 'rinse and flush after each use, yearly service')
/** Bearings, brakes, springs and fasteners, yearly in salt use. */
const serviceMonths = 12

const judgeService = (values: FieldValues, { surveyDate }: JudgeContext): Found | undefined => {
  const record = textOf(values, 'record')
  const last = textOf(values, 'last')
  if (record !== 'seen') return record === undefined ? undefined : { outcome: record }
  return last === undefined ? undefined : { outcome: serviceState(last, serviceMonths, surveyDate), values: { last: { date: last }, due: { date: dueOn(last, serviceMonths) } } }
}

/** What is done between trips, so that the next survey finds less. */
export const afterUseChecks: readonly Check[] = [
  choiceCheck({
    id: 'after-use.rinse',
    station: 'after-use',
    positions: 'once',
    outcomes: { 'after every use': passed, 'never in salt water': passed, 'now and then': advisory('before next trip'), never: advisory('before next trip'), 'salt or sand found': advisory('before next trip') },
    sources: [upkeep],
  }),
  choiceCheck({
    id: 'after-use.brake-flush',
    station: 'after-use',
    positions: 'once',
    applies: hydraulic,
    outcomes: { 'after every use': passed, 'never immersed': passed, 'kit fitted, not used': advisory('before next trip'), 'no flushing kit': advisory('within a year'), never: advisory('before next trip') },
    sources: [upkeep],
  }),
  choiceCheck({
    id: 'after-use.brakes-parked',
    station: 'after-use',
    positions: 'once',
    applies: braked,
    outcomes: { 'chocked, brake off': passed, 'brake left on': advisory('at next service'), 'nothing holds it': advisory('before it is towed') },
    sources: [commonPractice],
    caution: true,
  }),
  choiceCheck({
    id: 'after-use.lights',
    station: 'after-use',
    positions: 'once',
    outcomes: { 'rinsed, plug greased': passed, 'plug dry and green': advisory('before next trip'), 'water in lamps': advisory('before next trip'), 'plug drags or hangs': advisory('before it is towed') },
    sources: [upkeep, commonPractice],
  }),
  choiceCheck({
    id: 'after-use.hubs-cooled',
    station: 'after-use',
    positions: 'once',
    outcomes: { 'left to cool first': passed, 'straight into the water': advisory('at next service'), 'not known': unseen },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'after-use.oil-baths-turned',
    station: 'after-use',
    positions: 'once',
    applies: lubricatedBy('oil bath'),
    outcomes: { 'turned now and then': passed, 'in use all year': passed, 'stands for months': advisory('at next service') },
    sources: [tradeLiterature('bearing and hub articles', 'long storage: the wheels are turned so that the upper bearing stays wetted')],
  }),
  choiceCheck({
    id: 'after-use.storage',
    station: 'after-use',
    positions: 'once',
    outcomes: {
      'on stands, covered': passed,
      'short storage, tyres up': passed,
      'weight on the tyres': advisory('within a month'),
      'stands in wet grass': advisory('within a month'),
      'tyres in the sun': advisory('within a month'),
      'bow low, water stands': advisory('before next trip'),
    },
    sources: [commonPractice],
    caution: true,
  }),
  choiceCheck({
    id: 'after-use.inhibitor',
    station: 'after-use',
    positions: 'once',
    outcomes: { 'done this year': passed, 'never in salt water': passed, 'not done': advisory('at next service'), 'over rust': advisory('at next service') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'after-use.straps-stored',
    station: 'after-use',
    positions: 'once',
    outcomes: { 'rinsed, dry, dark': passed, 'left wet or salty': advisory('at next service'), 'left in the sun': advisory('at next service'), 'none to store': notApplicable },
    sources: [tradeLiterature('synthetic tie-down safety bulletin', 'stored away from ultraviolet light, heat and chemicals'), commonPractice],
  }),
  {
    id: 'after-use.service-record',
    station: 'after-use',
    positions: 'once',
    fields: [
      { kind: 'choice', id: 'record', options: ['seen', 'told, not shown', 'no record'] },
      { kind: 'date', id: 'last', when: { field: 'record', oneOf: ['seen'] } },
    ],
    outcomes: { 'in date': passed, overdue: advisory('at next service'), 'long overdue': advisory('before next trip'), 'told, not shown': advisory('within a month'), 'no record': advisory('before next trip') },
    judge: judgeService,
    sources: [upkeep, commonPractice],
  },
]
