import { commonPractice, fromMemory, inUseStandard, tradeLiterature } from '../../rules/cite'
import { brakeMagnetA, dropShare, mostDropShare, voltageDropV, wireGauges, type WireGauge } from '../../rules/voltage-drop'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { brakedBy } from '../equipment'

const electric = brakedBy('electric')
const isGauge = (value: string): value is WireGauge => wireGauges.some((gauge) => gauge === value)

const judgeFeed = (values: FieldValues, { rig }: JudgeContext): Found | undefined => {
  const gauge = textOf(values, 'gauge')
  const run = numberOf(values, 'run')
  if (gauge === undefined || run === undefined) return undefined
  const axles = rig.trailer.brakedAxleCount ?? rig.trailer.axleCount
  if (!isGauge(gauge)) return { outcome: 'gauge not known' }
  if (axles === undefined) return { outcome: 'brakes not counted' }
  const drop = voltageDropV(gauge, run, brakeMagnetA * axles * 2)
  const shown = { drop: measured('voltage', drop), share: measured('ratio', dropShare(drop)), brakes: axles * 2 }
  return { outcome: dropShare(drop) > mostDropShare + 1e-9 ? 'thin' : 'thick enough', values: shown }
}

const pressureFound = (values: FieldValues): Found | undefined => {
  const unit = textOf(values, 'unit')
  if (unit !== 'builds pressure') return unit === undefined ? undefined : { outcome: unit }
  const pressure = numberOf(values, 'pressure')
  const plate = numberOf(values, 'plate')
  if (pressure === undefined || plate === undefined) return { outcome: 'not measured' }
  const shown = { pressure: measured('pressure', pressure), plate: measured('pressure', plate) }
  return { outcome: pressure < 0.9 * plate - 1e-6 ? 'weak' : 'builds pressure', values: shown }
}

/** Electric brakes, and the electric over hydraulic unit. */
export const electricBrakeChecks: readonly Check[] = [
  choiceCheck({
    id: 'brakes.controller',
    station: 'brakes',
    positions: 'once',
    applies: brakedBy('electric', 'electric over hydraulic'),
    caution: true,
    outcomes: {
      'all brakes answer': passed,
      'one side weaker': advisory('before next trip'),
      'some do not answer': failed('before it is towed'),
      'none answers': failed('before it is towed'),
      'no vehicle to try with': unseen,
    },
    sources: [inUseStandard('570.58'), commonPractice],
  }),
  choiceCheck({
    id: 'brakes.magnets',
    station: 'brakes',
    positions: 'brake',
    applies: electric,
    photograph: true,
    outcomes: {
      'worn evenly': passed,
      'worn unevenly': advisory('within a month'),
      'windings to be seen': failed('before it is towed'),
      'lever seized': failed('before it is towed'),
      'drum not taken off': unseen,
    },
    sources: [tradeLiterature('magnet test articles', 'worn or showing windings: renew'), commonPractice],
  }),
  choiceCheck({
    id: 'brakes.wiring',
    station: 'brakes',
    positions: 'brake',
    applies: electric,
    photograph: true,
    outcomes: {
      sound: passed,
      'clip missing': advisory('before next trip'),
      'joint corroded': advisory('before next trip'),
      frayed: failed('before it is towed'),
      parted: failed('before it is towed'),
    },
    sources: [inUseStandard('570.58(b)'), commonPractice],
  }),
  {
    id: 'brakes.feed-wire',
    station: 'brakes',
    positions: 'once',
    applies: electric,
    fields: [
      { kind: 'choice', id: 'gauge', options: [...wireGauges, 'not known'] },
      { kind: 'reading', id: 'run', quantity: 'length', min: 1, max: 25 },
    ],
    outcomes: { 'thick enough': passed, thin: advisory('at next service'), 'gauge not known': unseen, 'brakes not counted': unseen },
    judge: judgeFeed,
    sources: [tradeLiterature('marine wiring tables', '10 % voltage drop'), tradeLiterature('magnet test articles'), fromMemory('resistance of copper wire by gauge')],
  },
  {
    id: 'brakes.hydraulic-unit',
    station: 'brakes',
    positions: 'once',
    applies: brakedBy('electric over hydraulic'),
    photograph: true,
    caution: true,
    fields: [
      { kind: 'choice', id: 'unit', options: ['builds pressure', 'slow', 'does not run', 'leaking'] },
      { kind: 'reading', id: 'pressure', quantity: 'pressure', min: 0, max: 20_000_000, optional: true, when: { field: 'unit', oneOf: ['builds pressure'] } },
      { kind: 'reading', id: 'plate', quantity: 'pressure', min: 1_000_000, max: 20_000_000, optional: true, when: { field: 'unit', oneOf: ['builds pressure'] } },
    ],
    outcomes: {
      'builds pressure': passed,
      'not measured': unseen,
      weak: advisory('before next trip'),
      slow: advisory('before next trip'),
      leaking: failed('before it is towed'),
      'does not run': failed('before it is towed'),
    },
    judge: pressureFound,
    sources: [commonPractice],
  },
]
