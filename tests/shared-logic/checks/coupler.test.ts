import { describe, expect, it } from 'vitest'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import { askedOf, positionsAsked } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case, type Situation } from './judged'
import { couplerSumsCases } from './rests-on-sums'

const lb = 0.45359237
const lbf = lb * 9.80665
const inch = 0.0254
const of = (maximumLb: number, more: Trailer = {}): Situation => ({ trailer: { maximumMassKg: maximumLb * lb, ...more } })
const ball = (mm: number): Situation => ({ trailer: { ballDiameterM: mm / 1000 } })

const cases: readonly Case[] = [
  ...couplerSumsCases,
  { states: 'marked 3,500 lb on a trailer of 3,500 lb fits', check: 'coupler.class', values: { marking: 'marked', capacity: 3_500 * lb }, given: of(3_500), outcome: 'capacity fits class', verdict: 'pass' },
  { states: 'marked 3,499 lb on a trailer of 3,500 lb fails', check: 'coupler.class', values: { marking: 'marked', capacity: 3_499 * lb }, given: of(3_500), outcome: 'capacity too small', verdict: 'fail' },
  { states: 'above 10,000 lb the mark alone counts', check: 'coupler.class', values: { marking: 'marked', capacity: 14_000 * lb }, given: of(12_000), outcome: 'capacity fits', verdict: 'pass' },
  { states: 'unmarked class 2 up to 3,500 lb is an advisory', check: 'coupler.class', values: { marking: 'none' }, given: of(3_500, { coupler: 'class 2' }), outcome: 'class fits, unmarked', verdict: 'advisory' },
  { states: 'unmarked class 2 at 3,501 lb fails', check: 'coupler.class', values: { marking: 'none' }, given: of(3_501, { coupler: 'class 2' }), outcome: 'class too small', verdict: 'fail' },
  { states: 'unmarked class 3 between 5,000 and 10,000 lb is in doubt, not failed', check: 'coupler.class', values: { marking: 'none' }, given: of(5_001, { coupler: 'class 3' }), outcome: 'class 3 in doubt', verdict: 'advisory' },
  { states: 'unmarked class 3 above 10,000 lb fails', check: 'coupler.class', values: { marking: 'none' }, given: of(10_001, { coupler: 'class 3' }), outcome: 'class too small', verdict: 'fail' },
  { states: 'an unmarked 50 mm ball coupling serves 3500 kg', check: 'coupler.class', values: { marking: 'none' }, given: { trailer: { maximumMassKg: 3_500, coupler: 'ISO 50 mm' } }, outcome: 'class fits, unmarked', verdict: 'advisory' },
  { states: 'an unmarked 50 mm ball coupling fails at 3501 kg', check: 'coupler.class', values: { marking: 'none' }, given: { trailer: { maximumMassKg: 3_501, coupler: 'ISO 50 mm' } }, outcome: 'class too small', verdict: 'fail' },
  { states: 'unmarked and of unknown class is an advisory', check: 'coupler.class', values: { marking: 'none' }, given: of(3_500), outcome: 'unmarked', verdict: 'advisory' },
  { states: 'without a rating it cannot be worked out', check: 'coupler.class', values: { marking: 'marked', capacity: 1_000 }, outcome: 'rating unknown', verdict: 'not seen' },
  { states: 'marked, but not yet read, leaves it open', check: 'coupler.class', values: { marking: 'marked' }, given: of(3_500), outcome: undefined, verdict: 'not seen' },
  { states: 'level passes', check: 'coupler.level', values: { stance: 'level' }, outcome: 'level', verdict: 'pass' },
  { states: 'nose up is an advisory', check: 'coupler.level', values: { stance: 'nose up' }, given: { trailer: { suspension: 'torsion arms', axleCount: 1 } }, outcome: 'not level', verdict: 'advisory' },
  { states: 'nose down on independent tandem axles is pressing', check: 'coupler.level', values: { stance: 'nose down' }, given: { trailer: { suspension: 'torsion arms', axleCount: 2 } }, outcome: 'not level, independent axles', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a head at 0.384 m is only noted in Europe (from memory: limits differ)', check: 'coupler.level', values: { stance: 'level', height: 0.384 }, given: { ruleBook: 'eu' }, outcome: 'height off', verdict: 'advisory' },
  { states: 'a head at 0.385 m passes', check: 'coupler.level', values: { stance: 'level', height: 0.385 }, given: { ruleBook: 'eu' }, outcome: 'level', verdict: 'pass' },
  { states: 'a head at 0.455 m passes', check: 'coupler.level', values: { stance: 'level', height: 0.455 }, given: { ruleBook: 'eu' }, outcome: 'level', verdict: 'pass' },
  { states: 'a head at 0.456 m is only noted', check: 'coupler.level', values: { stance: 'level', height: 0.456 }, given: { ruleBook: 'eu' }, outcome: 'height off', verdict: 'advisory' },
  { states: 'height is not judged in the United States', check: 'coupler.level', values: { stance: 'level', height: 0.8 }, outcome: 'level', verdict: 'pass' },
  { states: 'a 2 in ball in a 2 in coupler matches', check: 'coupler.ball-size', values: { socket: 2 * inch, ball: 2 * inch }, given: of(3_500), outcome: 'matches', verdict: 'pass' },
  { states: 'the ball entered for the rig is taken when none is typed', check: 'coupler.ball-size', values: { socket: 0.05 }, given: ball(50), outcome: 'matches', verdict: 'pass' },
  { states: 'a 50 mm ball in a 2 in coupler is slightly small', check: 'coupler.ball-size', values: { socket: 2 * inch, ball: 0.05 }, outcome: 'ball slightly small', verdict: 'advisory' },
  { states: 'a 1-7/8 in ball in a 50 mm coupling is too small and can jump out', check: 'coupler.ball-size', values: { socket: 0.05, ball: 1.875 * inch }, outcome: 'ball too small', verdict: 'fail' },
  { states: 'a 2 in ball in a 50 mm coupling is too large to seat', check: 'coupler.ball-size', values: { socket: 0.05, ball: 2 * inch }, outcome: 'ball too large', verdict: 'fail' },
  { states: 'a 1-7/8 in pair is small for 2,001 lb', check: 'coupler.ball-size', values: { socket: 1.875 * inch, ball: 1.875 * inch }, given: of(2_001), outcome: 'small for the class', verdict: 'advisory' },
  { states: 'a 1-7/8 in pair serves 2,000 lb', check: 'coupler.ball-size', values: { socket: 1.875 * inch, ball: 1.875 * inch }, given: of(2_000), outcome: 'matches', verdict: 'pass' },
  { states: 'the size of the ball unknown is not seen', check: 'coupler.ball-size', values: { socket: 0.05 }, outcome: 'ball unknown', verdict: 'not seen' },
  { states: '49.61 mm smooth is as new', check: 'coupler.ball-wear', values: { diameter: 0.04961, surface: 'smooth' }, given: ball(50), outcome: 'as new', verdict: 'pass' },
  { states: '49.70 mm pitted is an advisory', check: 'coupler.ball-wear', values: { diameter: 0.0497, surface: 'pitted' }, given: ball(50), outcome: 'marked', verdict: 'advisory' },
  { states: '49.60 mm is worn', check: 'coupler.ball-wear', values: { diameter: 0.0496, surface: 'smooth' }, given: ball(50), outcome: 'worn', verdict: 'advisory' },
  { states: '49.00 mm is worn, at the limit', check: 'coupler.ball-wear', values: { diameter: 0.049, surface: 'flat or grooved' }, given: ball(50), outcome: 'worn', verdict: 'advisory' },
  { states: '48.90 mm is worn out', check: 'coupler.ball-wear', values: { diameter: 0.0489, surface: 'smooth' }, given: ball(50), outcome: 'worn out', verdict: 'fail' },
  { states: 'a 2 in ball at 48.2 mm has lost more than 5 %', check: 'coupler.ball-wear', values: { diameter: 0.0482, surface: 'smooth' }, given: ball(50.8), outcome: 'worn out', verdict: 'fail' },
  { states: 'without the size when new, wear cannot be worked out', check: 'coupler.ball-wear', values: { diameter: 0.049, surface: 'smooth' }, outcome: 'size unknown', verdict: 'not seen' },
  { states: 'marked 5,000 lb behind 3,500 lb holds by itself', check: 'coupler.chain-strength', values: { marking: 'breaking strength', strength: 5_000 * lbf }, given: of(3_500), outcome: 'each holds', verdict: 'pass' },
  { states: 'marked 3,500 lb behind 3,500 lb holds exactly', check: 'coupler.chain-strength', values: { marking: 'breaking strength', strength: 3_500 * lbf }, given: of(3_500), outcome: 'each holds', verdict: 'pass' },
  { states: 'marked 2,000 lb behind 3,500 lb holds only together: each reading binds elsewhere, so an advisory', check: 'coupler.chain-strength', values: { marking: 'breaking strength', strength: 2_000 * lbf }, given: of(3_500), outcome: 'together only', verdict: 'advisory', by: 'before next trip' },
  { states: 'marked 1,700 lb behind 3,500 lb is too weak even together', check: 'coupler.chain-strength', values: { marking: 'breaking strength', strength: 1_700 * lbf }, given: of(3_500), outcome: 'too weak', verdict: 'fail', by: 'before it is towed' },
  { states: 'a light trailer still needs the class figure: 1,900 lb behind 1,500 lb', check: 'coupler.chain-strength', values: { marking: 'breaking strength', strength: 1_900 * lbf }, given: of(1_500), outcome: 'together only', verdict: 'advisory' },
  { states: 'a working load limit of 4,700 lb behind 3,500 lb is enough', check: 'coupler.chain-strength', values: { marking: 'working load limit', strength: 4_700 * lbf }, given: of(3_500), outcome: 'limit holds', verdict: 'pass' },
  { states: 'a working load limit below the need is not enough to say', check: 'coupler.chain-strength', values: { marking: 'working load limit', strength: 3_000 * lbf }, given: of(3_500), outcome: 'limit below need', verdict: 'advisory' },
  { states: 'unmarked 3/8 in chain counts 2,650 lb: behind 2,000 lb enough', check: 'coupler.chain-strength', values: { marking: 'nothing', size: 0.375 * inch }, given: of(2_000), outcome: 'limit holds', verdict: 'pass' },
  { states: 'unmarked 5/16 in chain behind 3,500 lb is an advisory', check: 'coupler.chain-strength', values: { marking: 'nothing', size: 0.3125 * inch }, given: of(3_500), outcome: 'limit below need', verdict: 'advisory' },
  { states: 'unmarked 3/16 in chain is thinner than the table', check: 'coupler.chain-strength', values: { marking: 'nothing', size: 0.1875 * inch }, given: of(2_000), outcome: 'strength unknown', verdict: 'advisory' },
  { states: 'without a rating it cannot be worked out', check: 'coupler.chain-strength', values: { marking: 'nothing' }, outcome: 'rating unknown', verdict: 'not seen' },
  { states: 'a strength still to be read leaves it open', check: 'coupler.chain-strength', values: { marking: 'breaking strength' }, given: of(3_500), outcome: undefined, verdict: 'not seen' },
  { states: 'a chain sound comes to pass', check: 'coupler.chain-condition', values: { condition: 'sound' }, outcome: 'sound', verdict: 'pass' },
  { states: 'a chain surface rust comes to advisory', check: 'coupler.chain-condition', values: { condition: 'surface rust' }, outcome: 'surface rust', verdict: 'advisory' },
  { states: 'a chain rusted away comes to fail', check: 'coupler.chain-condition', values: { condition: 'rusted away' }, outcome: 'rusted away', verdict: 'fail' },
  { states: 'a chain stretched or bent comes to fail', check: 'coupler.chain-condition', values: { condition: 'stretched or bent' }, outcome: 'stretched or bent', verdict: 'fail' },
  { states: 'a chain cracked comes to fail', check: 'coupler.chain-condition', values: { condition: 'cracked' }, outcome: 'cracked', verdict: 'fail' },
  { states: 'a chain missing comes to fail', check: 'coupler.chain-condition', values: { condition: 'missing' }, outcome: 'missing', verdict: 'fail' },
  { states: 'a link worn from 10 to 9 mm has lost 10 %: an advisory', check: 'coupler.chain-condition', values: { condition: 'worn', new: 0.01, now: 0.009 }, outcome: 'worn', verdict: 'advisory' },
  { states: 'a link worn from 10 to 8.9 mm is worn out', check: 'coupler.chain-condition', values: { condition: 'worn', new: 0.01, now: 0.0089 }, outcome: 'worn out', verdict: 'fail' },
  { states: 'a worn link not measured leaves it open', check: 'coupler.chain-condition', values: { condition: 'worn' }, outcome: undefined, verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['coupler.latch', { pass: ['closes and locks'], advisory: ['stiff'], fail: ['pin missing', 'needs adjusting', 'does not lock'] }],
  ['coupler.body', { pass: ['sound'], advisory: ['surface rust', 'worn socket'], fail: ['deep corrosion', 'bent', 'cracked', 'welded repair'] }],
  ['coupler.attachment', { pass: ['tight'], advisory: ['rusted bolts'], fail: ['bolt loose', 'bolt missing', 'weld cracked'] }],
  ['coupler.surge-play', { pass: ['firm'], advisory: ['slight play', 'gaiter torn'], fail: ['clear play', 'will not slide'] }],
  ['coupler.folding-tongue', { 'not applicable': ['not fitted'], pass: ['tight'], advisory: ['play'], fail: ['pin not secured', 'cracked'] }],
  ['coupler.jack', { pass: ['works and stows'], advisory: ['stiff', 'wheel worn', 'bent'], fail: ['clamp slips', 'hangs low'] }],
  ['coupler.ball-nut', { pass: ['tight'], advisory: ['torque not known', 'washer missing'], fail: ['thread short', 'loose'] }],
  ['coupler.chain-hooks', { pass: ['latched'], advisory: ['latch weak', 'latch missing'], fail: ['weak link', 'opened', 'cracked'] }],
  ['coupler.chain-routing', { pass: ['crossed and clear'], advisory: ['not crossed', 'twisted short'], fail: ['drags on the ground', 'too short to turn', 'fixed to the ball'] }],
  ['coupler.chain-anchors', { pass: ['sound'], advisory: ['rusted'], fail: ['bolt loose', 'cracked'] }],
  ['coupler.secondary', { pass: ['routed right'], advisory: ['looped over the ball', 'too long or short', 'clip weak'], fail: ['frayed', 'missing'] }],
]

describe('coupler, ball and chains', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('coupler', cases)).not.toThrow()
  })

  it('chains are asked in the United States, a breakaway cable or secondary coupling in Europe', () => {
    expect(positionsAsked('coupler.chain-strength', {})).toEqual(['chain left', 'chain right'])
    expect(askedOf({}, 'us')).not.toContain('coupler.secondary')
    expect(askedOf({}, 'eu')).toContain('coupler.secondary')
    expect(askedOf({}, 'eu').filter((id) => id.startsWith('coupler.chain'))).toEqual([])
  })

  it('play in the surge coupling is asked only where surge brakes are fitted, or while that is unknown', () => {
    expect(askedOf({ brakes: 'surge' }, 'us')).toContain('coupler.surge-play')
    expect(askedOf({}, 'us')).toContain('coupler.surge-play')
    expect(askedOf({ brakes: 'electric' }, 'us')).not.toContain('coupler.surge-play')
  })

  it('both readings of the chain rule stand in the sentence', () => {
    expect(judged('coupler.chain-strength', { marking: 'breaking strength', strength: 2_000 * lbf }, of(3_500)).because).toMatch(/each chain needs .* N\. Two together hold .* N, which meets only the federal benchmark/)
  })
})
