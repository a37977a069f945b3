import { isOver, isUnder } from '../../rules/beyond'
import { leastLiningM, liningFixings, worthRenewingM, type LiningFixing } from '../../rules/brake-lining'
import { commercialRule, commonPractice, inUseStandard, maryland, roadworthiness, tradeLiterature } from '../../rules/cite'
import { bearingArticles } from '../../rules/running-gear-sources'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'
import { braked, discBraked, drumBraked } from '../equipment'

const isFixing = (value: string): value is LiningFixing => liningFixings.some((fixing) => fixing === value)

const judgeLining = (values: FieldValues): Found | undefined => {
  const thickness = numberOf(values, 'thickness')
  const said = textOf(values, 'fixing')
  if (thickness === undefined) return undefined
  const fixing = said !== undefined && isFixing(said) ? said : 'bonded'
  const shown = { thickness: measured('smallLength', thickness), least: measured('smallLength', leastLiningM[fixing]), renew: measured('smallLength', worthRenewingM[fixing]) }
  if (isUnder(thickness, leastLiningM[fixing])) return { outcome: 'below', values: shown }
  return { outcome: isOver(thickness, worthRenewingM[fixing]) ? 'thick' : 'low', values: shown }
}

/** A measured disc or drum against the limit marked on it. `wear` makes a drum's growth count as a disc's thinning. */
const againstMark = (values: FieldValues, wear: 1 | -1): Found | undefined => {
  const mark = textOf(values, 'mark')
  if (mark === 'no readable mark') return { outcome: 'no mark' }
  const limit = numberOf(values, 'limit')
  const found = numberOf(values, 'found')
  if (limit === undefined || found === undefined) return undefined
  const shown = { found: measured('smallLength', found), limit: measured('smallLength', limit) }
  return { outcome: (found - limit) * wear < -1e-9 ? 'beyond' : 'inside', values: shown }
}

const measurementOutcomes = { inside: passed, beyond: failed('before next trip'), 'no mark': advisory('at next service') } as const

/** Linings, discs, drums, and whether they let go again. */
export const frictionChecks: readonly Check[] = [
  {
    id: 'brakes.lining',
    station: 'brakes',
    positions: 'brake',
    applies: braked,
    drawing: 'lining',
    photograph: true,
    caution: true,
    fields: [
      { kind: 'reading', id: 'thickness', quantity: 'smallLength', min: 0, max: 0.03, drawing: 'lining' },
      { kind: 'choice', id: 'fixing', options: liningFixings, optional: true },
    ],
    outcomes: { thick: passed, low: advisory('at next service'), below: failed('before it is towed') },
    judge: judgeLining,
    sources: [commercialRule('393.47(d)'), inUseStandard('570.59(c)'), tradeLiterature('shop advice on lining thickness')],
  },
  {
    id: 'brakes.disc-thickness',
    station: 'brakes',
    positions: 'brake',
    applies: discBraked,
    drawing: 'rotor',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'mark', options: ['readable mark', 'no readable mark'] },
      { kind: 'reading', id: 'limit', quantity: 'smallLength', min: 0.003, max: 0.06, when: { field: 'mark', oneOf: ['readable mark'] } },
      { kind: 'reading', id: 'found', quantity: 'smallLength', min: 0.001, max: 0.06, when: { field: 'mark', oneOf: ['readable mark'] } },
    ],
    outcomes: measurementOutcomes,
    judge: (values) => againstMark(values, 1),
    sources: [maryland('11.19.03.05 C'), inUseStandard('570.59(b)'), commonPractice],
  },
  choiceCheck({
    id: 'brakes.disc-surface',
    station: 'brakes',
    positions: 'brake',
    applies: discBraked,
    drawing: 'rotor',
    photograph: true,
    outcomes: {
      'clean and smooth': passed,
      'flash rust': passed,
      grooved: advisory('at next service'),
      'deeply pitted': failed('before next trip'),
      cracked: failed('before it is towed'),
      'one face not used': advisory('before next trip'),
    },
    sources: [roadworthiness('1.1.14'), commonPractice],
  }),
  {
    id: 'brakes.drum-diameter',
    station: 'brakes',
    positions: 'brake',
    applies: drumBraked,
    drawing: 'lining',
    fields: [
      { kind: 'choice', id: 'mark', options: ['readable mark', 'no readable mark'] },
      { kind: 'reading', id: 'limit', quantity: 'smallLength', min: 0.1, max: 0.5, when: { field: 'mark', oneOf: ['readable mark'] } },
      { kind: 'reading', id: 'found', quantity: 'smallLength', min: 0.1, max: 0.5, when: { field: 'mark', oneOf: ['readable mark'] } },
    ],
    outcomes: measurementOutcomes,
    judge: (values) => againstMark(values, -1),
    sources: [maryland('11.19.03.05 C'), inUseStandard('570.59(b)'), commonPractice],
  },
  choiceCheck({
    id: 'brakes.drum-surface',
    station: 'brakes',
    positions: 'brake',
    applies: drumBraked,
    drawing: 'lining',
    photograph: true,
    caution: true,
    outcomes: {
      'clean and smooth': passed,
      'flash rust': passed,
      'grooved or lipped': advisory('at next service'),
      'springs or adjuster rusted': advisory('before next trip'),
      'greased or wet with oil': failed('before it is towed'),
      'cracked or scaling': failed('before it is towed'),
      'drum not taken off': unseen,
    },
    sources: [roadworthiness('1.1.14'), bearingArticles, commonPractice],
  }),
  choiceCheck({
    id: 'brakes.drag',
    station: 'brakes',
    positions: 'brake',
    applies: braked,
    caution: true,
    outcomes: {
      'lets go': passed,
      'brushes evenly': passed,
      drags: advisory('before next trip'),
      'hot or smells': failed('before it is towed'),
      'not lifted': unseen,
    },
    sources: [bearingArticles],
  }),
]
