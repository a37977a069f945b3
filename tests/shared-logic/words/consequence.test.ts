import { describe, expect, it } from 'vitest'
import { checkOf } from '../../../shared-logic/checks/catalogue'
import { assessOne } from '../../../shared-logic/survey/assess'
import type { Answer } from '../../../shared-logic/survey/answer'
import { consequenceOf } from '../../../shared-logic/words/check-sentences'
import { en } from '../../../shared-logic/words/en'

const facts = { rig: { name: 'Rig', trailer: {} }, ruleBook: 'us', surveyDate: '2026-11-25' } as const
const said = (id: string, answer: Answer): string => {
  const check = checkOf(id)
  if (!check) throw new Error(`no check ${id}`)
  return consequenceOf(en, assessOne(check, 'rig', answer, facts))
}

describe('what can come of a finding', () => {
  it('a loose tail is not told as a slack strap', () => {
    expect(said('tie-down.tension', { values: { condition: 'tail loose' } })).toMatch(/^A loose tail/)
    expect(said('tie-down.tension', { values: { condition: 'slack' } })).toMatch(/^A slack strap/)
  })
  it('the check’s own is said where the surveyor judged otherwise', () => {
    expect(said('tie-down.tension', { values: { condition: 'tail loose' }, overrule: { verdict: 'fail', reason: 'it lies in the wheel' } })).toMatch(/^A slack strap/)
  })
})
