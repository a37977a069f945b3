import { readTyreDateCode } from '../../identity/tyre-date-code'
import { commercialRule, commonPractice, inUseStandard, law, maryland, newZealand, tradeLiterature } from '../../rules/cite'
import { isTreadBelow, isTreadLow, leastTreadM } from '../../rules/tread'
import { oldTyreYears, tooOldTyreYears, tyreAgeYears } from '../../rules/tyre-age'
import { longCutM } from '../../rules/tyre-pressure'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf } from '../builders'
import type { Check, Found, JudgeContext } from '../check'

const judgeAge = (values: FieldValues, { surveyDate }: JudgeContext): Found | undefined => {
  const code = textOf(values, 'code')
  if (code === 'cannot be read') return { outcome: 'not determined' }
  const written = textOf(values, 'date')
  if (code === undefined || written === undefined) return undefined
  const read = readTyreDateCode(written)
  const years = read && tyreAgeYears(read, surveyDate)
  if (read === undefined || years === undefined || years < 0) return { outcome: 'no date code', values: { written } }
  const shown = { week: read.week, year: read.year, age: measured('years', years) }
  if (!read.decadeCoded) return { outcome: 'of the last century', values: shown }
  if (years > tooOldTyreYears) return { outcome: 'too old', values: shown }
  if (years > oldTyreYears) return { outcome: 'old', values: shown }
  return { outcome: read.weekInYear ? 'young' : 'doubtful week', values: shown }
}

const judgeSidewall = (values: FieldValues): Found | undefined => {
  const condition = textOf(values, 'condition')
  if (condition !== 'cut') return condition === undefined ? undefined : { outcome: condition }
  const length = numberOf(values, 'length')
  const cords = textOf(values, 'cords')
  if (length === undefined || cords === undefined) return undefined
  const shown = { length: measured('smallLength', length) }
  if (cords === 'reached') return { outcome: 'cut to the cords', values: shown }
  if (cords === 'not reached') return { outcome: 'shallow cut', values: shown }
  return { outcome: length > longCutM + 1e-9 ? 'long cut, depth not seen' : 'short cut, depth not seen', values: shown }
}

/** Tread, age, damage and wear. */
export const tyreWearChecks: readonly Check[] = [
  {
    id: 'wheels.tread',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tread gauge',
    photograph: true,
    fields: [{ kind: 'reading', id: 'depth', quantity: 'smallLength', min: 0, max: 0.02, drawing: 'tread gauge' }],
    outcomes: { deep: passed, low: advisory('within a month'), below: failed('before it is towed') },
    judge: (values, { ruleBook }) => {
      const depth = numberOf(values, 'depth')
      if (depth === undefined) return undefined
      const least = leastTreadM[ruleBook]
      const outcome = isTreadBelow(depth, least) ? 'below' : isTreadLow(depth, least) ? 'low' : 'deep'
      return { outcome, values: { depth: measured('smallLength', depth), least: measured('smallLength', least) } }
    },
    sources: {
      us: [commercialRule('393.75(c)'), inUseStandard('570.62(a)'), maryland('11.14.05.05 A(1)(a)'), commonPractice],
      eu: [law('one place', 'Road Vehicles (Construction and Use) Regulations 1986 (UK)', 'regulation 27'), commonPractice],
    },
  },
  {
    id: 'wheels.age',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tyre sidewall',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'code', options: ['read', 'cannot be read'] },
      { kind: 'text', id: 'date', maxLength: 24, form: 'tyre date code', when: { field: 'code', oneOf: ['read'] } },
    ],
    outcomes: {
      young: passed,
      'doubtful week': advisory('at next service'),
      old: advisory('within a year'),
      'too old': failed('before next trip'),
      'of the last century': failed('before next trip'),
      'not determined': advisory('within a month'),
      'no date code': advisory('within a month'),
    },
    judge: judgeAge,
    sources: [law('us', '49 CFR 574.5', 'date of manufacture'), tradeLiterature('articles on tyre age, one quoting the US agency'), commonPractice],
  },
  {
    id: 'wheels.sidewall',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tyre sidewall',
    photograph: true,
    fields: [
      { kind: 'choice', id: 'condition', options: ['sound', 'fine cracks', 'deep cracks', 'bulge', 'cut', 'cords to be seen'] },
      { kind: 'reading', id: 'length', quantity: 'smallLength', min: 0.0005, max: 2, when: { field: 'condition', oneOf: ['cut'] } },
      { kind: 'choice', id: 'cords', options: ['reached', 'not reached', 'cannot be told'], when: { field: 'condition', oneOf: ['cut'] } },
    ],
    outcomes: {
      sound: passed,
      'fine cracks': advisory('within a year'),
      'deep cracks': failed('before next trip'),
      bulge: failed('before it is towed'),
      'shallow cut': advisory('within a month'),
      'short cut, depth not seen': advisory('before next trip'),
      'long cut, depth not seen': failed('before next trip'),
      'cut to the cords': failed('before it is towed'),
      'cords to be seen': failed('before it is towed'),
    },
    judge: judgeSidewall,
    sources: [maryland('11.14.05.05 A(1)(b)–(d)'), newZealand('tyre damage: cuts over 25 mm reaching the cords'), commonPractice],
  },
  choiceCheck({
    id: 'wheels.wear',
    station: 'wheels',
    positions: 'wheel and spare',
    drawing: 'tread gauge',
    photograph: true,
    outcomes: {
      even: passed,
      'both shoulders': advisory('before next trip'),
      centre: advisory('before next trip'),
      'one shoulder': advisory('within a month'),
      'flat spot': advisory('before next trip'),
      cupped: advisory('within a month'),
    },
    sources: [commonPractice],
  }),
  choiceCheck({
    id: 'wheels.tread-damage',
    station: 'wheels',
    positions: 'wheel and spare',
    photograph: true,
    outcomes: {
      none: passed,
      'object in the tread': advisory('before next trip'),
      'tread cracked at its base': advisory('within a month'),
      'tread lifting': failed('before it is towed'),
      'patched from outside': failed('before next trip'),
    },
    sources: [maryland('11.22.04.06 (3)–(5)'), commonPractice],
  }),
]
