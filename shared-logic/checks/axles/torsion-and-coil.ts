import { commonPractice, inUseStandard, quebec } from '../../rules/cite'
import { advisory, choiceCheck, failed, passed } from '../builders'
import type { Check } from '../check'
import { suspendedOn } from '../equipment'

const torsion = suspendedOn('torsion arms')
const coil = suspendedOn('coil springs')

/** Rubber torsion axles, and coil springs with their dampers. */
export const torsionAndCoilChecks: readonly Check[] = [
  choiceCheck({
    id: 'axles.torsion-arms',
    station: 'axles',
    positions: 'hub',
    applies: torsion,
    photograph: true,
    outcomes: {
      'as its mate': passed,
      'lower than its mate': advisory('before next trip'),
      'no spring left': failed('before it is towed'),
      'bent or cracked': failed('before it is towed'),
    },
    sources: [quebec('s. 152'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.torsion-rubber',
    station: 'axles',
    positions: 'hub',
    applies: torsion,
    photograph: true,
    outcomes: {
      sound: passed,
      perished: advisory('within a month'),
      'working out of the tube': failed('before next trip'),
      'tube rusted at its end': failed('before next trip'),
    },
    sources: [inUseStandard('570.61(a)'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.coil-springs',
    station: 'axles',
    positions: 'hub',
    applies: coil,
    photograph: true,
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      sagged: advisory('before next trip'),
      'out of its seat': failed('before it is towed'),
      broken: failed('before it is towed'),
    },
    sources: [inUseStandard('570.61(a)'), quebec('s. 152'), commonPractice],
  }),
  choiceCheck({
    id: 'axles.dampers',
    station: 'axles',
    positions: 'hub',
    applies: coil,
    photograph: true,
    outcomes: {
      dry: passed,
      leaking: failed('before next trip'),
      'bush worn': advisory('within a month'),
      'loose or off': failed('before it is towed'),
    },
    sources: [inUseStandard('570.61(a), (b)'), commonPractice],
  }),
]
