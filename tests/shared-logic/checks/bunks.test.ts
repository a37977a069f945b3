import { describe, expect, it } from 'vitest'
import { askedOf } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, type ByVerdict, type Case } from './judged'

const cases: readonly Case[] = [
  { states: 'supports that reach the transom pass', check: 'bunks.transom', values: { support: 'reaches the transom' }, outcome: 'supported', verdict: 'pass' },
  { states: '50 mm short passes', check: 'bunks.transom', values: { support: 'ends short', overhang: 0.05 }, outcome: 'nearly there', verdict: 'pass' },
  { states: '51 mm short is an advisory', check: 'bunks.transom', values: { support: 'ends short', overhang: 0.051 }, outcome: 'overhangs', verdict: 'advisory' },
  { states: 'short, not measured, leaves it open', check: 'bunks.transom', values: { support: 'ends short' }, outcome: undefined, verdict: 'not seen' },
  { states: 'no boat on the trailer is not seen', check: 'bunks.transom', values: { support: 'no boat on the trailer' }, outcome: 'no boat on the trailer', verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['bunks.surface', { pass: ['whole'], advisory: ['worn thin', 'worn through', 'staples or screws proud'], fail: ['metal touches the hull'], 'not applicable': ['a roller, not a bunk'] }],
  ['bunks.timber', { pass: ['sound'], advisory: ['weathered', 'split', 'sags'], fail: ['soft or rotten', 'broken'], 'not applicable': ['a roller, not a bunk'] }],
  ['bunks.rollers', { pass: ['turn freely'], advisory: ['stiff', 'flat or grooved', 'split or perished', 'shaft worn or rusted', 'does not turn'], fail: ['roller missing'], 'not applicable': ['a bunk, not a roller'] }],
  ['bunks.brackets', { pass: ['tight'], advisory: ['surface rust', 'bolts wasted', 'bent'], fail: ['loose', 'cracked'] }],
  ['bunks.adjustment', { pass: ['set and locked', 'fixed, no adjuster'], advisory: ['seized'], fail: ['slips or creeps'] }],
  ['bunks.bearing', { pass: ['along its length'], advisory: ['in part', 'off the strake or bulkhead'], fail: ['on a point', 'does not bear'], 'not seen': ['no boat on the trailer'] }],
  ['bunks.hull-marks', { pass: ['none', 'scuffs'], advisory: ['gelcoat or paint worn', 'hard spot or dent'], fail: ['cracked or pressed in'], 'not seen': ['no boat on the trailer'] }],
  ['bunks.keel', { pass: ['keel bears'], 'not applicable': ['built without keel support'], advisory: ['bears on one roller', 'keel hangs clear'], fail: ['bears on metal'], 'not seen': ['no boat on the trailer'] }],
  ['bunks.square', { pass: ['square'], advisory: ['off centre'], fail: ['leans', 'off its supports'], 'not seen': ['no boat on the trailer'] }],
  ['bunks.guides', { 'not applicable': ['not fitted'], pass: ['firm'], advisory: ['cap or cover missing', 'bent', 'loose'], fail: ['cracked'] }],
]

describe('bunks and rollers', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('bunks', cases)).not.toThrow()
  })

  it('a bunk trailer is asked for timber and carpet, a roller trailer for rollers, either while unknown', () => {
    expect(askedOf({ supports: 'bunks' })).toEqual(expect.arrayContaining(['bunks.timber', 'bunks.surface']))
    expect(askedOf({ supports: 'bunks' })).not.toContain('bunks.rollers')
    expect(askedOf({ supports: 'rollers' })).toContain('bunks.rollers')
    expect(askedOf({ supports: 'rollers' })).not.toContain('bunks.timber')
    expect(askedOf({})).toEqual(expect.arrayContaining(['bunks.timber', 'bunks.rollers']))
  })
})
