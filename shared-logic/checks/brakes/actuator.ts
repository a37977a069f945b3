import { leastReserve, longTravelM, strokeReserve } from '../../rules/actuator'
import { commonPractice, fromMemory, tradeLiterature } from '../../rules/cite'
import { surgeManuals, ukBrakeGuide } from '../../rules/running-gear-sources'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, unseen } from '../builders'
import type { Check, Found } from '../check'
import { allOf, brakedBy, discBraked, underRuleBook } from '../equipment'

const surge = brakedBy('surge')

const travelFound = (travelM: number, strokeM: number | undefined): Found => {
  const travel = measured('smallLength', travelM)
  if (strokeM !== undefined && strokeM > 0) {
    const reserve = strokeReserve(travelM, strokeM)
    const values = { travel, stroke: measured('smallLength', strokeM), reserve: measured('ratio', Math.max(0, reserve)) }
    if (reserve < leastReserve - 1e-9) return { outcome: 'little reserve', values }
    return { outcome: travelM > longTravelM + 1e-9 ? 'long, with reserve' : 'short, with reserve', values }
  }
  return { outcome: travelM > longTravelM + 1e-9 ? 'long' : 'short', values: { travel } }
}

/** The surge (overrun) actuator: travel, condition, and what it does backwards. */
export const actuatorChecks: readonly Check[] = [
  {
    id: 'brakes.actuator-travel',
    station: 'brakes',
    positions: 'once',
    applies: surge,
    drawing: 'actuator travel',
    photograph: true,
    fields: [
      { kind: 'reading', id: 'travel', quantity: 'smallLength', min: 0, max: 0.3, drawing: 'actuator travel' },
      { kind: 'reading', id: 'stroke', quantity: 'smallLength', min: 0.01, max: 0.3, optional: true },
    ],
    outcomes: {
      short: passed,
      'short, with reserve': passed,
      long: advisory('before next trip'),
      'long, with reserve': advisory('before next trip'),
      'little reserve': failed('before it is towed'),
    },
    judge: (values) => {
      const travel = numberOf(values, 'travel')
      return travel === undefined ? undefined : travelFound(travel, numberOf(values, 'stroke'))
    },
    sources: [surgeManuals, commonPractice],
  },
  choiceCheck({
    id: 'brakes.actuator-condition',
    station: 'brakes',
    positions: 'once',
    applies: surge,
    photograph: true,
    drawing: 'actuator travel',
    outcomes: {
      'free and firm': passed,
      'dry or stiff': advisory('before next trip'),
      'rollers or bushes worn': advisory('within a month'),
      'no damping': advisory('before next trip'),
      seized: failed('before it is towed'),
      leaking: failed('before it is towed'),
      'cracked or rusted through': failed('before it is towed'),
    },
    sources: { us: [surgeManuals, commonPractice], eu: [ukBrakeGuide, commonPractice] },
  }),
  choiceCheck({
    id: 'brakes.static-test',
    station: 'brakes',
    positions: 'once',
    applies: surge,
    caution: true,
    outcomes: {
      'holds after a few inches': passed,
      'resists, then releases': passed,
      'holds on one side': failed('before it is towed'),
      'rolls away freely': failed('before it is towed'),
      'not tried': unseen,
    },
    sources: [surgeManuals],
  }),
  choiceCheck({
    id: 'brakes.reverse-lockout',
    station: 'brakes',
    positions: 'once',
    applies: allOf(surge, discBraked),
    outcomes: {
      'backs freely': passed,
      'only by pin or key': advisory('at next service'),
      'brakes in reverse': advisory('before next trip'),
      'stays locked out going forward': failed('before it is towed'),
      'not tried': unseen,
    },
    sources: { us: [tradeLiterature('7-way connector pages', 'fifth wire of the 5-flat'), surgeManuals], eu: [ukBrakeGuide] },
  }),
  choiceCheck({
    id: 'brakes.overrun-linkage',
    station: 'brakes',
    positions: 'once',
    applies: allOf(underRuleBook('eu'), surge),
    photograph: true,
    outcomes: {
      'free and even': passed,
      'needs adjusting': advisory('before next trip'),
      'cable stiff or rusted': advisory('before next trip'),
      'cable frayed or broken': failed('before it is towed'),
      'hydraulic, no linkage': passed,
    },
    sources: [ukBrakeGuide, fromMemory('Directive 2014/45/EU, Annex I, item 1.1.15')],
  }),
]
