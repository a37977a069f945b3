import { describe, expect, it } from 'vitest'
import { askedOf } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, judged, type ByVerdict, type Case } from './judged'

const cases: readonly Case[] = [
  { states: 'webbing with damage "none" comes to pass', check: 'winch.strap', values: { damage: 'none' }, outcome: 'none', verdict: 'pass' },
  { states: 'webbing with damage "light wear" comes to pass', check: 'winch.strap', values: { damage: 'light wear' }, outcome: 'light wear', verdict: 'pass' },
  { states: 'webbing with damage "chemical" comes to fail', check: 'winch.strap', values: { damage: 'chemical' }, outcome: 'chemical', verdict: 'fail' },
  { states: 'webbing with damage "sun" comes to advisory', check: 'winch.strap', values: { damage: 'sun' }, outcome: 'sun', verdict: 'advisory' },
  { states: 'webbing with damage "missing" comes to fail', check: 'winch.strap', values: { damage: 'missing' }, outcome: 'missing', verdict: 'fail' },
  { states: 'frayed over 5.0 mm of 50 mm is a tenth: an advisory', check: 'winch.strap', values: { damage: 'fraying', length: 0.005, width: 0.05 }, outcome: 'small fraying', verdict: 'advisory' },
  { states: 'frayed over 5.1 mm of 50 mm fails', check: 'winch.strap', values: { damage: 'fraying', length: 0.0051, width: 0.05 }, outcome: 'frayed too far', verdict: 'fail' },
  { states: 'cut over 5.0 mm of 50 mm is a tenth: an advisory', check: 'winch.strap', values: { damage: 'cut', length: 0.005, width: 0.05 }, outcome: 'small cut', verdict: 'advisory' },
  { states: 'cut over 5.1 mm of 50 mm fails', check: 'winch.strap', values: { damage: 'cut', length: 0.0051, width: 0.05 }, outcome: 'cut too far', verdict: 'fail' },
  { states: 'split over 5.0 mm of 50 mm is a tenth: an advisory', check: 'winch.strap', values: { damage: 'split', length: 0.005, width: 0.05 }, outcome: 'small split', verdict: 'advisory' },
  { states: 'split over 5.1 mm of 50 mm fails', check: 'winch.strap', values: { damage: 'split', length: 0.0051, width: 0.05 }, outcome: 'split too far', verdict: 'fail' },
  { states: 'a small burn fails like any burn', check: 'winch.strap', values: { damage: 'burn', length: 0.002, width: 0.05 }, outcome: 'burn', verdict: 'fail' },
  { states: 'cuts summing 3/8 in on 2 in web fail by the tenth', check: 'winch.strap', values: { damage: 'cut', length: 0.009525, width: 0.0508 }, outcome: 'cut too far', verdict: 'fail' },
  { states: 'cuts summing 1/2 in on 2 in web are past the out-of-service table', check: 'winch.strap', values: { damage: 'cut', length: 0.0127, width: 0.0508 }, outcome: 'out of service', verdict: 'fail' },
  { states: 'a cut not measured leaves it open', check: 'winch.strap', values: { damage: 'cut', length: 0.005 }, outcome: undefined, verdict: 'not seen' },
  { states: 'a winch rated 500 kg serves a boat of 1000 kg', check: 'winch.capacity', values: { marking: 'marked', capacity: 500 }, given: { boat: { dryMassKg: 1_000 } }, outcome: 'enough', verdict: 'pass' },
  { states: 'a winch rated 499 kg is weak for a boat of 1000 kg', check: 'winch.capacity', values: { marking: 'marked', capacity: 499 }, given: { boat: { dryMassKg: 1_000 } }, outcome: 'weak', verdict: 'advisory' },
  { states: 'the engine counts with the boat', check: 'winch.capacity', values: { marking: 'marked', capacity: 500 }, given: { boat: { dryMassKg: 900, engineMassKg: 150 } }, outcome: 'weak', verdict: 'advisory' },
  { states: 'an unmarked winch is an advisory', check: 'winch.capacity', values: { marking: 'none' }, outcome: 'unmarked', verdict: 'advisory' },
  { states: 'the mass of the boat unknown is not seen', check: 'winch.capacity', values: { marking: 'marked', capacity: 500 }, outcome: 'boat unknown', verdict: 'not seen' },
  { states: 'a stem that bears passes', check: 'winch.bow-stop', values: { stem: 'bears' }, outcome: 'bears', verdict: 'pass' },
  { states: 'a gap of 25 mm is an advisory', check: 'winch.bow-stop', values: { stem: 'gap', gap: 0.025 }, outcome: 'small gap', verdict: 'advisory' },
  { states: 'a gap of 26 mm means the boat is not home', check: 'winch.bow-stop', values: { stem: 'gap', gap: 0.026 }, outcome: 'not home', verdict: 'fail' },
  { states: 'a gap not measured leaves it open', check: 'winch.bow-stop', values: { stem: 'gap' }, outcome: undefined, verdict: 'not seen' },
  { states: 'a stem off to one side is an advisory', check: 'winch.bow-stop', values: { stem: 'off to one side' }, outcome: 'off to one side', verdict: 'advisory' },
  { states: 'no bow stop fails', check: 'winch.bow-stop', values: { stem: 'no stop' }, outcome: 'no stop', verdict: 'fail' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['winch.post', { pass: ['tight and straight'], advisory: ['rusted bolts', 'leans'], fail: ['bolts loose', 'bent or cracked'] }],
  ['winch.cable', { pass: ['sound'], advisory: ['surface rust', 'single wires broken', 'clamp poorly made'], fail: ['kinked or crushed', 'strand broken', 'rusted through'] }],
  ['winch.wound', { pass: ['even'], advisory: ['wound loose or crossed'], fail: ['too few turns', 'end not fixed'] }],
  ['winch.hook', { pass: ['latched and true'], advisory: ['latch missing', 'rusted'], fail: ['opened up', 'cracked'] }],
  ['winch.gears', { pass: ['holds at every tooth'], advisory: ['dry', 'teeth worn', 'handle loose'], fail: ['teeth broken', 'pawl or brake slips'] }],
  ['winch.electric', { pass: ['works'], advisory: ['slow', 'cables chafed', 'no fuse or breaker', 'dead'], fail: ['clutch does not hold'] }],
  ['winch.safety-chain', { pass: ['fitted and snug'], advisory: ['too long', 'weak hardware'], fail: ['rusted away', 'missing'] }],
  ['winch.second-tie', { pass: ['down and back'], advisory: ['straight down', 'forward only', 'loose or makeshift'], fail: ['none'] }],
  ['winch.line-height', { pass: ['below the stop', 'level'], advisory: ['pulls down', 'over the stop'] }],
  ['winch.bow-pad', { pass: ['sound'], advisory: ['worn', 'perished'], fail: ['bracket loose', 'missing'] }],
  ['winch.bow-eye', { pass: ['sound'], advisory: ['sealant cracked', 'rust weeps'], fail: ['loose', 'worn'] }],
]

describe('winch and bow', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('winch', cases)).not.toThrow()
  })

  it('a strap is asked of a strap winch, a cable of a cable winch, both while that is unknown', () => {
    expect(askedOf({ winch: 'hand, strap' })).toContain('winch.strap')
    expect(askedOf({ winch: 'hand, strap' })).not.toContain('winch.cable')
    expect(askedOf({ winch: 'electric, cable' })).toEqual(expect.arrayContaining(['winch.cable', 'winch.electric']))
    expect(askedOf({})).toEqual(expect.arrayContaining(['winch.strap', 'winch.cable', 'winch.electric']))
  })

  it('without a winch its parts are not asked, but how the bow is held still is', () => {
    expect(askedOf({ winch: 'none' }).filter((id) => ['winch.strap', 'winch.cable', 'winch.hook', 'winch.gears', 'winch.capacity', 'winch.wound'].includes(id))).toEqual([])
    expect(askedOf({ winch: 'none' })).toContain('winch.second-tie')
  })

  it('a bow held by nothing but winch strap and safety chain fails before it is towed', () => {
    expect(judged('winch.second-tie', { condition: 'none' })).toMatchObject({ verdict: 'fail', by: 'before it is towed' })
  })
})
