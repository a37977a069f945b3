import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { advisory, choiceCheck, failed, notApplicable, numberOf, passed } from '../../../shared-logic/checks/builders'
import type { Check } from '../../../shared-logic/checks/check'
import type { Answer } from '../../../shared-logic/survey/answer'
import { assess, assessOne, summarize, summarizeByStation, type SurveyFacts } from '../../../shared-logic/survey/assess'
import { findingsOf, notSeenOf } from '../../../shared-logic/survey/findings'
import { placeKey } from '../../../shared-logic/survey/keys'
import { verdicts, worstVerdict } from '../../../shared-logic/survey/verdict'

const latch: Check = choiceCheck({
  id: 'coupler.latch', station: 'coupler', positions: 'once', sources: [{ kind: 'common practice' }],
  outcomes: { closes: passed, stiff: advisory('before next trip'), broken: failed('before it is towed'), 'none fitted': notApplicable },
})
const travel: Check = {
  id: 'hubs.play', station: 'hubs', positions: 'hub', sources: [{ kind: 'common practice' }],
  fields: [
    { kind: 'choice', id: 'how', options: ['by gauge', 'by hand'] },
    { kind: 'reading', id: 'play', quantity: 'smallLength', min: 0, max: 0.01, when: { field: 'how', oneOf: ['by gauge'] } },
  ],
  outcomes: { tight: passed, loose: failed('before it is towed') },
  judge: (values) => {
    const play = numberOf(values, 'play')
    return play === undefined ? undefined : { outcome: play > 0.001 ? 'loose' : 'tight' }
  },
}
const facts = (answers: Readonly<Record<string, Answer>>): SurveyFacts => ({
  rig: { name: 'tandem', trailer: { axleCount: 2 } }, ruleBook: 'us', purpose: 'purchase', surveyDate: '2026-11-25', answers: new Map(Object.entries(answers)),
})
const answered = (values: Answer['values'], more: Partial<Answer> = {}): Answer => ({ values, ...more })

describe('a survey', () => {
  it('asks a hub check at each of a tandem’s four hubs', () => {
    expect(assess([travel], facts({})).map((each) => each.position)).toEqual(['axle 1 left', 'axle 1 right', 'axle 2 left', 'axle 2 right'])
  })

  it('counts what nobody answered as not seen, and open', () => {
    const summary = summarize(assess([latch, travel], facts({})))
    expect(summary).toMatchObject({ verdict: 'not seen', open: 5, asked: 5, tallies: { 'not seen': 5, pass: 0 } })
  })

  it('never counts not seen as a pass, though it does not outweigh what was seen', () => {
    const own = assess([latch, travel], facts({ [placeKey(latch.id, 'rig')]: answered({ condition: 'closes' }) }))
    expect(summarize(own)).toMatchObject({ verdict: 'pass', tallies: { pass: 1, 'not seen': 4 } })
    expect(notSeenOf(own)).toHaveLength(4)
  })

  it('is as bad as its worst check, and so is a station', () => {
    const own = assess([latch, travel], facts({
      [placeKey(latch.id, 'rig')]: answered({ condition: 'stiff' }),
      [placeKey(travel.id, 'axle 2 right')]: answered({ how: 'by gauge', play: 0.002 }),
    }))
    expect(summarize(own).verdict).toBe('fail')
    expect(summarizeByStation(own).map(({ station, summary }) => [station, summary.verdict])).toEqual([['coupler', 'advisory'], ['hubs', 'fail']])
  })

  it('lists the gravest finding first', () => {
    const own = assess([latch, travel], facts({
      [placeKey(latch.id, 'rig')]: answered({ condition: 'stiff' }),
      [placeKey(travel.id, 'axle 2 right')]: answered({ how: 'by gauge', play: 0.002 }),
    }))
    expect(findingsOf(own).map((each) => each.check.id)).toEqual(['hubs.play', 'coupler.latch'])
  })

  it('sets a check aside only with what it was set aside as, whatever else was recorded', () => {
    const aside = assessOne(latch, 'rig', answered({ condition: 'broken' }, { aside: { as: 'not seen', reason: 'Under the cover' } }), facts({}))
    expect(aside).toMatchObject({ verdict: 'not seen', open: false, judged: undefined, by: undefined })
  })

  it('lets the surveyor overrule, and keeps what was judged', () => {
    const up = assessOne(latch, 'rig', answered({ condition: 'stiff' }, { overrule: { verdict: 'fail', reason: 'Jumped off in the yard' } }), facts({}))
    expect(up).toMatchObject({ judged: 'advisory', verdict: 'fail', by: 'before it is towed' })
    const down = assessOne(latch, 'rig', answered({ condition: 'stiff' }, { overrule: { verdict: 'pass', reason: 'Freed and oiled' } }), facts({}))
    expect(down).toMatchObject({ judged: 'advisory', verdict: 'pass', by: undefined })
  })

  it('does not judge a reading left over behind a closed gate', () => {
    const hidden = assessOne(travel, 'axle 1 left', answered({ how: 'by hand', play: 0.009 }), facts({}))
    expect(hidden).toMatchObject({ open: true, verdict: 'not seen' })
  })
})

describe('the worst verdict', () => {
  it('does not depend on the order', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...verdicts)), (list) => worstVerdict(list) === worstVerdict(list.toReversed())))
  })
  it('never gets better by one more check', () => {
    const rank = (verdict: (typeof verdicts)[number]): number => ['not applicable', 'not seen', 'pass', 'advisory', 'fail'].indexOf(verdict)
    fc.assert(fc.property(fc.array(fc.constantFrom(...verdicts)), fc.constantFrom(...verdicts), (list, more) => rank(worstVerdict([...list, more])) >= rank(worstVerdict(list))))
  })
})
