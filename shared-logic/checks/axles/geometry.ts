import { levelWithinM, mostTrackingM, noticeableTrackingM, squareWithinM } from '../../rules/axle-geometry'
import { commercialRule, commonPractice, maryland } from '../../rules/cite'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, numberOf, passed } from '../builders'
import type { Check, Found } from '../check'
import { sprung } from '../equipment'

const slackM = 1e-6

/** Left against right: the outcome by which side measures less. */
const compareSides = (values: FieldValues, withinM: number): Found | undefined => {
  const left = numberOf(values, 'left')
  const right = numberOf(values, 'right')
  if (left === undefined || right === undefined) return undefined
  const difference = { difference: measured('smallLength', Math.abs(left - right)) }
  if (Math.abs(left - right) <= withinM + slackM) return { outcome: 'even', values: difference }
  return { outcome: left < right ? 'less on the left' : 'less on the right', values: difference }
}

/** How the axles stand and run. */
export const axleGeometryChecks: readonly Check[] = [
  {
    id: 'axles.tracking',
    station: 'axles',
    positions: 'once',
    fields: [{ kind: 'reading', id: 'offset', quantity: 'smallLength', min: 0, max: 0.5 }],
    outcomes: { inside: passed, noticeable: advisory('before next trip'), over: advisory('before next trip') },
    judge: (values) => {
      const offset = numberOf(values, 'offset')
      if (offset === undefined) return undefined
      const outcome = offset > mostTrackingM + slackM ? 'over' : offset > noticeableTrackingM + slackM ? 'noticeable' : 'inside'
      return { outcome, values: { offset: measured('smallLength', offset) } }
    },
    sources: [commercialRule('393.70(a)'), commonPractice],
  },
  {
    id: 'axles.square',
    station: 'axles',
    positions: 'axle',
    fields: [
      { kind: 'reading', id: 'left', quantity: 'length', min: 0.5, max: 20 },
      { kind: 'reading', id: 'right', quantity: 'length', min: 0.5, max: 20 },
    ],
    outcomes: { even: passed, 'less on the left': advisory('within a month'), 'less on the right': advisory('within a month') },
    judge: (values) => compareSides(values, squareWithinM),
    sources: [commonPractice],
  },
  {
    id: 'axles.ride-height',
    station: 'axles',
    positions: 'once',
    applies: sprung,
    fields: [
      { kind: 'reading', id: 'left', quantity: 'length', min: 0.05, max: 2 },
      { kind: 'reading', id: 'right', quantity: 'length', min: 0.05, max: 2 },
    ],
    outcomes: { even: passed, 'less on the left': advisory('before next trip'), 'less on the right': advisory('before next trip') },
    judge: (values) => compareSides(values, levelWithinM),
    sources: [maryland('11.14.05.03 A(2)'), commonPractice],
  },
]
