import type { Check, JudgeContext } from '../../shared-logic/checks/check'
import type { Rig } from '../../shared-logic/rig/rig'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import type { Answer } from '../../shared-logic/survey/answer'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Purpose } from '../../shared-logic/survey/purpose'
import { passingAnswer } from './passing-answer'

/** A survey of the example as it is told: what was found by place, what was measured by check, the rest passes. */
export interface Script {
  readonly rig: Rig
  readonly ruleBook: RuleBook
  readonly purpose: Purpose
  readonly surveyDate: string
  readonly answers: Readonly<Record<string, Partial<Answer> & Pick<Answer, 'values'>>>
  readonly readings: Readonly<Record<string, Answer['values']>>
  readonly instruments: Readonly<Record<string, string>>
}

/** What the scripted surveyor answers at one place. Throws where the script has nothing to say, so that no place is left open unseen. */
export const answerAt = (script: Script, check: Check, position: string): Answer => {
  const { rig, ruleBook, surveyDate } = script
  const context: JudgeContext = { rig, ruleBook, position, surveyDate }
  const written = script.answers[placeKey(check.id, position)]
  const values = written?.values ?? script.readings[check.id] ?? passingAnswer(check, context)
  if (values === undefined) throw new Error(`the example has no answer for ${placeKey(check.id, position)}`)
  const instrument = script.instruments[check.id]
  return { ...written, values, ...(instrument !== undefined && written?.aside === undefined && { instrument }) }
}
