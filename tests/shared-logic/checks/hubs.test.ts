import { describe, expect, it } from 'vitest'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'

const celsius = (degF: number): number => ((degF - 32) * 5) / 9

const cases: readonly Case[] = [
  { states: 'oil above halfway passes', check: 'hubs.oil-level', values: { level: 0.51 }, outcome: 'above', verdict: 'pass' },
  { states: 'oil at the halfway mark passes', check: 'hubs.oil-level', values: { level: 0.5 }, outcome: 'half', verdict: 'pass' },
  { states: 'oil below halfway is an advisory', check: 'hubs.oil-level', values: { level: 0.49 }, outcome: 'below', verdict: 'advisory', by: 'before next trip' },
  { states: 'oil that cannot be seen fails', check: 'hubs.oil-level', values: { level: 0 }, outcome: 'empty', verdict: 'fail', by: 'before it is towed' },
  { states: 'no level, no verdict', check: 'hubs.oil-level', values: {}, outcome: undefined, verdict: 'not seen' },

  { states: 'greased a year ago to the day is in date', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2024-06-01' }, outcome: 'in date', verdict: 'pass' },
  { states: 'greased a year and a day ago is overdue', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2024-05-31' }, outcome: 'overdue', verdict: 'advisory' },
  { states: 'greased two years ago to the day is overdue', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2023-06-01' }, outcome: 'overdue', verdict: 'advisory' },
  { states: 'greased two years and a day ago fails', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2023-05-31' }, outcome: 'long overdue', verdict: 'fail' },
  { states: 'in date, but towed 19,001 km since', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2025-05-01', distance: 19_001_000 }, outcome: 'over the distance', verdict: 'advisory' },
  { states: 'in date and towed 18,900 km since', check: 'hubs.grease-interval', values: { record: 'date known', greased: '2025-05-01', distance: 18_900_000 }, outcome: 'in date', verdict: 'pass' },
  { states: 'an unknown date is not determined, an advisory', check: 'hubs.grease-interval', values: { record: 'date not known' }, outcome: 'not determined', verdict: 'advisory' },
  { states: 'date known, but not yet entered: open', check: 'hubs.grease-interval', values: { record: 'date known' }, outcome: undefined, verdict: 'not seen' },

  { states: 'no rock felt passes', check: 'hubs.end-play', values: { felt: 'no rock' }, outcome: 'no rock', verdict: 'pass' },
  { states: 'slight rock, not measured, is an advisory', check: 'hubs.end-play', values: { felt: 'slight rock' }, outcome: 'slight rock', verdict: 'advisory' },
  { states: '0.25 mm of play passes', check: 'hubs.end-play', values: { felt: 'slight rock', play: 0.00025 }, outcome: 'inside', verdict: 'pass' },
  { states: '0.26 mm of play is no more than an advisory', check: 'hubs.end-play', values: { felt: 'slight rock', play: 0.00026 }, outcome: 'over', verdict: 'advisory' },
  { states: '5 mm of play on the gauge alone is no more than an advisory', check: 'hubs.end-play', values: { felt: 'slight rock', play: 0.005 }, outcome: 'over', verdict: 'advisory' },
  { states: 'no play at all is an advisory', check: 'hubs.end-play', values: { felt: 'no rock', play: 0 }, outcome: 'none', verdict: 'advisory' },
  { states: 'rock that is seen and heard fails', check: 'hubs.end-play', values: { felt: 'rock and knock', play: 0.0001 }, outcome: 'rock and knock', verdict: 'fail' },

  { states: 'level with the others passes', check: 'hubs.heat', values: { hub: celsius(118), others: celsius(121) }, outcome: 'even', verdict: 'pass' },
  { states: '19 °F over the others passes', check: 'hubs.heat', values: { hub: celsius(129), others: celsius(110) }, outcome: 'even', verdict: 'pass' },
  { states: '20 °F over the others is an advisory', check: 'hubs.heat', values: { hub: celsius(130), others: celsius(110) }, outcome: 'hotter', verdict: 'advisory' },
  { states: '29 °F over the others is an advisory', check: 'hubs.heat', values: { hub: celsius(139), others: celsius(110) }, outcome: 'hotter', verdict: 'advisory' },
  { states: '30 °F over the others fails', check: 'hubs.heat', values: { hub: celsius(140), others: celsius(110) }, outcome: 'much hotter', verdict: 'fail' },
  { states: '150 °F, level with the others, passes', check: 'hubs.heat', values: { hub: celsius(150), others: celsius(148) }, outcome: 'even', verdict: 'pass' },
  { states: '151 °F, level with the others, is an advisory', check: 'hubs.heat', values: { hub: celsius(151), others: celsius(148) }, outcome: 'warm', verdict: 'advisory' },
  { states: '251 °F fails, with nothing to compare', check: 'hubs.heat', values: { hub: celsius(251) }, outcome: 'stop', verdict: 'fail' },
  { states: '20 °F over the air passes where no other hub was measured', check: 'hubs.heat', values: { hub: celsius(90), air: celsius(70) }, outcome: 'near the air', verdict: 'pass' },
  { states: '40 °F over the air cannot be judged without the other hubs', check: 'hubs.heat', values: { hub: celsius(110), air: celsius(70) }, outcome: 'not compared', verdict: 'not seen' },
  { states: 'one reading alone leaves it open', check: 'hubs.heat', values: { hub: celsius(110) }, outcome: undefined, verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['hubs.oil-condition', { pass: ['clear'], advisory: ['dark'], fail: ['milky', 'metal in it'] }],
  ['hubs.sight-glass', { pass: ['clear'], advisory: ['clouded', 'plug weeping'], fail: ['cracked'] }],
  ['hubs.grease-condition', { pass: ['clean'], advisory: ['dark', 'dry or hard'], fail: ['milky', 'metal in it'], 'not seen': ['hub not opened'] }],
  ['hubs.service-record', { pass: ['papers seen'], advisory: ['said, no papers', 'over a year ago', 'none'] }],
  ['hubs.seal', { pass: ['dry'], advisory: ['old trace, dry'], fail: ['on the wheel', 'on the brake'] }],
  ['hubs.turning', { pass: ['free and quiet', 'brake rubs lightly'], advisory: ['tight'], fail: ['rough', 'seized'] }],
  ['hubs.cap', { pass: ['tight'], advisory: ['piston sunk in', 'dented', 'loose'], fail: ['missing'] }],
  ['hubs.retainer', { pass: ['locked'], advisory: ['pin rusted or reused'], fail: ['not locked'], 'not seen': ['cap not taken off'] }],
]

describe('hubs', () => {
  it.each(cases)('$check: $states', (each) => expectCase(each))
  it.each(choices)('%s: each choice has its verdict', (id, expected) => expectChoices(id, expected))
  it('every way a measured check can come out is tested', () => expectEveryOutcomeReached('hubs', cases))

  it('says when the grease was due, and the play in the reader’s units', () => {
    expect(judged('hubs.grease-interval', { record: 'date known', greased: '2024-05-10' }).because).toBe('Greased on 10 May 2024; it was due on 10 May 2025.')
    expect(judged('hubs.end-play', { felt: 'slight rock', play: 0.0003 }).because).toContain('0.3 mm')
  })

  it('a hidden field’s old value is not judged', () => {
    expect(judged('hubs.grease-interval', { record: 'date not known', greased: '2025-05-01' }).outcome).toBe('not determined')
  })
})
