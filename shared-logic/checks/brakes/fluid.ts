import { brakeFluidGrades, fluidMonths, isBrakeFluid, nearWetMinimumK } from '../../rules/brake-fluid'
import { commonPractice, law } from '../../rules/cite'
import { careArticles, surgeManuals } from '../../rules/running-gear-sources'
import { dueOn, serviceState } from '../../rules/service-interval'
import type { FieldValues } from '../../survey/answer'
import { measured } from '../../units/quantity'
import { advisory, choiceCheck, failed, numberOf, passed, textOf, unseen } from '../builders'
import type { Check, Found, JudgeContext } from '../check'
import { braked, hydraulic } from '../equipment'

const leastOfAnyGradeC = Math.min(...Object.values(brakeFluidGrades).map((grade) => grade.wetC))

const judgeBoiling = (values: FieldValues): Found | undefined => {
  const grade = textOf(values, 'grade')
  const boiling = numberOf(values, 'boiling')
  if (grade === undefined || boiling === undefined) return undefined
  const shown = { boiling: measured('temperature', boiling) }
  if (!isBrakeFluid(grade)) return { outcome: boiling < leastOfAnyGradeC ? 'below any grade' : 'grade not known', values: shown }
  const { wetC } = brakeFluidGrades[grade]
  const graded = { ...shown, grade, least: measured('temperature', wetC) }
  if (boiling < wetC - 1e-9) return { outcome: 'below', values: graded }
  return { outcome: boiling < wetC + nearWetMinimumK - 1e-9 ? 'near' : 'above', values: graded }
}

const judgeAge = (values: FieldValues, { surveyDate }: JudgeContext): Found | undefined => {
  if (textOf(values, 'record') === 'not known') return { outcome: 'not determined' }
  const changed = textOf(values, 'changed')
  const water = textOf(values, 'water')
  if (changed === undefined || water === undefined) return undefined
  const months = water === 'fresh water' ? fluidMonths['fresh water'] : fluidMonths['salt water']
  return { outcome: serviceState(changed, months, surveyDate), values: { changed: { date: changed }, due: { date: dueOn(changed, months) } } }
}

/** Brake fluid: level, looks, boiling point, age. */
export const brakeFluidChecks: readonly Check[] = [
  choiceCheck({
    id: 'brakes.fluid-level',
    station: 'brakes',
    positions: 'once',
    applies: hydraulic,
    outcomes: {
      'at the mark': passed,
      'too full': advisory('at next service'),
      low: advisory('before next trip'),
      'vent blocked or cap leaking': advisory('before next trip'),
      empty: failed('before it is towed'),
    },
    sources: [surgeManuals],
  }),
  choiceCheck({
    id: 'brakes.fluid-condition',
    station: 'brakes',
    positions: 'once',
    applies: hydraulic,
    photograph: true,
    outcomes: {
      clear: passed,
      dark: advisory('within a month'),
      'cloudy or milky': failed('before next trip'),
      'rust or dirt in it': failed('before next trip'),
      'grades mixed': failed('before next trip'),
    },
    sources: [law('us', '49 CFR 571.116, as restated', 'silicone fluid not to be mixed'), commonPractice],
  }),
  {
    id: 'brakes.fluid-boiling-point',
    station: 'brakes',
    positions: 'once',
    applies: hydraulic,
    fields: [
      { kind: 'choice', id: 'grade', options: ['DOT 3', 'DOT 4', 'DOT 5.1', 'DOT 5', 'not known'] },
      { kind: 'reading', id: 'boiling', quantity: 'temperature', min: 80, max: 350 },
    ],
    outcomes: {
      above: passed,
      near: advisory('at next service'),
      below: failed('before next trip'),
      'below any grade': failed('before next trip'),
      'grade not known': unseen,
    },
    judge: judgeBoiling,
    sources: [law('us', '49 CFR 571.116, as restated', 'wet boiling points'), commonPractice],
  },
  {
    id: 'brakes.fluid-age',
    station: 'brakes',
    positions: 'once',
    applies: hydraulic,
    fields: [
      { kind: 'choice', id: 'record', options: ['date known', 'not known'] },
      { kind: 'date', id: 'changed', when: { field: 'record', oneOf: ['date known'] } },
      { kind: 'choice', id: 'water', options: ['salt water', 'fresh water', 'not known'], when: { field: 'record', oneOf: ['date known'] } },
    ],
    outcomes: { 'in date': passed, overdue: advisory('before next trip'), 'long overdue': advisory('before next trip'), 'not determined': advisory('within a month') },
    judge: judgeAge,
    sources: [commonPractice],
  },
  choiceCheck({
    id: 'brakes.flushing',
    station: 'brakes',
    positions: 'once',
    applies: braked,
    outcomes: {
      'fitted and used': passed,
      'rinsed by hose each time': passed,
      'not put under water': passed,
      'fitted, nozzle blocked': advisory('before next trip'),
      'fitted, not used': advisory('before next trip'),
      'not fitted, used in salt': advisory('within a year'),
    },
    sources: [careArticles],
  }),
]
