import { flashRatePerMinute } from '../../rules/lamp-heights'
import type { LampCondition } from '../../rules/lamp-row'
import { isRequired, lampRowOf } from '../../rules/lamp-table'
import { commercialRule, commonPractice, law } from '../../rules/cite'
import { lampRule, ukLampRules } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { missingOutcomes, missingReflectorOutcomes, waitingFor } from './missing-lamp'

/** A dead one of these leaves the rig unseen or its driver's intent unknown. */
const isGrave = (position: string): boolean => /^lamp (tail|stop|turn) /.test(position)

const missingFound = ({ position, rig }: JudgeContext, required: boolean | 'unknown', when: LampCondition | undefined): Found => {
  if (required === 'unknown' && when !== undefined) return { outcome: waitingFor(when, rig.trailer) }
  if (required === false || when === undefined) return { outcome: 'missing, not called for' }
  return { outcome: isGrave(position) ? 'missing' : 'missing, lesser' }
}

const judgeLamp = (state: string | undefined, context: JudgeContext): Found | undefined => {
  if (state === undefined) return undefined
  const row = lampRowOf(context.position, context.ruleBook)
  const required = row === undefined ? false : isRequired(row, context.rig.trailer)
  if (state === 'missing') return missingFound(context, required, row?.when)
  if (state === 'dead') return { outcome: isGrave(context.position) ? 'dead' : 'dead, lesser' }
  return { outcome: state }
}

/** Every lamp and reflector by itself, and the flash rate. */
export const lampChecks: readonly Check[] = [
  {
    id: 'lights.lamp',
    station: 'lights',
    positions: 'lamp',
    drawing: 'lamp',
    photograph: true,
    fields: [{ kind: 'choice', id: 'state', options: ['works', 'dim', 'dead', 'wrong colour', 'lens broken', 'water inside', 'missing'] }],
    outcomes: {
      works: passed,
      dim: advisory('before next trip'),
      'water inside': advisory('within a month'),
      'lens broken': failed('before it is towed'),
      'wrong colour': failed('before next trip'),
      dead: failed('before it is towed'),
      'dead, lesser': failed('before next trip'),
      ...missingOutcomes,
    },
    judge: (values, context) => judgeLamp(textOf(values, 'state'), context),
    sources: { us: [lampRule(), commercialRule('393.9')], eu: [ukLampRules, commonPractice] },
  },
  {
    id: 'lights.reflector',
    station: 'lights',
    positions: 'reflector',
    drawing: 'lamp',
    photograph: true,
    fields: [{ kind: 'choice', id: 'state', options: ['clean and whole', 'faded', 'hidden', 'broken', 'wrong colour', 'missing'] }],
    outcomes: {
      'clean and whole': passed,
      faded: advisory('within a month'),
      hidden: failed('before next trip'),
      broken: failed('before next trip'),
      'wrong colour': failed('before next trip'),
      ...missingReflectorOutcomes,
    },
    judge: (values, context) => judgeLamp(textOf(values, 'state'), context),
    sources: { us: [lampRule()], eu: [ukLampRules, commonPractice] },
  },
  {
    id: 'lights.flash-rate',
    station: 'lights',
    positions: 'once',
    drawing: 'lamp',
    fields: [{ kind: 'reading', id: 'rate', quantity: 'rate', min: 0, max: 300 }],
    outcomes: { inside: passed, 'no flash': failed('before it is towed'), slow: failed('before next trip'), fast: failed('before next trip') },
    judge: (values) => {
      const rate = numberOf(values, 'rate')
      if (rate === undefined) return undefined
      const shown = { rate: measured('rate', rate) }
      if (rate === 0) return { outcome: 'no flash', values: shown }
      if (rate < flashRatePerMinute.least) return { outcome: 'slow', values: shown }
      return { outcome: rate > flashRatePerMinute.most ? 'fast' : 'inside', values: shown }
    },
    sources: [ukLampRules, law('eu', 'UN Regulation 48, as restated', '90 ± 30 a minute'), commonPractice],
  },
  choiceCheck({
    id: 'lights.to-be-seen',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      'clear of the boat': passed,
      'hidden by the boat, light board used': passed,
      'partly hidden': failed('before next trip'),
      hidden: failed('before it is towed'),
    },
    sources: { us: [lampRule('agency letter of 8 November 1974 on boat trailers: overhang and detachable light bars')], eu: [ukLampRules, commonPractice] },
  }),
]
