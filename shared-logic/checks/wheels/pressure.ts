import { commonPractice, maryland, tradeLiterature } from '../../rules/cite'
import { highShare, lowShare, muchTooLowShare } from '../../rules/tyre-pressure'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const pressureFound = (pressurePa: number, placardPa: number, warm: boolean): Found => {
  const values = { pressure: measured('pressure', pressurePa), placard: measured('pressure', placardPa) }
  const share = pressurePa / placardPa
  if (share < muchTooLowShare - 1e-9) return { outcome: 'much too low', values }
  if (share < lowShare - 1e-9) return { outcome: 'low', values }
  if (warm) return { outcome: 'taken warm', values }
  return { outcome: share > highShare + 1e-9 ? 'high' : 'right', values }
}

/** Air, and what keeps it in. */
export const pressureChecks: readonly Check[] = [
  {
    id: 'wheels.pressure',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'pressure gauge',
    caution: true,
    fields: [
      { kind: 'reading', id: 'pressure', quantity: 'pressure', min: 0, max: 1_000_000, drawing: 'pressure gauge' },
      { kind: 'choice', id: 'state', options: ['cold', 'warm'], optional: true },
    ],
    outcomes: {
      right: passed,
      low: advisory('before next trip'),
      high: advisory('before next trip'),
      'much too low': failed('before it is towed'),
      'taken warm': unseen,
      'placard not known': unseen,
    },
    judge: (values, { rig }) => {
      const pressure = numberOf(values, 'pressure')
      if (pressure === undefined) return undefined
      const placard = rig.trailer.tyre?.placardPressurePa
      if (placard === undefined) return { outcome: 'placard not known', values: { pressure: measured('pressure', pressure) } }
      return pressureFound(pressure, placard, textOf(values, 'state') === 'warm')
    },
    sources: [tradeLiterature('ST tyre load and pressure guidance'), commonPractice],
  },
  choiceCheck({
    id: 'wheels.valve',
    station: 'wheels',
    positions: 'wheel and spare',
    outcomes: {
      sound: passed,
      'cap missing': advisory('before next trip'),
      cracked: advisory('before next trip'),
      leaking: failed('before it is towed'),
    },
    sources: [maryland('11.22.04.06 (10)'), commonPractice],
  }),
]
