import { identificationLampCount, identificationSpacing, isInBand, rearLampHeights, reflectorHeights } from '../../rules/lamp-heights'
import { commonPractice, roadworthiness } from '../../rules/cite'
import { lampRule, ukLampRules } from '../../rules/running-gear-sources'
import { inchM, poundKg } from '../../units/unit-table'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'
import { allOf, asWideAs, heavierThan, underRuleBook } from '../equipment'

const wide = asWideAs(80 * inchM)

/** Where lamps and reflectors sit, and how they are held. */
export const lampPlacingChecks: readonly Check[] = [
  {
    id: 'lights.heights',
    station: 'lights',
    positions: 'once',
    drawing: 'lamp',
    fields: [
      { kind: 'reading', id: 'lamps', quantity: 'smallLength', min: 0.05, max: 3 },
      { kind: 'reading', id: 'reflectors', quantity: 'smallLength', min: 0.05, max: 3 },
    ],
    outcomes: {
      inside: passed,
      'lamps outside': failed('before next trip'),
      'reflectors outside': failed('before next trip'),
      'both outside': failed('before next trip'),
    },
    judge: (values, { ruleBook }) => {
      const lamps = numberOf(values, 'lamps')
      const reflectors = numberOf(values, 'reflectors')
      if (lamps === undefined || reflectors === undefined) return undefined
      const shown = { lamps: measured('smallLength', lamps), reflectors: measured('smallLength', reflectors) }
      const lampsRight = isInBand(rearLampHeights[ruleBook], lamps)
      const reflectorsRight = isInBand(reflectorHeights[ruleBook], reflectors)
      if (lampsRight && reflectorsRight) return { outcome: 'inside', values: shown }
      if (!lampsRight && !reflectorsRight) return { outcome: 'both outside', values: shown }
      return { outcome: lampsRight ? 'reflectors outside' : 'lamps outside', values: shown }
    },
    sources: { us: [lampRule('mounting heights, as restated')], eu: [ukLampRules, commonPractice] },
  },
  {
    id: 'lights.identification-cluster',
    station: 'lights',
    positions: 'once',
    applies: allOf(underRuleBook('us'), wide),
    drawing: 'lamp',
    fields: [
      { kind: 'count', id: 'lamps', min: 0, max: 12 },
      { kind: 'reading', id: 'spacing', quantity: 'smallLength', min: 0, max: 2, optional: true },
    ],
    outcomes: { right: passed, 'not three': failed('before next trip'), 'wrong spacing': failed('before next trip'), 'width not known': unseen },
    judge: (values, { rig }): Found | undefined => {
      const lamps = numberOf(values, 'lamps')
      const spacing = numberOf(values, 'spacing')
      if (lamps === undefined) return undefined
      if (rig.trailer.widthM === undefined && lamps === 0) return { outcome: 'width not known' }
      if (lamps !== identificationLampCount) return { outcome: 'not three', values: { lamps } }
      if (spacing === undefined) return undefined
      return { outcome: isInBand(identificationSpacing, spacing) ? 'right' : 'wrong spacing', values: { spacing: measured('smallLength', spacing) } }
    },
    sources: [lampRule('agency letter 00433.ztv')],
  },
  {
    id: 'lights.conspicuity',
    station: 'lights',
    positions: 'once',
    applies: allOf(underRuleBook('us'), wide, heavierThan(10_000 * poundKg)),
    photograph: true,
    fields: [{ kind: 'choice', id: 'tape', options: ['whole', 'lifting or dirty', 'missing'] }],
    outcomes: { whole: passed, 'lifting or dirty': advisory('within a month'), missing: failed('before next trip'), 'size not known': unseen },
    judge: (values, { rig: { trailer } }) => {
      const tape = textOf(values, 'tape')
      const known = trailer.widthM !== undefined && trailer.maximumMassKg !== undefined
      return tape === undefined ? undefined : { outcome: tape === 'missing' && !known ? 'size not known' : tape }
    },
    sources: [lampRule('conspicuity of trailers 80 in wide and over 10,000 lb')],
  },
  choiceCheck({
    id: 'lights.mounting',
    station: 'lights',
    positions: 'once',
    photograph: true,
    drawing: 'lamp',
    outcomes: {
      'firm and sealed': passed,
      'bracket rusted': advisory('at next service'),
      'seal open': advisory('within a month'),
      loose: advisory('before next trip'),
      'hanging by its wires': failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'lights.number-plate',
    station: 'lights',
    positions: 'once',
    photograph: true,
    outcomes: {
      'readable and held': passed,
      'dirty or bent': advisory('before next trip'),
      'hidden by the boat': failed('before it is towed'),
      missing: failed('before it is towed'),
      'not called for here': notApplicable,
    },
    sources: { us: [commonPractice], eu: [roadworthiness('0.1, number plates')] },
  }),
]
