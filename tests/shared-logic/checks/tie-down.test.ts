import { describe, expect, it } from 'vitest'
import { askedOf, positionsAsked } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case, type Situation } from './judged'
import { tieDownSumsCases } from './rests-on-sums'

const lb = 0.45359237
const lbf = lb * 9.80665
const inch = 0.0254
const eu: Situation = { ruleBook: 'eu' }
const boat = (lengthFt: number, dryMassLb?: number): Situation => ({ boat: { lengthM: lengthFt * 0.3048, ...(dryMassLb !== undefined && { dryMassKg: dryMassLb * lb }) } })

const cases: readonly Case[] = [
  ...tieDownSumsCases,
  { states: 'webbing with damage "none" comes to pass', check: 'tie-down.webbing', values: { damage: 'none' }, outcome: 'none', verdict: 'pass' },
  { states: 'webbing with damage "light wear" comes to pass', check: 'tie-down.webbing', values: { damage: 'light wear' }, outcome: 'light wear', verdict: 'pass' },
  { states: 'webbing with damage "chemical" comes to fail', check: 'tie-down.webbing', values: { damage: 'chemical' }, outcome: 'chemical', verdict: 'fail' },
  { states: 'webbing with damage "sun" comes to advisory', check: 'tie-down.webbing', values: { damage: 'sun' }, outcome: 'sun', verdict: 'advisory' },
  { states: 'webbing with damage "missing" comes to fail', check: 'tie-down.webbing', values: { damage: 'missing' }, outcome: 'missing', verdict: 'fail' },
  { states: 'frayed over 5.0 mm of 50 mm is a tenth: an advisory', check: 'tie-down.webbing', values: { damage: 'fraying', length: 0.005, width: 0.05 }, outcome: 'small fraying', verdict: 'advisory' },
  { states: 'frayed over 5.1 mm of 50 mm fails', check: 'tie-down.webbing', values: { damage: 'fraying', length: 0.0051, width: 0.05 }, outcome: 'frayed too far', verdict: 'fail' },
  { states: 'cut over 5.0 mm of 50 mm is a tenth: an advisory', check: 'tie-down.webbing', values: { damage: 'cut', length: 0.005, width: 0.05 }, outcome: 'small cut', verdict: 'advisory' },
  { states: 'cut over 5.1 mm of 50 mm fails', check: 'tie-down.webbing', values: { damage: 'cut', length: 0.0051, width: 0.05 }, outcome: 'cut too far', verdict: 'fail' },
  { states: 'split over 5.0 mm of 50 mm is a tenth: an advisory', check: 'tie-down.webbing', values: { damage: 'split', length: 0.005, width: 0.05 }, outcome: 'small split', verdict: 'advisory' },
  { states: 'split over 5.1 mm of 50 mm fails', check: 'tie-down.webbing', values: { damage: 'split', length: 0.0051, width: 0.05 }, outcome: 'split too far', verdict: 'fail' },
  { states: 'a small burn fails like any burn', check: 'tie-down.webbing', values: { damage: 'burn', length: 0.002, width: 0.05 }, outcome: 'burn', verdict: 'fail' },
  { states: 'cuts summing 3/8 in on 2 in web fail by the tenth', check: 'tie-down.webbing', values: { damage: 'cut', length: 0.009525, width: 0.0508 }, outcome: 'cut too far', verdict: 'fail' },
  { states: 'cuts summing 1/2 in on 2 in web are past the out-of-service table', check: 'tie-down.webbing', values: { damage: 'cut', length: 0.0127, width: 0.0508 }, outcome: 'out of service', verdict: 'fail' },
  { states: 'a cut not measured leaves it open', check: 'tie-down.webbing', values: { damage: 'cut', length: 0.005 }, outcome: undefined, verdict: 'not seen' },
  { states: 'a readable working load limit passes', check: 'tie-down.label', values: { marking: 'working load limit', strength: 1_200 * lbf }, outcome: 'readable', verdict: 'pass' },
  { states: 'a readable breaking strength passes', check: 'tie-down.label', values: { marking: 'breaking strength', strength: 6_000 * lbf }, outcome: 'readable', verdict: 'pass' },
  { states: 'a readable lashing capacity passes in Europe', check: 'tie-down.label', values: { marking: 'lashing capacity', strength: 25_000 }, given: eu, outcome: 'readable', verdict: 'pass' },
  { states: 'a weaker anchor is what counts (393.108(a))', check: 'tie-down.label', values: { marking: 'working load limit', strength: 3_333 * lbf, weakest: 2_000 * lbf }, outcome: 'limited by a part', verdict: 'pass' },
  { states: 'a stronger anchor changes nothing', check: 'tie-down.label', values: { marking: 'working load limit', strength: 3_333 * lbf, weakest: 4_000 * lbf }, outcome: 'readable', verdict: 'pass' },
  { states: 'unmarked 2 in webbing counts by its width (393.108(b))', check: 'tie-down.label', values: { marking: 'none', width: 2 * inch }, outcome: 'by its width', verdict: 'advisory' },
  { states: 'unreadable 1 in webbing has no rating', check: 'tie-down.label', values: { marking: 'unreadable', width: 1 * inch }, outcome: 'no rating', verdict: 'advisory' },
  { states: 'without a label a strap is not used in Europe', check: 'tie-down.label', values: { marking: 'none', width: 0.05 }, given: eu, outcome: 'no label', verdict: 'advisory', by: 'before it is towed' },
  { states: 'no label and no width leaves it open', check: 'tie-down.label', values: { marking: 'none' }, outcome: undefined, verdict: 'not seen' },
  { states: '2,200 lb counted hold a boat of 3,500 lb (393.106(d))', check: 'tie-down.total', values: { boat: 3_500 * lb, bow: 2_000 * lbf, left: 1_200 * lbf, right: 1_200 * lbf, route: 'none' }, outcome: 'enough', verdict: 'pass' },
  { states: 'without the bow strap they do not', check: 'tie-down.total', values: { boat: 3_500 * lb, left: 1_200 * lbf, right: 1_200 * lbf, route: 'none' }, outcome: 'short', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a strap over to the other side counts whole, exactly enough for 4,000 lb', check: 'tie-down.total', values: { boat: 4_000 * lb, route: 'to the other side', over: 2_000 * lbf }, outcome: 'enough', verdict: 'pass' },
  { states: 'the same strap back to the same side counts half', check: 'tie-down.total', values: { boat: 4_000 * lb, route: 'back to the same side', over: 2_000 * lbf }, outcome: 'short', verdict: 'advisory', by: 'before it is towed' },
  { states: 'no strap recorded leaves it open', check: 'tie-down.total', values: { boat: 4_000 * lb, route: 'none' }, outcome: undefined, verdict: 'not seen' },
  { states: 'a strap over the boat still to be read leaves it open', check: 'tie-down.total', values: { boat: 4_000 * lb, left: 2_000 * lbf, route: 'to the other side' }, outcome: undefined, verdict: 'not seen' },
  { states: 'three on 18 ft, not blocked, are enough (393.110)', check: 'tie-down.number', values: { count: 3, blocked: 'not blocked' }, given: boat(18, 3_500), outcome: 'enough', verdict: 'pass' },
  { states: 'two on 18 ft, not blocked, are too few', check: 'tie-down.number', values: { count: 2, blocked: 'not blocked' }, given: boat(18, 3_500), outcome: 'too few', verdict: 'advisory', by: 'before it is towed' },
  { states: 'two on 18 ft, blocked, are enough', check: 'tie-down.number', values: { count: 2, blocked: 'blocked' }, given: boat(18), outcome: 'enough', verdict: 'pass' },
  { states: 'three on 22 ft, not blocked, are too few', check: 'tie-down.number', values: { count: 3, blocked: 'not blocked' }, given: boat(22), outcome: 'too few', verdict: 'advisory', by: 'before it is towed' },
  { states: 'an unknown length cannot be worked out', check: 'tie-down.number', values: { count: 3, blocked: 'blocked' }, outcome: 'length unknown', verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['tie-down.stitching', { pass: ['whole', 'not sewn'], advisory: ['few threads worn', 'home-made'], fail: ['threads cut or broken'] }],
  ['tie-down.tensioner', { pass: ['works and locks'], advisory: ['stiff', 'rusted', 'cam buckle'], fail: ['does not lock', 'bent or cracked'] }],
  ['tie-down.hooks', { pass: ['true and seated'], advisory: ['latch missing', 'rusted', 'seated on its tip'], fail: ['opened up', 'cracked'] }],
  ['tie-down.knots', { pass: ['straight and flat'], advisory: ['twisted'], fail: ['knotted', 'joined strap to strap'] }],
  ['tie-down.chafe', { pass: ['runs clear', 'protected'], advisory: ['rubs on the hull'], fail: ['bears on an edge', 'near the exhaust or tyre'] }],
  ['tie-down.anchors', { pass: ['sound at both ends'], advisory: ['rusted', 'on a weak part'], fail: ['loose', 'cracked'] }],
  ['tie-down.tension', { pass: ['tight and flat'], advisory: ['could be tighter', 'tail loose'], fail: ['slack', 'not fitted'] }],
  ['tie-down.bow-lead', { pass: ['down and back to the frame'], advisory: ['straight down', 'to the winch post', 'around the bow rail or cleat'], fail: ['no such strap'] }],
  ['tie-down.transom-lead', { pass: ['down and forward', 'over the gunwale'], advisory: ['straight down', 'down and aft'], fail: ['to trim tab or ladder', 'no such strap'] }],
  ['tie-down.engine', { pass: ['supported and locked'], advisory: ['on its tilt lock', 'on its hydraulics'], fail: ['support loose', 'hangs low'] }],
  ['tie-down.propeller', { pass: ['covered or flagged', 'inside the lamps'], advisory: ['sticks out bare'] }],
  ['tie-down.loose-gear', { pass: ['stowed'], advisory: ['could blow out'], fail: ['heavy and loose', 'fuel cans loose'] }],
  ['tie-down.cover', { pass: ['none, nothing to blow', 'made for the road, tight'], fail: ['canvas or top up', 'loose or torn'] }],
  ['tie-down.mast-and-aerials', { 'not applicable': ['none fitted'], pass: ['down and tied'], advisory: ['height not known'], fail: ['standing'] }],
  ['tie-down.drain-plug', { pass: ['out, hull drained', 'in, hull dry'], advisory: ['water in the hull', 'plug missing', 'weed or mud on board'] }],
]

describe('tie-down', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('tie-down', cases)).not.toThrow()
  })

  it('labels count in the terms of the rule book: a third of breaking in the United States, half in Europe', () => {
    const marked = { marking: 'breaking strength', strength: 30_000 }
    expect(judged('tie-down.label', marked).because).toContain('10,000 N')
    expect(judged('tie-down.label', marked, eu).because).toContain('15,000 N')
    expect(judged('tie-down.label', { marking: 'lashing capacity', strength: 15_000 }).because).toContain('10,000 N')
    expect(judged('tie-down.label', { marking: 'lashing capacity', strength: 15_000 }, eu).because).toContain('15,000 N')
  })

  it('the winch strap is asked once for its webbing, at the winch; its tension with the others', () => {
    expect(positionsAsked('tie-down.webbing', {})).toEqual(['strap bow tie', 'strap transom left', 'strap transom right'])
    expect(positionsAsked('tie-down.tension', {})).toContain('strap winch')
  })

  it('the federal sums are asked in the United States only', () => {
    expect(askedOf({}, 'us')).toEqual(expect.arrayContaining(['tie-down.total', 'tie-down.number']))
    expect(askedOf({}, 'eu').filter((id) => id === 'tie-down.total' || id === 'tie-down.number')).toEqual([])
  })
})
