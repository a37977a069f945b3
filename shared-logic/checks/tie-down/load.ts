import { commercialRule, commonPractice } from '../../rules/cite'
import type { Rig } from '../../rig/rig'
import { carriesBoat, ifKnown } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, passed } from '../builders'
import type { Check } from '../check'
import { allOf } from '../equipment'

const engineOf = (rig: Rig) => rig.boat?.engine
const hasDrive = allOf(carriesBoat, ifKnown(engineOf, (engine) => engine === 'outboard' || engine === 'sterndrive'))
const loose = commercialRule('393.100', 'nothing may leak, spill, blow or fall from the vehicle')

export const tieDownLoadChecks: readonly Check[] = [
  choiceCheck({
    id: 'tie-down.engine',
    station: 'tie-down',
    positions: 'once',
    applies: hasDrive,
    photograph: true,
    caution: true,
    outcomes: {
      'supported and locked': passed,
      'on its tilt lock': advisory('before next trip'),
      'on its hydraulics': advisory('before it is towed'),
      'support loose': failed('before it is towed'),
      'hangs low': failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.propeller',
    station: 'tie-down',
    positions: 'once',
    applies: hasDrive,
    outcomes: { 'covered or flagged': passed, 'inside the lamps': passed, 'sticks out bare': advisory('before it is towed') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.loose-gear',
    station: 'tie-down',
    positions: 'once',
    applies: carriesBoat,
    photograph: true,
    outcomes: { stowed: passed, 'could blow out': advisory('before it is towed'), 'heavy and loose': failed('before it is towed'), 'fuel cans loose': failed('before it is towed') },
    sources: [loose, commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.cover',
    station: 'tie-down',
    positions: 'once',
    applies: carriesBoat,
    outcomes: { 'none, nothing to blow': passed, 'made for the road, tight': passed, 'canvas or top up': failed('before it is towed'), 'loose or torn': failed('before it is towed') },
    sources: [loose, commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.mast-and-aerials',
    station: 'tie-down',
    positions: 'once',
    applies: carriesBoat,
    outcomes: { 'none fitted': notApplicable, 'down and tied': passed, 'height not known': advisory('before it is towed'), standing: failed('before it is towed') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'tie-down.drain-plug',
    station: 'tie-down',
    positions: 'once',
    applies: carriesBoat,
    outcomes: { 'out, hull drained': passed, 'in, hull dry': passed, 'water in the hull': advisory('before it is towed'), 'plug missing': advisory('before next trip'), 'weed or mud on board': advisory('before it is towed') },
    sources: [commonPractice],
  }),
]
