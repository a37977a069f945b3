import { commercialRule, commonPractice, tradeLiterature } from '../../rules/cite'
import { carriesBoat, ifKnown } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, passed, unseen } from '../builders'
import type { Check } from '../check'

const supports = (wanted: string) => ifKnown((rig) => rig.trailer.supports, (fitted) => fitted.includes(wanted))
const yearly = tradeLiterature('boat trailer maintenance articles', 'bunks, rollers and carpets, yearly')

export const supportChecks: readonly Check[] = [
  choiceCheck({
    id: 'bunks.surface',
    station: 'bunks',
    positions: 'support',
    applies: supports('bunks'),
    drawing: 'bunk',
    photograph: true,
    outcomes: {
      whole: passed,
      'worn thin': advisory('at next service'),
      'worn through': advisory('before next trip'),
      'staples or screws proud': advisory('before it is towed'),
      'metal touches the hull': failed('before it is towed'),
      'a roller, not a bunk': notApplicable,
    },
    sources: [yearly, commonPractice],
  }),
  choiceCheck({
    id: 'bunks.timber',
    station: 'bunks',
    positions: 'support',
    applies: supports('bunks'),
    drawing: 'bunk',
    photograph: true,
    outcomes: {
      sound: passed,
      weathered: advisory('at next service'),
      split: advisory('before next trip'),
      sags: advisory('before next trip'),
      'soft or rotten': failed('before it is towed'),
      broken: failed('before it is towed'),
      'a roller, not a bunk': notApplicable,
    },
    sources: [yearly, commonPractice],
  }),
  choiceCheck({
    id: 'bunks.rollers',
    station: 'bunks',
    positions: 'support',
    applies: supports('rollers'),
    photograph: true,
    outcomes: {
      'turn freely': passed,
      stiff: advisory('at next service'),
      'flat or grooved': advisory('before next trip'),
      'split or perished': advisory('before next trip'),
      'shaft worn or rusted': advisory('before next trip'),
      'does not turn': advisory('before next trip'),
      'roller missing': failed('before it is towed'),
      'a bunk, not a roller': notApplicable,
    },
    sources: [yearly, commonPractice],
  }),
  choiceCheck({
    id: 'bunks.brackets',
    station: 'bunks',
    positions: 'support',
    photograph: true,
    outcomes: { tight: passed, 'surface rust': advisory('at next service'), 'bolts wasted': advisory('before next trip'), bent: advisory('before it is towed'), loose: failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [commercialRule('393.104(b)', 'no damaged or weakened component'), commonPractice],
  }),
  choiceCheck({
    id: 'bunks.adjustment',
    station: 'bunks',
    positions: 'support',
    outcomes: { 'set and locked': passed, 'fixed, no adjuster': passed, seized: advisory('within a year'), 'slips or creeps': failed('before it is towed') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'bunks.bearing',
    station: 'bunks',
    positions: 'support',
    applies: carriesBoat,
    drawing: 'bunk',
    photograph: true,
    outcomes: {
      'along its length': passed,
      'in part': advisory('before next trip'),
      'off the strake or bulkhead': advisory('before next trip'),
      'on a point': failed('before it is towed'),
      'does not bear': failed('before it is towed'),
      'no boat on the trailer': unseen,
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'bunks.hull-marks',
    station: 'bunks',
    positions: 'support',
    applies: carriesBoat,
    photograph: true,
    outcomes: { none: passed, scuffs: passed, 'gelcoat or paint worn': advisory('within a month'), 'hard spot or dent': advisory('before next trip'), 'cracked or pressed in': failed('before it is towed'), 'no boat on the trailer': unseen },
    sources: [commonPractice],
  }),
]
