import { isOver, isUnder } from '../../rules/beyond'
import { commercialRule, commonPractice, fromMemory, law, newZealand, published, tradeLiterature } from '../../rules/cite'
import { classLimitKg, couplerClassFor, couplerStrengthFor, type CouplerClass } from '../../rules/coupler-classes'
import { trailerCategoryOf } from '../../rules/ratings'
import type { Trailer } from '../../rig/trailer'
import { measured } from '../../units/quantity'
import { pounds } from '../../units/us-customary'
import { ifKnown } from '../applies'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found } from '../check'

const zealand = newZealand('towing connections')

const isClass = (name: Trailer['coupler']): name is CouplerClass => name !== undefined && name.startsWith('class')

/** By its class or kind alone, where no capacity is marked. */
const judgeByKind = (trailer: Trailer, maximumKg: number): Found => {
  const maximum = measured('mass', maximumKg)
  if (trailer.coupler === 'ISO 50 mm') return { outcome: ['O1', 'O2'].includes(trailerCategoryOf(maximumKg)) ? 'class fits, unmarked' : 'class too small', values: { maximum, limit: measured('mass', 3_500) } }
  if (!isClass(trailer.coupler)) return { outcome: 'unmarked', values: { maximum } }
  const limitKg = classLimitKg(trailer.coupler)
  const values = { maximum, limit: measured('mass', limitKg) }
  if (!isOver(maximumKg, limitKg)) return { outcome: 'class fits, unmarked', values }
  // One restatement of the standard runs class 3 up to 10,000 lb: not ground enough for a fail.
  return { outcome: trailer.coupler === 'class 3' && !isOver(maximumKg, pounds(10_000)) ? 'class 3 in doubt' : 'class too small', values }
}

const judgeClass = (marking: string, capacityKg: number | undefined, trailer: Trailer): Found | undefined => {
  const maximumKg = trailer.maximumMassKg
  if (maximumKg === undefined) return { outcome: 'rating unknown' }
  if (marking === 'none') return judgeByKind(trailer, maximumKg)
  if (capacityKg === undefined) return undefined
  const strength = couplerStrengthFor(maximumKg)
  const values = { capacity: measured('mass', capacityKg), maximum: measured('mass', maximumKg) }
  if (isUnder(capacityKg, maximumKg)) return { outcome: 'capacity too small', values }
  const needed = couplerClassFor(maximumKg)
  return needed === undefined || strength === undefined ? { outcome: 'capacity fits', values } : { outcome: 'capacity fits class', values: { ...values, class: needed, strength: measured('force', strength.longitudinalN) } }
}

const levelBand = { lowM: 0.385, highM: 0.455 }

