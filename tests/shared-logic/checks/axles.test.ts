import { describe, expect, it } from 'vitest'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import { askedAt, expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'

const inch = 0.0254

const cases: readonly Case[] = [
  { states: 'axles counted stay unseen one by one until the record has them', check: 'axles.count', values: { axles: 2 }, outcome: 'counted', verdict: 'not seen' },
  { states: '1.5 in to one side passes', check: 'axles.tracking', values: { offset: 1.5 * inch }, outcome: 'inside', verdict: 'pass' },
  { states: 'over 1.5 in to one side is an advisory', check: 'axles.tracking', values: { offset: 1.6 * inch }, outcome: 'noticeable', verdict: 'advisory' },
  { states: '3 in to one side is inside the benchmark', check: 'axles.tracking', values: { offset: 3 * inch }, outcome: 'noticeable', verdict: 'advisory' },
  { states: 'over 3 in to one side is beyond a benchmark, so an advisory', check: 'axles.tracking', values: { offset: 3.1 * inch }, outcome: 'over', verdict: 'advisory' },
  { states: 'ends within 1/8 in pass', check: 'axles.square', values: { left: 4, right: 4 + inch / 8 }, outcome: 'even', verdict: 'pass' },
  { states: 'left end 4 mm forward is an advisory', check: 'axles.square', values: { left: 4, right: 4.004 }, outcome: 'less on the left', verdict: 'advisory' },
  { states: 'right end 4 mm forward is an advisory', check: 'axles.square', values: { left: 4.004, right: 4 }, outcome: 'less on the right', verdict: 'advisory' },
  { states: 'rails within 1 in pass', check: 'axles.ride-height', values: { left: 0.5, right: 0.5 + inch }, outcome: 'even', verdict: 'pass' },
  { states: 'left rail 26 mm low is an advisory', check: 'axles.ride-height', values: { left: 0.474, right: 0.5 }, outcome: 'less on the left', verdict: 'advisory' },
  { states: 'right rail 26 mm low is an advisory', check: 'axles.ride-height', values: { left: 0.5, right: 0.474 }, outcome: 'less on the right', verdict: 'advisory' },
  { states: 'one side alone leaves it open', check: 'axles.ride-height', values: { left: 0.5 }, outcome: undefined, verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['axles.beam', { pass: ['sound'], advisory: ['surface rust', 'scaled or pitted'], fail: ['bent', 'cracked', 'rusted through'] }],
  ['axles.spindle', { pass: ['sound'], advisory: ['seal seat worn'], fail: ['bearing seat scored', 'bent or cracked'], 'not seen': ['hub not taken off'] }],
  ['axles.mounting', { pass: ['sound'], advisory: ['bolts rusted'], fail: ['bolts loose', 'has shifted', 'cracked'] }],
  ['axles.frame-clearance', { pass: ['clear'], advisory: ['close'], fail: ['struck'] }],
  ['axles.leaf-springs', { pass: ['sound'], advisory: ['surface rust', 'leaves spread by rust', 'flattened'], fail: ['leaf shifted', 'leaf cracked or broken', 'centre bolt broken'] }],
  ['axles.u-bolts', { pass: ['tight'], advisory: ['surface rust'], fail: ['short of thread', 'wasted by rust', 'loose', 'cracked or missing'] }],
  ['axles.hangers', { pass: ['sound'], advisory: ['surface rust', 'bent sideways'], fail: ['wasted by rust', 'weld cracked', 'bolt loose or missing'] }],
  ['axles.bushes', { pass: ['tight'], advisory: ['dry, not greased', 'worn'], fail: ['eye or shackle worn oval', 'bush gone'] }],
  ['axles.equaliser', { pass: ['free'], advisory: ['worn'], fail: ['seized', 'cracked'] }],
  ['axles.torsion-arms', { pass: ['as its mate'], advisory: ['lower than its mate'], fail: ['no spring left', 'bent or cracked'] }],
  ['axles.torsion-rubber', { pass: ['sound'], advisory: ['perished'], fail: ['working out of the tube', 'tube rusted at its end'] }],
  ['axles.coil-springs', { pass: ['sound'], advisory: ['surface rust', 'sagged'], fail: ['out of its seat', 'broken'] }],
  ['axles.dampers', { pass: ['dry'], fail: ['leaking', 'loose or off'], advisory: ['bush worn'] }],
]

const askedOf = (trailer: Trailer): string[] => askedAt('axles', trailer)

describe('axles and suspension', () => {
  it.each(cases)('$check: $states', (each) => expectCase(each))
  it.each(choices)('%s: each choice has its verdict', (id, expected) => expectChoices(id, expected))
  it('every way a measured check can come out is tested', () => expectEveryOutcomeReached('axles', cases))

  it('a tandem on leaf springs is asked for leaves, U-bolts, hangers, bushes and equaliser, not for torsion or coil', () => {
    const asked = askedOf({ axleCount: 2, suspension: 'leaf springs' })
    expect(asked).toEqual(expect.arrayContaining(['axles.leaf-springs', 'axles.u-bolts', 'axles.hangers', 'axles.bushes', 'axles.equaliser', 'axles.ride-height']))
    expect(asked.filter((id) => /torsion|coil|damper|count/.test(id))).toEqual([])
  })

  it('a single axle has no equaliser', () => {
    expect(askedOf({ axleCount: 1, suspension: 'leaf springs' })).not.toContain('axles.equaliser')
  })

  it('a torsion axle is asked for arms and rubber only', () => {
    const asked = askedOf({ axleCount: 1, suspension: 'torsion arms' })
    expect(asked).toEqual(expect.arrayContaining(['axles.torsion-arms', 'axles.torsion-rubber']))
    expect(asked.filter((id) => /leaf|u-bolts|hangers|bushes|equaliser|coil|damper/.test(id))).toEqual([])
  })

  it('of a trailer of which nothing is known everything is asked, the number of axles first', () => {
    const asked = askedOf({})
    expect(asked[0]).toBe('axles.count')
    expect(asked).toHaveLength(17)
  })

  it('says by how much, and which side', () => {
    expect(judged('axles.square', { left: 4, right: 4.012 }).because).toBe('The left end stands 12 mm further forward than the right.')
  })
})
