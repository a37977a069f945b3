import { commercialRule, commonPractice, fromMemory } from '../rules/cite'
import { lashingScrapping } from '../rules/running-gear-sources'
import type { Source } from '../rules/rule-book'
import { gradeStrapDamage, strapShareLimit } from '../rules/strap-damage'
import type { FieldValues } from '../survey/answer'
import { measured } from '../units/quantity'
import { advisory, failed, numberOf, passed, textOf } from './builders'
import type { Check, Field, Found } from './check'

/** Damage told by its length across the webbing. */
const measuredDamage = ['fraying', 'cut', 'split', 'burn'] as const

/** What the eye sees first; length and width are asked where the damage runs across the webbing. */
export const webbingFields: readonly Field[] = [
  { kind: 'choice', id: 'damage', options: ['none', 'light wear', 'fraying', 'cut', 'split', 'burn', 'chemical', 'sun', 'missing'] },
  { kind: 'reading', id: 'length', quantity: 'smallLength', min: 0.0005, max: 0.3, drawing: 'strap width', when: { field: 'damage', oneOf: measuredDamage } },
  { kind: 'reading', id: 'width', quantity: 'smallLength', min: 0.015, max: 0.15, when: { field: 'damage', oneOf: measuredDamage } },
]

export const webbingOutcomes: Check['outcomes'] = {
  none: passed,
  'light wear': passed,
  'small fraying': advisory('before next trip'),
  'small cut': advisory('before next trip'),
  'small split': advisory('before next trip'),
  sun: advisory('before next trip'),
  'frayed too far': failed('before it is towed'),
  'cut too far': failed('before it is towed'),
  'split too far': failed('before it is towed'),
  'out of service': failed('before it is towed'),
  burn: failed('before it is towed'),
  chemical: failed('before it is towed'),
  missing: failed('before it is towed'),
}

const tooFar: Readonly<Record<string, string>> = { fraying: 'frayed too far', cut: 'cut too far', split: 'split too far' }

const judgeMeasured = (damage: string, lengthM: number, widthM: number): Found => {
  const grade = gradeStrapDamage(lengthM, widthM)
  const values = {
    length: measured('smallLength', lengthM),
    width: measured('smallLength', widthM),
    share: measured('ratio', grade.share),
    limit: measured('ratio', strapShareLimit),
    service: measured('smallLength', grade.outOfServiceM ?? 0),
  }
  if (grade.pastOutOfService) return { outcome: 'out of service', values }
  if (damage === 'burn') return { outcome: 'burn', values }
  return { outcome: grade.pastShare ? (tooFar[damage] ?? 'cut too far') : `small ${damage}`, values }
}

/**
 * Judges webbing by its damage. Cuts, splits and fraying beyond a tenth of the width fail; heat and chemicals fail at any
 * size; a smaller cut is an advisory, because 393.104(b) allows none that weakens.
 */
export const judgeWebbing = (values: FieldValues): Found | undefined => {
  const damage = textOf(values, 'damage')
  if (damage === undefined) return undefined
  if (!measuredDamage.some((kind) => kind === damage)) return { outcome: damage }
  const lengthM = numberOf(values, 'length')
  const widthM = numberOf(values, 'width')
  return lengthM === undefined || widthM === undefined ? undefined : judgeMeasured(damage, lengthM, widthM)
}

export const webbingSources: readonly Source[] = [
  commercialRule('393.104(b)', 'no cut, crack or other damage that weakens a tiedown'),
  lashingScrapping('cuts above 10 % of the width; heat or chemical damage'),
  fromMemory('North American tiedown defect table, out-of-service limits by web width'),
  commonPractice,
]
