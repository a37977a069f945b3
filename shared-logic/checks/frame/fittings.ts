import { commercialRule, commonPractice } from '../../rules/cite'
import { ifKnown } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, passed } from '../builders'
import type { Check } from '../check'

export const frameFittingChecks: readonly Check[] = [
  choiceCheck({
    id: 'frame.fasteners',
    station: 'frame',
    positions: 'once',
    photograph: true,
    outcomes: { tight: passed, 'surface rust': advisory('at next service'), 'wrong metal': advisory('within a year'), wasted: advisory('before next trip'), loose: failed('before it is towed'), missing: failed('before it is towed') },
    sources: { us: [commercialRule('393.201', 'nothing loose or missing'), commonPractice], eu: [commonPractice] },
  }),
  choiceCheck({
    id: 'frame.fenders',
    station: 'frame',
    positions: 'once',
    photograph: true,
    outcomes: { secure: passed, 'rusted or split': advisory('before next trip'), 'bracket cracked': advisory('before it is towed'), 'rubs on the tyre': failed('before it is towed'), loose: failed('before it is towed'), missing: advisory('before next trip') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'frame.steps',
    station: 'frame',
    positions: 'once',
    caution: true,
    outcomes: { 'not fitted': notApplicable, 'firm and rough': passed, slippery: advisory('before next trip'), loose: failed('before next trip'), broken: failed('before next trip') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'frame.spare-carrier',
    station: 'frame',
    positions: 'once',
    applies: ifKnown((rig) => rig.trailer.spareWheel, (carried) => carried),
    outcomes: { 'firm and locked': passed, rusted: advisory('at next service'), 'tool missing': advisory('before next trip'), loose: failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [commonPractice],
  }),
]
