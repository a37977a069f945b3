import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import type { Check } from '../../../shared-logic/checks/check'
import { problemsOf } from '../../../shared-logic/checks/parse-values'
import { positionsOf } from '../../../shared-logic/checks/positions'
import type { Rig } from '../../../shared-logic/rig/rig'
import { ruleBooks, type RuleBook } from '../../../shared-logic/rules/rule-book'
import { answerSchema, type FieldValues } from '../../../shared-logic/survey/answer'
import { assessOne } from '../../../shared-logic/survey/assess'
import { verdicts } from '../../../shared-logic/survey/verdict'
import { becauseOf, remedyOf } from '../../../shared-logic/words/check-sentences'
import { en } from '../../../shared-logic/words/en'
import { anyRig, anyValues, surveyDate } from './any-answer'

/** What is wrong with how one answer was judged and said; none is right. */
const faults = (check: Check, values: FieldValues, rig: Rig, ruleBook: RuleBook): string[] => {
  const problems = problemsOf(check, values, surveyDate)
  const position = positionsOf(check.positions, rig, ruleBook)[0] ?? 'rig'
  const assessed = assessOne(check, position, answerSchema.parse({ values }), { rig, ruleBook, surveyDate })
  const said = (['us', 'metric'] as const).flatMap((units) => [becauseOf(en, assessed, units), remedyOf(en, assessed, units)]).join(' ')
  return [
    ...problems.map(({ field, code }) => `${field}: ${code}`),
    ...(verdicts.includes(assessed.verdict) ? [] : ['no verdict']),
    ...(assessed.found !== undefined && check.outcomes[assessed.found.outcome] === undefined ? [`no outcome ${assessed.found.outcome}`] : []),
    ...(assessed.found === undefined && !assessed.open ? ['neither judged nor open'] : []),
    ...(/\{\w+\}|NaN|Infinity|undefined/.test(said) ? [`a gap left open: ${said}`] : []),
  ]
}

describe('any answer within its bounds, on any rig', () => {
  it.each(catalogue.map((check) => [check.id, check] as const))('%s is judged to a declared outcome, and every sentence is whole', (_id, check) => {
    fc.assert(
      fc.property(anyValues(check), anyRig, fc.constantFrom(...ruleBooks), (values, rig, ruleBook) => {
        expect(faults(check, values, rig, ruleBook)).toEqual([])
      }),
      { numRuns: 150 },
    )
  })

  it.each(catalogue.map((check) => [check.id, check] as const))('%s stays open while nothing is recorded', (_id, check) => {
    fc.assert(
      fc.property(anyRig, fc.constantFrom(...ruleBooks), (rig, ruleBook) => {
        expect(assessOne(check, 'rig', answerSchema.parse({}), { rig, ruleBook, surveyDate })).toMatchObject({ open: true, verdict: 'not seen' })
      }),
      { numRuns: 20 },
    )
  })
})
