import { isOver } from '../../rules/beyond'
import { commonPractice } from '../../rules/cite'
import { measured } from '../../units/quantity'
import { carriesBoat } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, textOf, unseen } from '../builders'
import type { Check } from '../check'

/** A transom this far aft of the last support is carried; further, the hull hooks. Common practice, no source. */
const transomOverhangM = 0.05

export const seatingChecks: readonly Check[] = [
  choiceCheck({
    id: 'bunks.keel',
    station: 'bunks',
    positions: 'once',
    applies: carriesBoat,
    photograph: true,
    outcomes: { 'keel bears': passed, 'built without keel support': notApplicable, 'bears on one roller': advisory('before next trip'), 'keel hangs clear': advisory('before next trip'), 'bears on metal': failed('before it is towed'), 'no boat on the trailer': unseen },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'bunks.square',
    station: 'bunks',
    positions: 'once',
    applies: carriesBoat,
    photograph: true,
    outcomes: { square: passed, 'off centre': advisory('before it is towed'), leans: failed('before it is towed'), 'off its supports': failed('before it is towed'), 'no boat on the trailer': unseen },
    sources: [commonPractice],
  }),
  {
    id: 'bunks.transom',
    station: 'bunks',
    positions: 'once',
    applies: carriesBoat,
    drawing: 'bunk',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'support', options: ['reaches the transom', 'ends short', 'no boat on the trailer'] },
      { kind: 'reading', id: 'overhang', quantity: 'smallLength', min: 0.001, max: 3, when: { field: 'support', oneOf: ['ends short'] } },
    ],
    outcomes: { supported: passed, 'nearly there': passed, overhangs: advisory('before next trip'), 'no boat on the trailer': unseen },
    judge: (values) => {
      const support = textOf(values, 'support')
      const overhangM = numberOf(values, 'overhang')
      if (support !== 'ends short') return support === undefined ? undefined : { outcome: support === 'reaches the transom' ? 'supported' : support }
      if (overhangM === undefined) return undefined
      return { outcome: isOver(overhangM, transomOverhangM) ? 'overhangs' : 'nearly there', values: { overhang: measured('smallLength', overhangM), limit: measured('smallLength', transomOverhangM) } }
    },
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'bunks.guides',
    station: 'bunks',
    positions: 'once',
    outcomes: { 'not fitted': notApplicable, firm: passed, 'cap or cover missing': advisory('at next service'), bent: advisory('at next service'), loose: advisory('before it is towed'), cracked: failed('before it is towed') },
    sources: [commonPractice],
  }),
]
