import { isUnder } from '../../rules/beyond'
import { commercialRule, commonPractice, published, tradeLiterature } from '../../rules/cite'
import type { Rig } from '../../rig/rig'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { ifKnown } from '../applies'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'
import { judgeWebbing, webbingFields, webbingOutcomes, webbingSources } from '../webbing'

const winchOf = (rig: Rig) => rig.trailer.winch
const fitted = ifKnown(winchOf, (winch) => winch !== 'none')
const forms = (part: string) => ifKnown(winchOf, (winch) => winch.includes(part))

/** A winch is rated for at least half the mass it pulls up. Common practice. */
const winchShare = 0.5

const judgeCapacity = (values: FieldValues, { boat }: Rig): Found | undefined => {
  const marking = textOf(values, 'marking')
  const capacityKg = numberOf(values, 'capacity')
  if (marking === 'none') return { outcome: 'unmarked' }
  if (marking === undefined || capacityKg === undefined) return undefined
  const capacity = measured('mass', capacityKg)
  if (boat?.dryMassKg === undefined) return { outcome: 'boat unknown', values: { capacity } }
  const boatKg = boat.dryMassKg + (boat.engineMassKg ?? 0)
  return { outcome: isUnder(capacityKg, boatKg * winchShare) ? 'weak' : 'enough', values: { capacity, boat: measured('mass', boatKg) } }
}

/** Winch post, winch and what it pulls with. */
export const winchGearChecks: readonly Check[] = [
  choiceCheck({
    id: 'winch.post',
    station: 'winch',
    positions: 'once',
    drawing: 'winch',
    photograph: true,
    outcomes: { 'tight and straight': passed, 'rusted bolts': advisory('before next trip'), leans: advisory('before next trip'), 'bolts loose': failed('before it is towed'), 'bent or cracked': failed('before it is towed') },
    sources: [commercialRule('393.201', 'nothing loose, cracked or broken'), commonPractice],
  }),
  {
    id: 'winch.strap',
    station: 'winch',
    positions: 'once',
    applies: forms('strap'),
    drawing: 'winch',
    photograph: true,
    caution: true,
    fields: webbingFields,
    outcomes: webbingOutcomes,
    judge: judgeWebbing,
    sources: webbingSources,
  },
  choiceCheck({
    id: 'winch.cable',
    station: 'winch',
    positions: 'once',
    applies: forms('cable'),
    drawing: 'winch',
    photograph: true,
    caution: true,
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'single wires broken': advisory('before next trip'),
      'clamp poorly made': advisory('before it is towed'),
      'kinked or crushed': failed('before it is towed'),
      'strand broken': failed('before it is towed'),
      'rusted through': failed('before it is towed'),
    },
    sources: [commercialRule('393.104(b)', 'no damaged or weakened component'), commonPractice],
  }),
  choiceCheck({
    id: 'winch.wound',
    station: 'winch',
    positions: 'once',
    applies: fitted,
    outcomes: { even: passed, 'wound loose or crossed': advisory('before next trip'), 'too few turns': failed('before it is towed'), 'end not fixed': failed('before it is towed') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'winch.hook',
    station: 'winch',
    positions: 'once',
    applies: fitted,
    drawing: 'winch',
    photograph: true,
    outcomes: { 'latched and true': passed, 'latch missing': advisory('before it is towed'), rusted: advisory('before next trip'), 'opened up': failed('before it is towed'), cracked: failed('before it is towed') },
    sources: [published('EN 12195-2, as restated in instructions', 'a hook mouth opened by more than 5 % or deformed'), commonPractice],
  }),
  choiceCheck({
    id: 'winch.gears',
    station: 'winch',
    positions: 'once',
    applies: fitted,
    drawing: 'winch',
    caution: true,
    outcomes: {
      'holds at every tooth': passed,
      dry: advisory('at next service'),
      'teeth worn': advisory('before next trip'),
      'handle loose': advisory('before next trip'),
      'teeth broken': failed('before it is towed'),
      'pawl or brake slips': failed('before it is towed'),
    },
    sources: [tradeLiterature('boat trailer maintenance articles', 'winch gears and pawl, yearly'), commonPractice],
  }),
  choiceCheck({
    id: 'winch.electric',
    station: 'winch',
    positions: 'once',
    applies: forms('electric'),
    caution: true,
    outcomes: { works: passed, slow: advisory('at next service'), 'cables chafed': advisory('before next trip'), 'no fuse or breaker': advisory('before next trip'), 'clutch does not hold': failed('before it is towed'), dead: advisory('before next trip') },
    sources: [commonPractice],
  }),
  {
    id: 'winch.capacity',
    station: 'winch',
    positions: 'once',
    applies: fitted,
    fields: [
      { kind: 'choice', id: 'marking', options: ['marked', 'none'] },
      { kind: 'reading', id: 'capacity', quantity: 'mass', min: 100, max: 10_000, when: { field: 'marking', oneOf: ['marked'] } },
    ],
    outcomes: { enough: passed, weak: advisory('before next trip'), unmarked: advisory('at next service'), 'boat unknown': unseen },
    judge: (values, { rig }) => judgeCapacity(values, rig),
    sources: [commonPractice],
  },
]
