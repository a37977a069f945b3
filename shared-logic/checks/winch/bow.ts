import { isOver } from '../../rules/beyond'
import { commercialRule, commonPractice } from '../../rules/cite'
import { boatSecuring } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { carriesBoat } from '../applies'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check } from '../check'

const securingPractice = boatSecuring('the winch and its strap are for loading; a further tie holds the bow on the road')

/** A stem this far from its stop rocks; further, the boat is not home. Common practice. */
const rockingGapM = 0.025

/** What holds the bow. */
export const winchBowChecks: readonly Check[] = [
  choiceCheck({
    id: 'winch.safety-chain',
    station: 'winch',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'bow tie',
    photograph: true,
    outcomes: { 'fitted and snug': passed, 'too long': advisory('before it is towed'), 'weak hardware': advisory('before it is towed'), 'rusted away': failed('before it is towed'), missing: failed('before it is towed') },
    sources: [securingPractice, commonPractice],
  }),
  choiceCheck({
    id: 'winch.second-tie',
    station: 'winch',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'bow tie',
    photograph: true,
    outcomes: {
      'down and back': passed,
      'straight down': advisory('before next trip'),
      'forward only': advisory('before it is towed'),
      'loose or makeshift': advisory('before it is towed'),
      none: failed('before it is towed'),
    },
    sources: [securingPractice, commercialRule('393.110', 'least number of tiedowns'), commonPractice],
  }),
  {
    id: 'winch.bow-stop',
    station: 'winch',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'bow stop',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'stem', options: ['bears', 'gap', 'off to one side', 'no stop'] },
      { kind: 'reading', id: 'gap', quantity: 'smallLength', min: 0.001, max: 0.5, drawing: 'bow stop', when: { field: 'stem', oneOf: ['gap'] } },
    ],
    outcomes: { bears: passed, 'small gap': advisory('before it is towed'), 'off to one side': advisory('before it is towed'), 'not home': failed('before it is towed'), 'no stop': failed('before it is towed') },
    judge: (values) => {
      const stem = textOf(values, 'stem')
      const gapM = numberOf(values, 'gap')
      if (stem !== 'gap') return stem === undefined ? undefined : { outcome: stem }
      return gapM === undefined ? undefined : { outcome: isOver(gapM, rockingGapM) ? 'not home' : 'small gap', values: { gap: measured('smallLength', gapM), limit: measured('smallLength', rockingGapM) } }
    },
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'winch.line-height',
    station: 'winch',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'bow stop',
    outcomes: { 'below the stop': passed, level: passed, 'pulls down': advisory('before next trip'), 'over the stop': advisory('before it is towed') },
    sources: [boatSecuring('the line leads to the bow eye below the stop'), commonPractice],
  }),
  choiceCheck({
    id: 'winch.bow-pad',
    station: 'winch',
    positions: 'once',
    outcomes: { sound: passed, worn: advisory('at next service'), perished: advisory('before next trip'), 'bracket loose': failed('before it is towed'), missing: failed('before it is towed') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'winch.bow-eye',
    station: 'winch',
    positions: 'once',
    applies: carriesBoat,
    photograph: true,
    outcomes: { sound: passed, 'sealant cracked': advisory('within a month'), 'rust weeps': advisory('before next trip'), loose: failed('before it is towed'), worn: failed('before it is towed') },
    sources: [commercialRule('393.108(a)', 'a tiedown holds what its weakest part or anchor holds'), commonPractice],
  }),
]