export const couplerHeadChecks: readonly Check[] = [
  choiceCheck({
    id: 'coupler.latch',
    station: 'coupler',
    positions: 'once',
    drawing: 'coupler',
    photograph: true,
    caution: true,
    outcomes: { 'closes and locks': passed, stiff: advisory('before next trip'), 'pin missing': failed('before it is towed'), 'needs adjusting': failed('before it is towed'), 'does not lock': failed('before it is towed') },
    sources: [zealand, commonPractice],
  }),
  choiceCheck({
    id: 'coupler.body',
    station: 'coupler',
    positions: 'once',
    drawing: 'coupler',
    photograph: true,
    outcomes: {
      sound: passed,
      'surface rust': advisory('at next service'),
      'worn socket': advisory('before next trip'),
      'deep corrosion': failed('before it is towed'),
      bent: failed('before it is towed'),
      cracked: failed('before it is towed'),
      'welded repair': failed('before it is towed'),
    },
    sources: [zealand, commonPractice],
  }),
  choiceCheck({
    id: 'coupler.attachment',
    station: 'coupler',
    positions: 'once',
    photograph: true,
    outcomes: { tight: passed, 'rusted bolts': advisory('before next trip'), 'bolt loose': failed('before it is towed'), 'bolt missing': failed('before it is towed'), 'weld cracked': failed('before it is towed') },
    sources: [zealand, commercialRule('393.201', 'nothing loose, cracked or broken'), commonPractice],
  }),
  {
    id: 'coupler.class',
    station: 'coupler',
    positions: 'once',
    drawing: 'coupler',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'marking', options: ['marked', 'as recorded', 'none'] },
      { kind: 'reading', id: 'capacity', quantity: 'mass', min: 200, max: 20_000, when: { field: 'marking', oneOf: ['marked'] } },
    ],
    outcomes: {
      'capacity fits': passed,
      'capacity fits class': passed,
      'class fits, unmarked': advisory('within a month'),
      'class 3 in doubt': advisory('before next trip'),
      unmarked: advisory('before next trip'),
      'class too small': failed('before it is towed'),
      'capacity too small': failed('before it is towed'),
      'rating unknown': unseen,
      'not recorded': unseen,
    },
    judge: (values, { rig }) => {
      const marking = textOf(values, 'marking')
      const recordedKg = rig.couplingRatings?.couplerRatingKg
      if (marking === 'as recorded' && recordedKg === undefined) return { outcome: 'not recorded' }
      return marking === undefined ? undefined : judgeClass(marking, marking === 'as recorded' ? recordedKg : numberOf(values, 'capacity'), rig.trailer)
    },
    sources: {
      us: [published('SAE J684, classes as restated in a state’s rules (COMAR 11.13.08.10)', 'breaking strengths by trailer weight')],
      eu: [published('ISO 1103:2007', 'scope: categories O1 and O2'), law('eu', 'Regulation (EU) 2018/858', 'categories of trailers')],
    },
  },
  {
    id: 'coupler.level',
    station: 'coupler',
    positions: 'once',
    fields: [
      { kind: 'choice', id: 'stance', options: ['level', 'nose up', 'nose down'] },
      { kind: 'reading', id: 'height', quantity: 'length', min: 0.15, max: 1.2, optional: true },
    ],
    outcomes: { level: passed, 'height off': advisory('within a month'), 'not level': advisory('before next trip'), 'not level, independent axles': advisory('before it is towed') },
    judge: (values, { rig, ruleBook }) => {
      const stance = textOf(values, 'stance')
      const heightM = numberOf(values, 'height')
      if (stance === undefined) return undefined
      const independent = rig.trailer.suspension === 'torsion arms' && (rig.trailer.axleCount ?? 1) > 1
      if (stance !== 'level') return { outcome: independent ? 'not level, independent axles' : 'not level' }
      const off = ruleBook === 'eu' && heightM !== undefined && (isUnder(heightM, levelBand.lowM) || isOver(heightM, levelBand.highM))
      return off ? { outcome: 'height off', values: { height: measured('length', heightM), low: measured('length', levelBand.lowM), high: measured('length', levelBand.highM) } } : { outcome: 'level' }
    },
    sources: {
      us: [tradeLiterature('tandem axle articles', 'independently sprung axles must be towed level'), commonPractice],
      eu: [tradeLiterature('tandem axle articles', 'independently sprung axles must be towed level'), fromMemory('coupling head height, laden: published statements differ')],
    },
  },
  choiceCheck({
    id: 'coupler.surge-play',
    station: 'coupler',
    positions: 'once',
    applies: ifKnown((rig) => rig.trailer.brakes, (brakes) => brakes === 'surge'),
    drawing: 'actuator travel',
    outcomes: { firm: passed, 'slight play': advisory('at next service'), 'clear play': failed('before it is towed'), 'will not slide': failed('before it is towed'), 'gaiter torn': advisory('at next service') },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'coupler.folding-tongue',
    station: 'coupler',
    positions: 'once',
    outcomes: { 'not fitted': notApplicable, tight: passed, play: advisory('before next trip'), 'pin not secured': failed('before it is towed'), cracked: failed('before it is towed') },
    photograph: true,
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'coupler.jack',
    station: 'coupler',
    positions: 'once',
    applies: ifKnown((rig) => rig.trailer.jack, (fitted) => fitted),
    caution: true,
    outcomes: {
      'works and stows': passed,
      stiff: advisory('at next service'),
      'wheel worn': advisory('at next service'),
      bent: advisory('before next trip'),
      'clamp slips': failed('before it is towed'),
      'hangs low': failed('before it is towed'),
    },
    sources: [commonPractice],
  }),
]
