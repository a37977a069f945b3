import { describe, expect, it } from 'vitest'
import type { Spot } from '../../../shared-logic/survey/spot'
import { askedOf } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case, type Situation } from './judged'

const spot = (over: Partial<Spot>): Spot => ({ id: over.place ?? 'a', place: 'rear end', material: 'painted steel', kind: 'red rust', ...over })
const spots = (...list: Partial<Spot>[]) => ({ spots: list.map(spot) })
const aluminium: Situation = { trailer: { frame: 'aluminium' } }

const cases: readonly Case[] = [
  { states: 'an empty list of spots passes', check: 'frame.corrosion', values: spots(), outcome: 'none', verdict: 'pass' },
  { states: '1 % of a painted face passes', check: 'frame.corrosion', values: spots({ areaM2: 0.0035, faceAreaM2: 0.35 }), outcome: 'slight', verdict: 'pass' },
  { states: '1.01 % of a painted face is an advisory', check: 'frame.corrosion', values: spots({ areaM2: 0.003535, faceAreaM2: 0.35 }), outcome: 'painted rust', verdict: 'advisory' },
  { states: '12 % of a painted face is still an advisory: area alone never fails', check: 'frame.corrosion', values: spots({ areaM2: 0.042, faceAreaM2: 0.35 }), outcome: 'painted rust', verdict: 'advisory' },
  { states: 'two spots of one place add up', check: 'frame.corrosion', values: spots({ areaM2: 0.002, faceAreaM2: 0.35 }, { id: 'b', areaM2: 0.002, faceAreaM2: 0.35 }), outcome: 'painted rust', verdict: 'advisory' },
  { states: 'two spots of two places do not', check: 'frame.corrosion', values: spots({ areaM2: 0.002, faceAreaM2: 0.35 }, { place: 'front end', areaM2: 0.002, faceAreaM2: 0.35 }), outcome: 'slight', verdict: 'pass' },
  { states: 'a spot without its area cannot be graded', check: 'frame.corrosion', values: spots({ faceAreaM2: 0.35 }), outcome: 'not measured', verdict: 'advisory' },
  { states: '0.1 % red rust on zinc passes', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', areaM2: 0.0003, faceAreaM2: 0.3 }), outcome: 'slight', verdict: 'pass' },
  { states: '0.11 % red rust on zinc is an advisory', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', areaM2: 0.00033, faceAreaM2: 0.3 }), outcome: 'red rust on zinc', verdict: 'advisory' },
  { states: '0.6 % red rust on zinc is past spot repair (ISO 1461:2009, 6.3)', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', areaM2: 0.0006, faceAreaM2: 0.1 }), outcome: 'red rust past spot repair', verdict: 'advisory' },
  { states: 'a spot of 12 cm2 on a large face is past spot repair (ISO 1461:2009, 6.3)', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', areaM2: 0.0012, faceAreaM2: 3.2 }), outcome: 'red rust past spot repair', verdict: 'advisory' },
  { states: 'a spot of 12 cm2 on zinc without its face is named', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', areaM2: 0.0012 }), outcome: 'large bare spot', verdict: 'advisory' },
  { states: 'white product on zinc is not base-metal corrosion', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', kind: 'white product', areaM2: 0.2, faceAreaM2: 0.3 }), outcome: 'white product', verdict: 'pass' },
  { states: 'white on painted steel is nothing of the steel’s', check: 'frame.corrosion', values: spots({ kind: 'white product', areaM2: 0.2, faceAreaM2: 0.3 }), outcome: 'foreign white', verdict: 'pass' },
  { states: 'rust in layers is an advisory', check: 'frame.corrosion', values: spots({ kind: 'scale', areaM2: 0.0001, faceAreaM2: 0.35 }), outcome: 'scale', verdict: 'advisory' },
  { states: 'uncoated steel that rusts is an advisory', check: 'frame.corrosion', values: spots({ material: 'bare steel', areaM2: 0.0001, faceAreaM2: 0.35 }), outcome: 'bare steel', verdict: 'advisory' },
  { states: 'attack where unlike metals meet is an advisory', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'galvanic' }), outcome: 'galvanic', verdict: 'advisory' },
  { states: 'pits without a depth are pressing', check: 'frame.corrosion', values: spots({ kind: 'pitting', areaM2: 0.0005 }), outcome: 'pits not measured', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a wall measured over an area says nothing of the pits in it', check: 'frame.corrosion', values: spots({ kind: 'pitting', areaM2: 0.0005, wallM: 0.004, remainingM: 0.0039 }), outcome: 'pits not measured', verdict: 'advisory', by: 'before it is towed' },
  { states: 'pits counted on a thinned wall want their depth as well', check: 'frame.corrosion', values: spots({ pitCount: 3, share: 0.002, wallM: 0.004, remainingM: 0.0034 }), outcome: 'pits not measured', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a wall too thin fails though its pits were not measured', check: 'frame.corrosion', values: spots({ kind: 'pitting', areaM2: 0.0005, wallM: 0.004, remainingM: 0.0029 }), outcome: 'too thin', verdict: 'fail' },
  { states: 'a pit of 10 % of the wall is an advisory', check: 'frame.corrosion', values: spots({ pitDepthM: 0.0004, wallM: 0.004, areaM2: 0.0001, faceAreaM2: 0.35 }), outcome: 'pitted', verdict: 'advisory' },
  { states: 'a pit of 9 % of the wall passes', check: 'frame.corrosion', values: spots({ pitDepthM: 0.00036, wallM: 0.004, areaM2: 0.0001, faceAreaM2: 0.35 }), outcome: 'small loss', verdict: 'pass' },
  { states: 'a pit of 30 % of the wall is an advisory', check: 'frame.corrosion', values: spots({ kind: 'pitting', pitDepthM: 0.0012, wallM: 0.004 }), outcome: 'pitted', verdict: 'advisory' },
  { states: 'a pit of 32.5 % of the wall fails', check: 'frame.corrosion', values: spots({ kind: 'pitting', pitDepthM: 0.0013, wallM: 0.004 }), outcome: 'deep pit', verdict: 'fail' },
  { states: 'a pit in aluminium is named at any depth', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'pitting', pitDepthM: 0.0001, wallM: 0.004 }), outcome: 'aluminium pits', verdict: 'advisory' },
  { states: 'a pit of 31 % in aluminium fails', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'pitting', pitDepthM: 0.00124, wallM: 0.004 }), outcome: 'deep pit', verdict: 'fail' },
  { states: 'metal eaten away 51 mm across fails', check: 'frame.corrosion', values: spots({ kind: 'pitting', areaM2: 0.002043 }), outcome: 'eaten away', verdict: 'fail' },
  { states: 'a hole fails among slighter spots', check: 'frame.corrosion', values: spots({ areaM2: 0.0001, faceAreaM2: 0.35 }, { place: 'by the spring', kind: 'hole' }), outcome: 'hole', verdict: 'fail' },
  { states: '21 % of a painted face is paint broken down (IMO MSC.1/Circ.1330 as analogue)', check: 'frame.corrosion', values: spots({ areaM2: 0.0735, faceAreaM2: 0.35 }), outcome: 'paint broken down', verdict: 'advisory' },
  { states: 'paint over zinc is judged as paint', check: 'frame.corrosion', values: spots({ material: 'painted over zinc', areaM2: 0.002, faceAreaM2: 0.35 }), outcome: 'slight', verdict: 'pass' },
  { states: 'a repaired spot is sound', check: 'frame.corrosion', values: spots({ kind: 'hole', state: 'repaired' }), outcome: 'sound', verdict: 'pass' },
  { states: 'a repaired spot no longer adds up', check: 'frame.corrosion', values: spots({ areaM2: 0.002, faceAreaM2: 0.35 }, { id: 'b', areaM2: 0.002, faceAreaM2: 0.35, state: 'repaired' }), outcome: 'slight', verdict: 'pass' },
  { states: 'blisters are opened', check: 'frame.corrosion', values: spots({ kind: 'blister', areaM2: 0.0001, faceAreaM2: 0.35 }), outcome: 'blistered', verdict: 'advisory' },
  { states: 'welds rusted over 20 % of their run are within (IMO MSC.1/Circ.1330 as analogue)', check: 'frame.corrosion', values: spots({ kind: 'weld', share: 0.2 }), outcome: 'slight', verdict: 'pass' },
  { states: 'welds rusted over 21 % of their run are an advisory', check: 'frame.corrosion', values: spots({ kind: 'weld', share: 0.21 }), outcome: 'weld rust', verdict: 'advisory' },
  { states: 'welds do not add to the face', check: 'frame.corrosion', values: spots({ share: 0.009 }, { id: 'b', kind: 'weld', share: 0.1 }), outcome: 'slight', verdict: 'pass' },
  { states: 'white product with zinc below the local minimum of ISO 1461 is heavy', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', kind: 'white product', wallM: 0.004, coatingReadingsM: [18e-6, 30e-6] }), outcome: 'heavy white product', verdict: 'advisory' },
  { states: 'thin zinc with little rust is named for the year', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', wallM: 0.004, share: 0.0005, coatingReadingsM: [54e-6, 80e-6] }), outcome: 'thin zinc', verdict: 'advisory', by: 'within a year' },
  { states: 'zinc at the local minimum is not thin', check: 'frame.corrosion', values: spots({ material: 'galvanized steel', wallM: 0.004, share: 0.0005, coatingReadingsM: [55e-6, 80e-6] }), outcome: 'slight', verdict: 'pass' },
  { states: 'bloom on aluminium without pits passes', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'white product' }), outcome: 'bloom', verdict: 'pass' },
  { states: 'red rust on aluminium comes from elsewhere', check: 'frame.corrosion', values: spots({ material: 'aluminium', share: 0.1 }), outcome: 'foreign rust', verdict: 'pass' },
  { states: 'pits in an aluminium mudguard are not judged as structure', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'pitting', component: 'mudguard', pitDepthM: 0.001, wallM: 0.0015 }), outcome: 'not structural', verdict: 'pass' },
  { states: 'a hole in a mudguard is an advisory', check: 'frame.corrosion', values: spots({ kind: 'hole', component: 'mudguard' }), outcome: 'holed, no load', verdict: 'advisory' },
  { states: '25 % thinned is an advisory', check: 'frame.corrosion', values: spots({ wallM: 0.004, remainingM: 0.003 }), outcome: 'thinned', verdict: 'advisory' },
  { states: '26 % thinned fails', check: 'frame.corrosion', values: spots({ wallM: 0.004, remainingM: 0.00296 }), outcome: 'too thin', verdict: 'fail' },
  { states: '15 % in aluminium beside a weld is an advisory', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'pitting', besideWeld: true, pitDepthM: 0.0006, wallM: 0.004 }), outcome: 'aluminium pits', verdict: 'advisory' },
  { states: '16 % in aluminium beside a weld fails', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'pitting', besideWeld: true, pitDepthM: 0.00064, wallM: 0.004 }), outcome: 'pit by the weld', verdict: 'fail' },
  { states: 'an advisory near a mounting wants the wall measured before it is towed', check: 'frame.corrosion', values: spots({ nearMounting: true, share: 0.02 }), outcome: 'near a mounting', verdict: 'advisory', by: 'before it is towed' },
  { states: 'rust near a mounting whose wall was measured and is whole counts by its area', check: 'frame.corrosion', values: spots({ nearMounting: true, share: 0.02, wallM: 0.004, remainingM: 0.0039 }), outcome: 'painted rust', verdict: 'advisory' },
  { states: 'slight rust near a mounting passes', check: 'frame.corrosion', values: spots({ nearMounting: true, share: 0.002 }), outcome: 'slight', verdict: 'pass' },
  { states: 'stainless larger than the aluminium it touches is pressing', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'galvanic', touches: 'stainless steel', touchingIsSmaller: false }), outcome: 'galvanic, large cathode', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a stainless bolt in aluminium is an advisory', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'galvanic', touches: 'stainless steel', touchingIsSmaller: true }), outcome: 'galvanic', verdict: 'advisory', by: 'before next trip' },
  { states: 'a galvanized bolt on aluminium is used up itself', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'white product', touches: 'galvanized steel' }), outcome: 'galvanic, other part', verdict: 'advisory', by: 'within a month' },
  { states: 'carbon steel on aluminium is within 0.15 V, so attack there is not explained by it', check: 'frame.corrosion', values: spots({ material: 'aluminium', kind: 'galvanic', touches: 'carbon steel' }), outcome: 'galvanic', verdict: 'advisory' },
  { states: 'attack in a crevice is an advisory', check: 'frame.corrosion', values: spots({ kind: 'crevice', share: 0.001 }), outcome: 'crevice', verdict: 'advisory' },
  { states: 'an area that straddles 1 % is judged by its worse end', check: 'frame.corrosion', values: spots({ areaM2: 0.0034, areaUncertaintyM2: 0.0003, faceAreaM2: 0.35 }), outcome: 'painted rust', verdict: 'advisory' },
  { states: 'an area that keeps below 1 % with its uncertainty passes', check: 'frame.corrosion', values: spots({ areaM2: 0.0031, areaUncertaintyM2: 0.0003, faceAreaM2: 0.35 }), outcome: 'slight', verdict: 'pass' },
  { states: 'no loss found passes', check: 'frame.section-loss', values: { form: 'none' }, outcome: 'none', verdict: 'pass' },
  { states: '9 % lost passes', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.00364, place: 'clear of welds' }, outcome: 'small loss', verdict: 'pass' },
  { states: '10 % lost in a pit is an advisory', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.0036, place: 'clear of welds' }, outcome: 'pitted', verdict: 'advisory' },
  { states: '2.9 of 4.0 mm left in a pit is an advisory', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.0029, place: 'clear of welds' }, outcome: 'pitted', verdict: 'advisory' },
  { states: '2.7 of 4.0 mm left in a pit fails', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.0027, place: 'clear of welds' }, outcome: 'pit too deep', verdict: 'fail' },
  { states: '25 % thinned is an advisory', check: 'frame.section-loss', values: { form: 'general thinning', wall: 0.004, left: 0.003, place: 'clear of welds' }, outcome: 'thinned', verdict: 'advisory' },
  { states: '26 % thinned fails', check: 'frame.section-loss', values: { form: 'general thinning', wall: 0.004, left: 0.00296, place: 'clear of welds' }, outcome: 'too thin', verdict: 'fail' },
  { states: 'scale too thick to measure is pressing', check: 'frame.section-loss', values: { form: 'scale too thick' }, outcome: 'scale too thick', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a 5 % pit in aluminium is named', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.0038, place: 'clear of welds' }, given: aluminium, outcome: 'pitted', verdict: 'advisory' },
  { states: '15 % beside an aluminium weld is an advisory', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.0034, place: 'beside a weld' }, given: aluminium, outcome: 'pitted', verdict: 'advisory' },
  { states: '16 % beside an aluminium weld fails', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.00336, place: 'beside a weld' }, given: aluminium, outcome: 'pit by the weld', verdict: 'fail' },
  { states: '16 % beside a steel weld is an advisory', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004, left: 0.00336, place: 'beside a weld' }, outcome: 'pitted', verdict: 'advisory' },
  { states: 'more left than the wall is no loss', check: 'frame.section-loss', values: { form: 'general thinning', wall: 0.004, left: 0.0041, place: 'clear of welds' }, outcome: 'small loss', verdict: 'pass' },
  { states: 'a pit not measured leaves it open', check: 'frame.section-loss', values: { form: 'pit', wall: 0.004 }, outcome: undefined, verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['frame.straight', { pass: ['straight'], advisory: ['slightly out of true', 'dented'], fail: ['bent or sagging'] }],
  ['frame.cracks', { pass: ['none seen'], advisory: ['suspected'], fail: ['cracked', 'broken'] }],
  ['frame.welds', { pass: ['sound', 'no welds here'], advisory: ['poor run', 'rust bleeds'], fail: ['eaten away', 'cracked'] }],
  ['frame.closed-sections', { pass: ['rings sound', 'open section, seen both sides'], advisory: ['rust falls out', 'dull'], fail: ['gives way'], 'not seen': ['cannot be reached'] }],
  ['frame.repairs', { pass: ['none seen', 'proper, with papers'], advisory: ['proper, no papers', 'coating not made good'], fail: ['poor or makeshift', 'plate over rust'] }],
  ['frame.disguise', { pass: ['nothing hidden'], advisory: ['fresh paint or undercoat'], fail: ['filler found'] }],
  ['frame.cross-member-attachment', { pass: ['tight'], advisory: ['U-bolts rusted', 'shifted'], fail: ['loose', 'cracked'] }],
  ['frame.near-mountings', { pass: ['clean', 'light rust'], advisory: ['pitted or flaking'], fail: ['weakened', 'holed'] }],
  ['frame.galvanizing', { pass: ['even grey', 'light white product'], advisory: ['heavy white product', 'flaking', 'brown bloom', 'zinc gone'] }],
  ['frame.paint', { pass: ['whole'], advisory: ['chalked or scratched', 'edges and welds rusting', 'blistered or lifting'] }],
  ['frame.galvanic-isolation', { pass: ['isolated'], advisory: ['not isolated, no attack', 'white product round fasteners'], fail: ['holes eaten large'] }],
  ['frame.drain-holes', { pass: ['open', 'open sections'], advisory: ['blocked', 'none in closed sections', 'water inside'] }],
  ['frame.fasteners', { pass: ['tight'], advisory: ['surface rust', 'wrong metal', 'wasted'], fail: ['loose', 'missing'] }],
  ['frame.fenders', { pass: ['secure'], advisory: ['rusted or split', 'bracket cracked', 'missing'], fail: ['rubs on the tyre', 'loose'] }],
  ['frame.steps', { 'not applicable': ['not fitted'], pass: ['firm and rough'], advisory: ['slippery'], fail: ['loose', 'broken'] }],
  ['frame.spare-carrier', { pass: ['firm and locked'], advisory: ['rusted', 'tool missing'], fail: ['loose', 'cracked'] }],
]

