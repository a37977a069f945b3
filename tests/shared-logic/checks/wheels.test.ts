import { describe, expect, it } from 'vitest'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'
import { tyreLoadCases } from './rests-on-sums'

const inch = 0.0254
const placard = { trailer: { tyre: { placardPressurePa: 345_000 } } }
const loaded = (loadIndex: number, axleRatingKg: number) => ({ trailer: { tyre: { loadIndex }, axleRatingKg } })
const asRecord = { marking: 'as the record' }
const torque = (found: number) => ({ figure: 'known', makers: 100, found })

const cases: readonly Case[] = [
  ...tyreLoadCases,
  { states: 'the recorded size, written otherwise, passes', check: 'wheels.tyre-size', values: { size: 'st 205/75 r15' }, given: { trailer: { tyre: { size: 'ST205/75R15' } } }, outcome: 'as the record', verdict: 'pass' },
  { states: 'bias instead of radial differs', check: 'wheels.tyre-size', values: { size: 'ST205/75D15' }, given: { trailer: { tyre: { size: 'ST205/75R15' } } }, outcome: 'differs', verdict: 'advisory' },
  { states: 'without a recorded size it cannot be compared', check: 'wheels.tyre-size', values: { size: 'ST205/75R15' }, outcome: 'nothing to compare', verdict: 'not seen' },

  { states: 'two tyres of index 98 carry an axle of 1350 kg', check: 'wheels.load', values: asRecord, given: loaded(98, 1350), outcome: 'enough', verdict: 'pass' },
  { states: 'two tyres of index 96 do not carry an axle of 1500 kg', check: 'wheels.load', values: asRecord, given: loaded(96, 1500), outcome: 'too little', verdict: 'fail' },
  { states: 'exactly the axle’s rating is enough', check: 'wheels.load', values: asRecord, given: loaded(96, 1420), outcome: 'enough', verdict: 'pass' },
  { states: 'one kilogram short fails', check: 'wheels.load', values: asRecord, given: loaded(96, 1421), outcome: 'too little', verdict: 'fail' },
  { states: 'the tyre’s own index goes before the record', check: 'wheels.load', values: { marking: 'another', loadIndex: 96 }, given: loaded(110, 1500), outcome: 'too little', verdict: 'fail' },
  { states: 'passenger-car tyres count less in the United States', check: 'wheels.load', values: { ...asRecord, kind: 'passenger car' }, given: loaded(98, 1400), outcome: 'too little', verdict: 'fail' },
  { states: 'but not in Europe', check: 'wheels.load', values: { ...asRecord, kind: 'passenger car' }, given: { ...loaded(98, 1400), ruleBook: 'eu' }, outcome: 'enough', verdict: 'pass' },
  { states: 'without axle rating the whole mass on the tyres is surely enough', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { loadIndex: 96 }, maximumMassKg: 2840, axleCount: 2 } }, outcome: 'enough for the whole mass', verdict: 'pass' },
  { states: 'a little less may be short, as the coupling carries some', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { loadIndex: 96 }, maximumMassKg: 3000, axleCount: 2 } }, outcome: 'may be short', verdict: 'advisory' },
  { states: 'more than the coupling can make up for fails', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { loadIndex: 96 }, maximumMassKg: 3400, axleCount: 2 } }, outcome: 'short of the mass', verdict: 'fail' },
  { states: 'neither rating nor mass known: cannot be worked out', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { loadIndex: 96 } } }, outcome: 'rating not known', verdict: 'not seen' },
  { states: 'index not recorded: cannot be worked out', check: 'wheels.load', values: asRecord, given: { trailer: { axleRatingKg: 1500 } }, outcome: 'index not known', verdict: 'not seen' },
  { states: 'two ST205/75R15 range C, 3,640 lb, carry an axle of 3,640 lb', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { size: 'ST205/75R15', loadRange: 'C' }, axleRatingKg: 3640 * 0.45359237 } }, outcome: 'enough', verdict: 'pass' },
  { states: 'two of range B, 2,960 lb, do not', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { size: 'ST205/75R15', loadRange: 'B' }, axleRatingKg: 3640 * 0.45359237 } }, outcome: 'too little', verdict: 'fail' },
  { states: 'a size the ST table lacks cannot be worked out', check: 'wheels.load', values: asRecord, given: { trailer: { tyre: { size: '5.30-12', loadRange: 'C' }, axleRatingKg: 700 } }, outcome: 'index not known', verdict: 'not seen' },
  { states: 'an unreadable index is an advisory', check: 'wheels.load', values: { marking: 'cannot be read' }, outcome: 'not readable', verdict: 'advisory' },

  { states: 'J, 100 km/h, passes', check: 'wheels.speed', values: { marking: 'a letter', symbol: 'j' }, outcome: 'enough', verdict: 'pass' },
  { states: 'G, 90 km/h, is an advisory', check: 'wheels.speed', values: { marking: 'a letter', symbol: 'G' }, outcome: 'slow', verdict: 'advisory' },
  { states: 'the recorded letter is taken when none is entered', check: 'wheels.speed', values: { marking: 'a letter' }, given: { trailer: { tyre: { speedSymbol: 'N' } } }, outcome: 'enough', verdict: 'pass' },
  { states: 'an ST tyre without a letter passes', check: 'wheels.speed', values: { marking: 'none, trailer tyre' }, outcome: 'unmarked', verdict: 'pass' },
  { states: 'O is no speed symbol', check: 'wheels.speed', values: { marking: 'a letter', symbol: 'O' }, outcome: 'no such symbol', verdict: 'not seen' },
  { states: 'an unreadable letter is not seen', check: 'wheels.speed', values: { marking: 'cannot be read' }, outcome: 'not readable', verdict: 'not seen' },

  { states: '1.59 mm meets the American limit', check: 'wheels.tread', values: { depth: 0.00159 }, outcome: 'low', verdict: 'advisory' },
  { states: '1.59 mm fails the European limit', check: 'wheels.tread', values: { depth: 0.00159 }, given: { ruleBook: 'eu' }, outcome: 'below', verdict: 'fail' },
  { states: '1.5 mm fails the American limit', check: 'wheels.tread', values: { depth: 0.0015 }, outcome: 'below', verdict: 'fail', by: 'before it is towed' },
  { states: '1.6 mm meets the European limit', check: 'wheels.tread', values: { depth: 0.0016 }, given: { ruleBook: 'eu' }, outcome: 'low', verdict: 'advisory' },
  { states: '4/32 in is no longer low', check: 'wheels.tread', values: { depth: (4 / 32) * inch }, outcome: 'deep', verdict: 'pass' },
  { states: '3.1 mm is low', check: 'wheels.tread', values: { depth: 0.0031 }, outcome: 'low', verdict: 'advisory' },

  { states: '2319 on 1 June 2025 is not yet over six', check: 'wheels.age', values: { code: 'read', date: '2319' }, outcome: 'young', verdict: 'pass' },
  { states: '2219 on 1 June 2025 is over six', check: 'wheels.age', values: { code: 'read', date: '2219' }, outcome: 'old', verdict: 'advisory' },
  { states: '2415 on 1 June 2025 is not yet over ten', check: 'wheels.age', values: { code: 'read', date: '2415' }, outcome: 'old', verdict: 'advisory' },
  { states: '2215 on 1 June 2025 is over ten', check: 'wheels.age', values: { code: 'read', date: '2215' }, outcome: 'too old', verdict: 'fail' },
  { states: 'three digits are from before 2000', check: 'wheels.age', values: { code: 'read', date: '317' }, outcome: 'of the last century', verdict: 'fail' },
  { states: 'week 53 of a year without one is doubtful', check: 'wheels.age', values: { code: 'read', date: '5323' }, outcome: 'doubtful week', verdict: 'advisory' },
  { states: 'week 53 of 2020 was', check: 'wheels.age', values: { code: 'read', date: '5320' }, outcome: 'young', verdict: 'pass' },
  { states: 'week 00 is no date code', check: 'wheels.age', values: { code: 'read', date: '0018' }, outcome: 'no date code', verdict: 'advisory' },
  { states: 'a week that has not been is no date code', check: 'wheels.age', values: { code: 'read', date: '2326' }, outcome: 'no date code', verdict: 'advisory' },
  { states: 'an unreadable code leaves the age undetermined', check: 'wheels.age', values: { code: 'cannot be read' }, outcome: 'not determined', verdict: 'advisory' },

  { states: 'a sound sidewall passes', check: 'wheels.sidewall', values: { condition: 'sound' }, outcome: 'sound', verdict: 'pass' },
  { states: 'fine cracks are an advisory', check: 'wheels.sidewall', values: { condition: 'fine cracks' }, outcome: 'fine cracks', verdict: 'advisory' },
  { states: 'deep cracks fail', check: 'wheels.sidewall', values: { condition: 'deep cracks' }, outcome: 'deep cracks', verdict: 'fail' },
  { states: 'a bulge fails', check: 'wheels.sidewall', values: { condition: 'bulge' }, outcome: 'bulge', verdict: 'fail' },
  { states: 'cords to be seen fail', check: 'wheels.sidewall', values: { condition: 'cords to be seen' }, outcome: 'cords to be seen', verdict: 'fail' },
  { states: 'a cut to the cords fails, however short', check: 'wheels.sidewall', values: { condition: 'cut', length: 0.005, cords: 'reached' }, outcome: 'cut to the cords', verdict: 'fail' },
  { states: 'a cut not down to the cords is an advisory', check: 'wheels.sidewall', values: { condition: 'cut', length: 0.04, cords: 'not reached' }, outcome: 'shallow cut', verdict: 'advisory' },
  { states: 'a 25 mm cut of unseen depth is an advisory', check: 'wheels.sidewall', values: { condition: 'cut', length: 0.025, cords: 'cannot be told' }, outcome: 'short cut, depth not seen', verdict: 'advisory' },
  { states: 'a 26 mm cut of unseen depth fails', check: 'wheels.sidewall', values: { condition: 'cut', length: 0.026, cords: 'cannot be told' }, outcome: 'long cut, depth not seen', verdict: 'fail' },
  { states: 'a cut without its length is open', check: 'wheels.sidewall', values: { condition: 'cut', cords: 'reached' }, outcome: undefined, verdict: 'not seen' },

  { states: '10 % under passes', check: 'wheels.pressure', values: { pressure: 310_500 }, given: placard, outcome: 'right', verdict: 'pass' },
  { states: 'over 10 % under is an advisory', check: 'wheels.pressure', values: { pressure: 310_000 }, given: placard, outcome: 'low', verdict: 'advisory' },
  { states: '20 % under is an advisory', check: 'wheels.pressure', values: { pressure: 276_000 }, given: placard, outcome: 'low', verdict: 'advisory' },
  { states: 'over 20 % under fails', check: 'wheels.pressure', values: { pressure: 275_000 }, given: placard, outcome: 'much too low', verdict: 'fail' },
  { states: '10 % over passes', check: 'wheels.pressure', values: { pressure: 379_500 }, given: placard, outcome: 'right', verdict: 'pass' },
  { states: 'over 10 % over is an advisory', check: 'wheels.pressure', values: { pressure: 380_000, state: 'cold' }, given: placard, outcome: 'high', verdict: 'advisory' },
  { states: 'right, but taken warm, is not seen', check: 'wheels.pressure', values: { pressure: 345_000, state: 'warm' }, given: placard, outcome: 'taken warm', verdict: 'not seen' },
  { states: 'too low even when warm is too low', check: 'wheels.pressure', values: { pressure: 275_000, state: 'warm' }, given: placard, outcome: 'much too low', verdict: 'fail' },
  { states: 'without a placard it cannot be worked out', check: 'wheels.pressure', values: { pressure: 345_000 }, outcome: 'placard not known', verdict: 'not seen' },

  { states: 'none missing, none loose passes', check: 'wheels.nuts', values: { missing: 0, loose: 0 }, outcome: 'all tight', verdict: 'pass' },
  { states: 'one loose fails', check: 'wheels.nuts', values: { missing: 0, loose: 1 }, outcome: 'one', verdict: 'fail', by: 'before it is towed' },
  { states: 'one missing fails', check: 'wheels.nuts', values: { missing: 1, loose: 0 }, outcome: 'one', verdict: 'fail', by: 'before it is towed' },
  { states: 'one missing and one loose: not to be towed', check: 'wheels.nuts', values: { missing: 1, loose: 1 }, outcome: 'several', verdict: 'fail', by: 'before it is towed' },
  { states: 'only the missing counted: open', check: 'wheels.nuts', values: { missing: 0 }, outcome: undefined, verdict: 'not seen' },

  { states: 'at 90 % of the maker’s torque passes', check: 'wheels.torque', values: torque(90), outcome: 'right', verdict: 'pass' },
  { states: 'under 90 % is an advisory', check: 'wheels.torque', values: torque(89), outcome: 'slack', verdict: 'advisory' },
  { states: 'at half it is slack', check: 'wheels.torque', values: torque(50), outcome: 'slack', verdict: 'advisory' },
  { states: 'under half it is loose and fails', check: 'wheels.torque', values: torque(49), outcome: 'loose', verdict: 'fail' },
  { states: 'at 120 % passes', check: 'wheels.torque', values: torque(120), outcome: 'right', verdict: 'pass' },
  { states: 'over 120 % is an advisory', check: 'wheels.torque', values: torque(121), outcome: 'overtight', verdict: 'advisory' },
  { states: 'no figure is put in for the maker’s', check: 'wheels.torque', values: { figure: 'not known' }, outcome: 'figure not known', verdict: 'not seen' },

  { states: 'nothing off lately, nothing due', check: 'wheels.retorque', values: { refitted: 'not lately' }, outcome: 'not due', verdict: 'pass' },
  { states: 'refitted 20 km ago and not tried since is due', check: 'wheels.retorque', values: { refitted: 'lately', distance: 20_000, rechecks: 0 }, outcome: 'due', verdict: 'advisory', by: 'before it is towed' },
  { states: 'refitted 20 km ago and tried once is not due', check: 'wheels.retorque', values: { refitted: 'lately', distance: 20_000, rechecks: 1 }, outcome: 'not due', verdict: 'pass' },
  { states: 'refitted nobody knows when', check: 'wheels.retorque', values: { refitted: 'not known' }, outcome: 'not determined', verdict: 'advisory' },

  { states: 'firm with 25 mm of room passes', check: 'wheels.mudguard', values: { condition: 'sound', room: 0.025 }, outcome: 'sound', verdict: 'pass' },
  { states: 'firm with 24 mm of room is an advisory', check: 'wheels.mudguard', values: { condition: 'sound', room: 0.024 }, outcome: 'close', verdict: 'advisory' },
  { states: 'touching fails', check: 'wheels.mudguard', values: { condition: 'sound', room: 0 }, outcome: 'touching', verdict: 'fail' },
  { states: 'loose fails', check: 'wheels.mudguard', values: { condition: 'loose' }, outcome: 'loose', verdict: 'fail' },
  { states: 'cracked is an advisory', check: 'wheels.mudguard', values: { condition: 'cracked' }, outcome: 'cracked', verdict: 'advisory' },
  { states: 'missing is an advisory', check: 'wheels.mudguard', values: { condition: 'missing' }, outcome: 'missing', verdict: 'advisory' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['wheels.marking', { pass: ['complete'], advisory: ['partly worn off'], fail: ['not for highway use', 'regrooved'] }],
  ['wheels.pair', { pass: ['alike', 'tread patterns differ'], fail: ['sizes differ', 'radial and bias'] }],
  ['wheels.wear', { pass: ['even'], advisory: ['both shoulders', 'centre', 'one shoulder', 'flat spot', 'cupped'] }],
  ['wheels.tread-damage', { pass: ['none'], advisory: ['object in the tread', 'tread cracked at its base'], fail: ['tread lifting', 'patched from outside'] }],
  ['wheels.valve', { pass: ['sound'], advisory: ['cap missing', 'cracked'], fail: ['leaking'] }],
  ['wheels.rim', { pass: ['sound'], advisory: ['surface corrosion', 'corroded at bead or seats'], fail: ['bent', 'holes worn oval', 'repaired by welding', 'cracked'] }],
  ['wheels.nut-seats', { pass: ['right'], advisory: ['surface rust', 'nuts of different kinds'], fail: ['stud damaged', 'seat does not fit the wheel'] }],
  ['wheels.spare', { pass: ['fits and is held'], advisory: ['no jack or brace for it', 'does not fit the hubs'], fail: ['carrier loose'], 'not applicable': ['none carried'] }],
]

describe('wheels and tyres', () => {
  it.each(cases)('$check: $states', (each) => expectCase(each))
  it.each(choices)('%s: each choice has its verdict', (id, expected) => expectChoices(id, expected))
  it('every way a measured check can come out is tested', () => expectEveryOutcomeReached('wheels', cases))

  it('says margin, age and limit', () => {
    expect(judged('wheels.load', asRecord, loaded(98, 1350)).because).toBe('Two tyres carry 1,500 kg; the axle is rated 1,350 kg: 11.1 % over.')
    expect(judged('wheels.age', { code: 'read', date: '5012' }).because).toContain('week 50 of 2012')
    expect(judged('wheels.tread', { depth: 0.0015 }, { ruleBook: 'eu' }).because).toBe('Tread 1.5 mm; at least 1.6 mm is asked.')
  })
})
