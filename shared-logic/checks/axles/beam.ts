import { commonPractice, inUseStandard, maryland, roadworthiness } from '../../rules/cite'
import { advisory, choiceCheck, failed, numberOf, passed, unseen } from '../builders'
import type { Check } from '../check'

/** The axle itself, and how it hangs on the frame. */
export const axleBeamChecks: readonly Check[] = [
  {
    id: 'axles.count',
    station: 'axles',
    positions: 'once',
    applies: (rig) => rig.trailer.axleCount === undefined,
    fields: [{ kind: 'count', id: 'axles', min: 1, max: 3 }],
    outcomes: { counted: unseen },
    record: 'trailer.axleCount',
    judge: (values) => {
      const axles = numberOf(values, 'axles')
      return axles === undefined ? undefined : { outcome: 'counted', values: { axles } }
    },
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'axles.beam',
    station: 'axles',
    positions: 'axle',
    photograph: true,
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'scaled or pitted': advisory('before next trip'),
      bent: failed('before it is towed'),
      cracked: failed('before it is towed'),
      'rusted through': failed('before it is towed'),
    },
    sources: [roadworthiness('5.1.1'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.spindle',
    station: 'axles',
    positions: 'hub',
    photograph: true,
    drawing: 'hub',
    outcomes: {
      sound: passed,
      'seal seat worn': advisory('at next service'),
      'bearing seat scored': failed('before next trip'),
      'bent or cracked': failed('before it is towed'),
      'hub not taken off': unseen,
    },
    sources: [roadworthiness('5.1.2'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.mounting',
    station: 'axles',
    positions: 'axle',
    photograph: true,
    drawing: 'weld',
    outcomes: {
      sound: passed,
      'bolts rusted': advisory('at next service'),
      'bolts loose': failed('before it is towed'),
      'has shifted': failed('before it is towed'),
      cracked: failed('before it is towed'),
    },
    sources: [maryland('11.14.05.03 A(2)(h)'), roadworthiness('5.1.1'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.frame-clearance',
    station: 'axles',
    positions: 'axle',
    outcomes: { clear: passed, close: advisory('before next trip'), struck: failed('before next trip') },
    sources: [inUseStandard('570.61(a)'), commonPractice],
  }),
]