describe('frame', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('frame', cases)).not.toThrow()
  })

  it.each([
    ['galvanized steel', 'frame.galvanizing', ['frame.paint', 'frame.galvanic-isolation']],
    ['painted steel', 'frame.paint', ['frame.galvanizing', 'frame.galvanic-isolation']],
    ['aluminium', 'frame.galvanic-isolation', ['frame.galvanizing', 'frame.paint', 'frame.closed-sections']],
  ] as const)('a frame of %s is asked for %s', (frame, own, others) => {
    expect(askedOf({ frame })).toContain(own)
    expect(askedOf({ frame }).filter((id) => others.some((other) => other === id))).toEqual([])
  })

  it('the percentage, the degree and the grade stand together: 12 % is Ri 5 and grade 3', () => {
    expect(judged('frame.corrosion', spots({ areaM2: 0.042, faceAreaM2: 0.35 })).because).toBe('rear end: 12 % of the face is rusted: degree Ri 5 (ISO 4628-3), grade 3 (ASTM D610).')
  })

  it('0.3 % on zinc is Rp 7 by table and 7.6 by formula', () => {
    expect(judged('frame.corrosion', spots({ material: 'galvanized steel', areaM2: 0.0009, faceAreaM2: 0.3 })).because).toBe('rear end: red rust on 0.3 % of the face: protection rating 7 (ISO 10289; by formula 7.6).')
  })
})
