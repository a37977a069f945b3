import { describe, expect, test } from 'vitest'
import { singleAxleScript, singleAxleStopsBefore, tandemBeforeScript, tandemScript } from '../../../main/example/scripts'
import { inventedMark, painted, singleAxle, tandem } from '../../../main/example/rigs'
import { answerAt, type Script } from '../../../main/example/walk'
import { catalogue } from '../../../shared-logic/checks/catalogue'
import { problemsOf } from '../../../shared-logic/checks/parse-values'
import { rigSchema } from '../../../shared-logic/rig/rig'
import { answerSchema } from '../../../shared-logic/survey/answer'
import { askedChecks, assess, assessOne, summarize } from '../../../shared-logic/survey/assess'
import { placeKey } from '../../../shared-logic/survey/keys'

const singleAxleNow = singleAxleScript('2026-11-25')

const walked = (script: Script, stopBefore?: string) => {
  const asked = askedChecks(catalogue, script)
  const end = asked.findIndex(({ check }) => check.station === stopBefore)
  return asked.slice(0, end === -1 ? undefined : end)
}

const cases = [['the tandem', tandemScript, undefined], ['the tandem two years before', tandemBeforeScript, undefined], ['the single axle', singleAxleNow, singleAxleStopsBefore]] as const

describe.each(cases)('the survey of %s', (_, script, stopBefore) => {
  test('names only checks and places that are asked of its rig', () => {
    const asked = walked(script, stopBefore)
    const keys = new Set(asked.map(({ check, position }) => placeKey(check.id, position)))
    const ids = new Set(asked.map(({ check }) => check.id))
    expect(Object.keys(script.answers).filter((key) => !keys.has(key))).toEqual([])
    expect([...Object.keys(script.readings), ...Object.keys(script.instruments)].filter((id) => !ids.has(id))).toEqual([])
  })

  test('has an answer within bounds for every place, and what was not written as a finding passes', () => {
    const surprises: string[] = []
    for (const { check, position } of walked(script, stopBefore)) {
      const answer = answerAt(script, check, position)
      answerSchema.parse(answer)
      expect(problemsOf(check, answer.values, script.surveyDate)).toEqual([])
      const { verdict, open } = assessOne(check, position, answer, script)
      const key = placeKey(check.id, position)
      if (open) surprises.push(`${key}: open`)
      else if (script.answers[key] === undefined && verdict !== 'pass' && verdict !== 'not applicable') surprises.push(`${key}: ${verdict}`)
    }
    expect(surprises).toEqual([])
  })
})

test('the finished survey holds every verdict, an overrule up and one down, and well over 100 answers', () => {
  const answers = new Map(walked(tandemScript).map(({ check, position }) => [placeKey(check.id, position), answerAt(tandemScript, check, position)]))
  const assessed = assess(catalogue, { ...tandemScript, purpose: 'purchase', answers })
  const { tallies, open, asked, verdict } = summarize(assessed)
  expect([open, verdict]).toEqual([0, 'fail'])
  expect(asked).toBeGreaterThan(100)
  for (const count of Object.values(tallies)) expect(count).toBeGreaterThan(0)
  const overruled = assessed.filter((each) => each.answer?.overrule).map((each) => [each.judged, each.verdict])
  expect(overruled).toEqual(expect.arrayContaining([['advisory', 'pass'], ['advisory', 'fail']]))
})

test('the three rigs differ in equipment, say that they are invented, and the third leaves things unknown', () => {
  const rigs = [tandem, singleAxle, painted]
  for (const rig of rigs) expect(rigSchema.parse(rig).remarks).toContain(inventedMark)
  expect(new Set(rigs.map((rig) => rig.trailer.frame)).size).toBe(3)
  expect(new Set(rigs.map((rig) => rig.trailer.brakes)).size).toBe(3)
  expect([painted.trailer.massKg, painted.trailer.hubLubrication, painted.trailer.tyre]).toEqual([undefined, undefined, undefined])
})
