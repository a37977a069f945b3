import { commonPractice, inUseStandard, maryland, quebec, roadworthiness, ukInspection } from '../../rules/cite'
import { wheelNutTables } from '../../rules/running-gear-sources'
import { mudguardRoomM } from '../../rules/tyre-pressure'
import { looseShare, overtightShare, recheckIsDue, slackShare } from '../../rules/wheel-torque'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const torqueFound = (foundNm: number, makersNm: number): Found => {
  const values = { found: measured('torque', foundNm), makers: measured('torque', makersNm) }
  const share = foundNm / makersNm
  if (share < looseShare - 1e-9) return { outcome: 'loose', values }
  if (share < slackShare - 1e-9) return { outcome: 'slack', values }
  return { outcome: share > overtightShare + 1e-9 ? 'overtight' : 'right', values }
}

/** Rims, nuts and their torque. */
export const rimAndNutChecks: readonly Check[] = [
  choiceCheck({
    id: 'wheels.rim',
    station: 'wheels',
    positions: 'wheel and spare',
    photograph: true,
    outcomes: {
      sound: passed,
      'surface corrosion': advisory('at next service'),
      'corroded at bead or seats': advisory('before next trip'),
      bent: failed('before next trip'),
      'holes worn oval': failed('before it is towed'),
      'repaired by welding': failed('before it is towed'),
      cracked: failed('before it is towed'),
    },
    sources: [inUseStandard('570.63(a)'), quebec('s. 161'), roadworthiness('5.2.2'), commonPractice],
  }),
  {
    id: 'wheels.nuts',
    station: 'wheels',
    positions: 'wheel',
    drawing: 'wheel nuts',
    photograph: true,
    fields: [
      { kind: 'count', id: 'missing', min: 0, max: 10 },
      { kind: 'count', id: 'loose', min: 0, max: 10 },
    ],
    outcomes: { 'all tight': passed, one: failed('before it is towed'), several: failed('before it is towed') },
    judge: (values) => {
      const missing = numberOf(values, 'missing')
      const loose = numberOf(values, 'loose')
      if (missing === undefined || loose === undefined) return undefined
      const bad = missing + loose
      return { outcome: bad === 0 ? 'all tight' : bad === 1 ? 'one' : 'several', values: { missing, loose } }
    },
    sources: [inUseStandard('570.63(c)'), roadworthiness('5.2.1'), ukInspection('5.2.1'), commonPractice],
  },
  choiceCheck({
    id: 'wheels.nut-seats',
    station: 'wheels',
    positions: 'wheel',
    drawing: 'wheel nuts',
    photograph: true,
    outcomes: {
      right: passed,
      'surface rust': advisory('at next service'),
      'nuts of different kinds': advisory('before next trip'),
      'stud damaged': failed('before next trip'),
      'seat does not fit the wheel': failed('before it is towed'),
    },
    sources: [quebec('s. 161'), commonPractice],
  }),
  {
    id: 'wheels.torque',
    station: 'wheels',
    positions: 'wheel',
    drawing: 'wheel nuts',
    fields: [
      { kind: 'choice', id: 'figure', options: ['known', 'not known'] },
      { kind: 'reading', id: 'makers', quantity: 'torque', min: 20, max: 700, when: { field: 'figure', oneOf: ['known'] } },
      { kind: 'reading', id: 'found', quantity: 'torque', min: 0, max: 1000, when: { field: 'figure', oneOf: ['known'] } },
    ],
    outcomes: {
      right: passed,
      slack: advisory('before next trip'),
      overtight: advisory('before next trip'),
      loose: failed('before it is towed'),
      'figure not known': unseen,
    },
    judge: (values) => {
      if (textOf(values, 'figure') === 'not known') return { outcome: 'figure not known' }
      const makers = numberOf(values, 'makers')
      const found = numberOf(values, 'found')
      return makers === undefined || found === undefined ? undefined : torqueFound(found, makers)
    },
    sources: [wheelNutTables, commonPractice],
  },
  {
    id: 'wheels.retorque',
    station: 'wheels',
    positions: 'once',
    drawing: 'wheel nuts',
    fields: [
      { kind: 'choice', id: 'refitted', options: ['not lately', 'lately', 'not known'] },
      { kind: 'reading', id: 'distance', quantity: 'distance', min: 0, max: 1e9, when: { field: 'refitted', oneOf: ['lately'] } },
      { kind: 'count', id: 'rechecks', min: 0, max: 20, when: { field: 'refitted', oneOf: ['lately'] } },
    ],
    outcomes: { 'not due': passed, due: advisory('before it is towed'), 'not determined': advisory('before next trip') },
    judge: (values) => {
      const refitted = textOf(values, 'refitted')
      if (refitted === 'not known') return { outcome: 'not determined' }
      if (refitted === 'not lately') return { outcome: 'not due' }
      const distance = numberOf(values, 'distance')
      const rechecks = numberOf(values, 'rechecks')
      if (distance === undefined || rechecks === undefined) return undefined
      return { outcome: recheckIsDue(distance, rechecks) ? 'due' : 'not due' }
    },
    sources: [wheelNutTables],
  },
  {
    id: 'wheels.mudguard',
    station: 'wheels',
    positions: 'wheel',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'condition', options: ['sound', 'loose', 'cracked', 'missing'] },
      { kind: 'reading', id: 'room', quantity: 'smallLength', min: 0, max: 0.5, optional: true, when: { field: 'condition', oneOf: ['sound', 'loose', 'cracked'] } },
    ],
    outcomes: {
      sound: passed,
      close: advisory('before next trip'),
      touching: failed('before it is towed'),
      loose: failed('before it is towed'),
      cracked: advisory('before it is towed'),
      missing: advisory('before next trip'),
    },
    judge: (values) => {
      const room = numberOf(values, 'room')
      if (room === 0) return { outcome: 'touching' }
      const condition = textOf(values, 'condition')
      if (condition !== 'sound') return condition === undefined ? undefined : { outcome: condition }
      return room !== undefined && room < mudguardRoomM - 1e-9 ? { outcome: 'close', values: { room: measured('smallLength', room) } } : { outcome: 'sound' }
    },
    sources: [maryland('11.22.04.06 (11)'), commonPractice],
  },
  choiceCheck({
    id: 'wheels.spare',
    station: 'wheels',
    positions: 'once',
    applies: (rig) => rig.trailer.spareWheel ?? 'unknown',
    outcomes: {
      'fits and is held': passed,
      'no jack or brace for it': advisory('before next trip'),
      'carrier loose': failed('before it is towed'),
      'does not fit the hubs': advisory('before next trip'),
      'none carried': notApplicable,
    },
    sources: [maryland('11.22.04.06 (13)'), commonPractice],
  }),
]
