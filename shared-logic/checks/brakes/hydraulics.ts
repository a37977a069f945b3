import { commonPractice, inUseStandard, maryland, roadworthiness } from '../../rules/cite'
import { advisory, choiceCheck, failed, passed, unseen } from '../builders'
import type { Check } from '../check'
import { allOf, discBraked, drumBraked, hydraulic } from '../equipment'

/** What carries the pressure and what it moves. */
export const brakeHydraulicChecks: readonly Check[] = [
  choiceCheck({
    id: 'brakes.lines',
    station: 'brakes',
    positions: 'once',
    applies: hydraulic,
    photograph: true,
    drawing: 'hose',
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'clip missing or chafing': advisory('before next trip'),
      'pitted or scaled': failed('before it is towed'),
      'flattened or kinked': failed('before it is towed'),
      leaking: failed('before it is towed'),
    },
    sources: [roadworthiness('1.1.11'), inUseStandard('570.55'), maryland('11.19.03.05 B'), commonPractice],
  }),
  choiceCheck({
    id: 'brakes.hoses',
    station: 'brakes',
    positions: 'brake',
    applies: hydraulic,
    photograph: true,
    drawing: 'hose',
    outcomes: {
      sound: passed,
      'fine cracks': advisory('within a month'),
      'twisted or tight': advisory('before next trip'),
      'chafed or cut': failed('before it is towed'),
      'bulging or leaking': failed('before it is towed'),
    },
    sources: [inUseStandard('570.55'), maryland('11.19.03.05 B'), commonPractice],
  }),
  choiceCheck({
    id: 'brakes.calipers',
    station: 'brakes',
    positions: 'brake',
    applies: allOf(hydraulic, discBraked),
    photograph: true,
    drawing: 'rotor',
    outcomes: {
      'slides freely': passed,
      'pins dry': advisory('at next service'),
      'pads worn unevenly': advisory('before next trip'),
      seized: failed('before it is towed'),
      leaking: failed('before it is towed'),
      'not seen with the wheel on': unseen,
    },
    sources: [inUseStandard('570.59'), commonPractice],
  }),
  choiceCheck({
    id: 'brakes.wheel-cylinders',
    station: 'brakes',
    positions: 'brake',
    applies: allOf(hydraulic, drumBraked),
    photograph: true,
    drawing: 'lining',
    outcomes: {
      'dry and free': passed,
      'damp under the boot': advisory('before next trip'),
      seized: failed('before it is towed'),
      leaking: failed('before it is towed'),
      'drum not taken off': unseen,
    },
    sources: [inUseStandard('570.59'), commonPractice],
  }),
]
