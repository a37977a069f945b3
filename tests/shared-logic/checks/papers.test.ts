import { describe, expect, it } from 'vitest'
import type { Boat } from '../../../shared-logic/rig/boat'
import type { Trailer } from '../../../shared-logic/rig/trailer'
import { askedOf } from './asked-of'
import { expectCase, expectChoices, expectEveryOutcomeReached, type ByVerdict, type Case, type Situation } from './judged'
import { paperSumsCases, couplingShareCases } from './rests-on-sums'

const rated: Situation = { trailer: { maximumMassKg: 2_000, massKg: 500, axleRatingKg: 900, axleCount: 2 } }
const lb = 0.45359237
const letter: Situation = { trailer: { maximumMassKg: 3_500 * lb, axleRatingKg: 3_150 * lb, axleCount: 1 } }
const number = (identificationNumber: string, more: Trailer = {}): Situation => ({ trailer: { identificationNumber, ...more } })
const hull = (hullIdentificationNumber: string, more: Boat = {}): Situation => ({ boat: { hullIdentificationNumber, ...more } })
const registered = { read: 'as registered' }

const cases: readonly Case[] = [
  ...paperSumsCases,
  ...couplingShareCases,
  { states: 'inspected 2024-05-31 is overdue on 2025-06-01 (49 CFR 396.17, 12 months)', check: 'papers.annual-inspection', values: { record: 'seen', inspected: '2024-05-31' }, outcome: 'overdue', verdict: 'advisory' },
  { states: 'inspected 2024-06-01 is current on 2025-06-01', check: 'papers.annual-inspection', values: { record: 'seen', inspected: '2024-06-01' }, outcome: 'current', verdict: 'pass' },
  { states: 'a record seen but not dated leaves it open', check: 'papers.annual-inspection', values: { record: 'seen' }, outcome: undefined, verdict: 'not seen' },
  { states: 'a commercial trailer without a record is an advisory', check: 'papers.annual-inspection', values: { record: 'no record' }, outcome: 'no record', verdict: 'advisory' },
  { states: 'a private trailer is not asked for it', check: 'papers.annual-inspection', values: { record: 'not commercial' }, outcome: 'not commercial', verdict: 'not applicable' },
  { states: 'a number that adds up passes', check: 'papers.identification-number', values: registered, given: number('1M8GDM9AXKP042788', { market: 'north america', builtYear: 1989 }), outcome: 'valid', verdict: 'pass' },
  { states: 'the model year may run a year ahead of building', check: 'papers.identification-number', values: registered, given: number('1M8GDM9AXKP042788', { builtYear: 1988 }), outcome: 'valid', verdict: 'pass' },
  { states: 'a model year two years off is an advisory', check: 'papers.identification-number', values: registered, given: number('1M8GDM9AXKP042788', { builtYear: 1991 }), outcome: 'year differs', verdict: 'advisory' },
  { states: 'a bad digit on a North American trailer is a query', check: 'papers.identification-number', values: registered, given: number('1M8GDM9A1KP042788', { market: 'north america' }), outcome: 'bad digit', verdict: 'advisory' },
  { states: 'a bad digit is only information outside North America', check: 'papers.identification-number', values: registered, given: number('WP0ZZZ99ZTS392124', { market: 'europe' }), outcome: 'no check digit there', verdict: 'pass' },
  { states: 'a bad digit is only information elsewhere too', check: 'papers.identification-number', values: registered, given: number('KLATF08Y1VB363636', { market: 'elsewhere' }), outcome: 'no check digit there', verdict: 'pass' },
  { states: 'a bad digit with the market unknown is worded as a query', check: 'papers.identification-number', values: registered, given: number('1M8GDM9A1KP042788'), outcome: 'bad digit, market unknown', verdict: 'advisory' },
  { states: 'seventeen equal characters are warned of', check: 'papers.identification-number', values: { read: 'another', number: '11111111111111111' }, outcome: 'all the same', verdict: 'advisory' },
  { states: 'an O is never used', check: 'papers.identification-number', values: { read: 'another', number: '1G4AH59H45G11834O' }, outcome: 'bad character', verdict: 'advisory' },
  { states: 'sixteen characters are a query', check: 'papers.identification-number', values: { read: 'another', number: '1G4AH59H45G11834' }, outcome: 'not 17', verdict: 'advisory' },
  { states: 'a short number passes on a trailer of 1980', check: 'papers.identification-number', values: registered, given: number('TR-4711', { builtYear: 1980 }), outcome: 'before 1981', verdict: 'pass' },
  { states: 'a short number is a query on a trailer of 1981', check: 'papers.identification-number', values: registered, given: number('TR-4711', { builtYear: 1981 }), outcome: 'not 17', verdict: 'advisory' },
  { states: 'no number on the trailer fails', check: 'papers.identification-number', values: { read: 'none found' }, outcome: 'none found', verdict: 'fail' },
  { states: 'no number entered is not seen, never a guess', check: 'papers.identification-number', values: registered, outcome: 'not entered', verdict: 'not seen' },
  { states: 'another number still to be typed leaves it open', check: 'papers.identification-number', values: { read: 'another' }, outcome: undefined, verdict: 'not seen' },
  { states: 'a hull number of the current form passes', check: 'papers.hull-number', values: registered, given: hull('ABC12345D404', { builtYear: 2004 }), outcome: 'valid', verdict: 'pass' },
  { states: 'a hull number of the older form passes', check: 'papers.hull-number', values: registered, given: hull('XYZ12345M82H'), outcome: 'older form', verdict: 'pass' },
  { states: 'the international form passes undecoded', check: 'papers.hull-number', values: registered, given: hull('FR-XYZ12345D404'), outcome: 'international', verdict: 'pass' },
  { states: 'a model year two years off the boat is an advisory', check: 'papers.hull-number', values: registered, given: hull('ABC12345D404', { builtYear: 2006 }), outcome: 'year differs', verdict: 'advisory' },
  { states: 'ten characters are a query', check: 'papers.hull-number', values: { read: 'another', number: 'ABC123D404' }, outcome: 'bad length', verdict: 'advisory' },
  { states: 'digits for the maker are a query', check: 'papers.hull-number', values: { read: 'another', number: '12312345D404' }, outcome: 'bad maker', verdict: 'advisory' },
  { states: 'an I in the serial is a query', check: 'papers.hull-number', values: { read: 'another', number: 'ABC1234ID404' }, outcome: 'bad serial', verdict: 'advisory' },
  { states: 'N is no month', check: 'papers.hull-number', values: { read: 'another', number: 'ABC12345N404' }, outcome: 'bad month', verdict: 'advisory' },
  { states: 'a letter in the year is a query', check: 'papers.hull-number', values: { read: 'another', number: 'ABC12345D4X4' }, outcome: 'bad year', verdict: 'advisory' },
  { states: 'no hull number is an advisory', check: 'papers.hull-number', values: { read: 'none found' }, outcome: 'none found', verdict: 'advisory' },
  { states: 'no hull number entered is not seen', check: 'papers.hull-number', values: registered, outcome: 'not entered', verdict: 'not seen' },
  { states: 'a legible placard passes', check: 'papers.tyre-placard', values: { condition: 'legible' }, given: rated, outcome: 'legible', verdict: 'pass' },
  { states: 'cargo of 1500 kg fits 2000 kg less 500 kg', check: 'papers.tyre-placard', values: { condition: 'legible', cargo: 1_500 }, given: rated, outcome: 'legible', verdict: 'pass' },
  { states: 'cargo of 1520 kg is within the slack for fittings', check: 'papers.tyre-placard', values: { condition: 'legible', cargo: 1_520 }, given: rated, outcome: 'legible', verdict: 'pass' },
  { states: 'cargo of 1521 kg is too high', check: 'papers.tyre-placard', values: { condition: 'legible', cargo: 1_521 }, given: rated, outcome: 'cargo too high', verdict: 'advisory' },
  { states: 'cargo is not compared while the rating is unknown', check: 'papers.tyre-placard', values: { condition: 'legible', cargo: 5_000 }, outcome: 'legible', verdict: 'pass' },
  { states: 'an unreadable placard is an advisory', check: 'papers.tyre-placard', values: { condition: 'unreadable' }, outcome: 'unreadable', verdict: 'advisory' },
  { states: 'a missing placard is an advisory', check: 'papers.tyre-placard', values: { condition: 'missing' }, outcome: 'missing', verdict: 'advisory' },
  { states: '1700 kg weighed on 2000 kg keeps 15 % and passes', check: 'papers.loaded-mass', values: { basis: 'weighed', loaded: 1_700 }, given: rated, outcome: 'within', verdict: 'pass' },
  { states: '1701 kg weighed on 2000 kg is an advisory', check: 'papers.loaded-mass', values: { basis: 'weighed', loaded: 1_701 }, given: rated, outcome: 'little reserve', verdict: 'advisory' },
  { states: '2000 kg weighed on 2000 kg is still an advisory', check: 'papers.loaded-mass', values: { basis: 'weighed', loaded: 2_000 }, given: rated, outcome: 'little reserve', verdict: 'advisory' },
  { states: '2001 kg weighed on 2000 kg fails', check: 'papers.loaded-mass', values: { basis: 'weighed', loaded: 2_001 }, given: rated, outcome: 'over', verdict: 'fail', by: 'before it is towed' },
  { states: 'a sum from papers within the rating passes as a sum from papers', check: 'papers.loaded-mass', values: { basis: 'from papers', loaded: 1_700 }, given: rated, outcome: 'within on paper', verdict: 'pass' },
  { states: 'a sum from papers with little reserve is an advisory', check: 'papers.loaded-mass', values: { basis: 'from papers', loaded: 1_974.8 }, given: rated, outcome: 'little reserve on paper', verdict: 'advisory' },
  { states: 'a sum from papers over the rating is an estimate: advisory, weigh it', check: 'papers.loaded-mass', values: { basis: 'from papers', loaded: 2_001 }, given: rated, outcome: 'over on paper', verdict: 'advisory', by: 'before it is towed' },
  { states: 'without a rating it cannot be worked out', check: 'papers.loaded-mass', values: { basis: 'weighed', loaded: 1_700 }, outcome: 'rating unknown', verdict: 'not seen' },
  { states: 'a mass without its basis leaves it open', check: 'papers.loaded-mass', values: { loaded: 1_700 }, given: rated, outcome: undefined, verdict: 'not seen' },
  { states: '1530 kg on axles rated 1800 kg pass', check: 'papers.axle-load', values: { axles: 1_530 }, given: rated, outcome: 'within', verdict: 'pass' },
  { states: '1531 kg on axles rated 1800 kg is an advisory', check: 'papers.axle-load', values: { axles: 1_531 }, given: rated, outcome: 'little reserve', verdict: 'advisory' },
  { states: '1801 kg on axles rated 1800 kg fails', check: 'papers.axle-load', values: { axles: 1_801 }, given: rated, outcome: 'over', verdict: 'fail' },
  { states: 'axle ratings unknown: cannot be worked out', check: 'papers.axle-load', values: { axles: 1_800 }, given: { trailer: { axleRatingKg: 900 } }, outcome: 'rating unknown', verdict: 'not seen' },
  { states: 'GVWR 3,500 lb, axle 3,150 lb, coupling 350 lb: consistent (NHTSA letter 1976)', check: 'papers.axle-ratings', values: { coupling: 350 * lb }, given: letter, outcome: 'with the coupling load', verdict: 'pass' },
  { states: 'one pound less on the coupling is short', check: 'papers.axle-ratings', values: { coupling: 349 * lb }, given: letter, outcome: 'short', verdict: 'fail' },
  { states: 'GVWR 3,500 lb, axle 3,000 lb, coupling 350 lb fails (NHTSA letter 1976)', check: 'papers.axle-ratings', values: { coupling: 350 * lb }, given: { trailer: { maximumMassKg: 3_500 * lb, axleRatingKg: 3_000 * lb, axleCount: 1 } }, outcome: 'short', verdict: 'fail' },
  { states: 'axles rated for all of the maximum mass pass', check: 'papers.axle-ratings', values: { coupling: 0 }, given: { trailer: { maximumMassKg: 1_800, axleRatingKg: 900, axleCount: 2 } }, outcome: 'axles carry all', verdict: 'pass' },
  { states: 'unknown ratings: cannot be worked out', check: 'papers.axle-ratings', values: { coupling: 100 }, outcome: 'rating unknown', verdict: 'not seen' },
]

const choices: readonly (readonly [string, ByVerdict])[] = [
  ['papers.identification-plate', { pass: ['legible'], advisory: ['hard to read'], fail: ['missing', 'altered'] }],
  ['papers.number-matches', { pass: ['matches'], fail: ['differs', 'no number on the frame'], 'not seen': ['papers not shown'] }],
  ['papers.owner', { pass: ['agrees'], advisory: ['another name', 'lien or finance'], 'not seen': ['not shown'] }],
  ['papers.registration', { pass: ['current and matching'], advisory: ['hard to read', 'expired'], fail: ['does not match', 'missing'], 'not applicable': ['not required'] }],
  ['papers.periodic-test', { pass: ['valid'], fail: ['expired'], 'not applicable': ['not required'], 'not seen': ['not shown'] }],
  ['papers.recall', { pass: ['none open'], advisory: ['open recall'], 'not seen': ['not looked up'] }],
  ['papers.rating-plate', { pass: ['legible'], advisory: ['partly legible'], fail: ['differs from papers', 'missing'] }],
]

describe('papers and plates', () => {
  it.each(cases)('$check: $states', (one) => {
    expect(() => expectCase(one)).not.toThrow()
  })
  it.each(choices)('%s: each choice has its verdict', (id, expected) => {
    expect(() => expectChoices(id, expected)).not.toThrow()
  })
  it('every way a measured check can come out is tested', () => {
    expect(() => expectEveryOutcomeReached('papers', cases)).not.toThrow()
  })

  it('the yearly commercial inspection is asked in the United States, the periodic test in Europe', () => {
    expect(askedOf({}, 'us')).toContain('papers.annual-inspection')
    expect(askedOf({}, 'us')).not.toContain('papers.periodic-test')
    expect(askedOf({}, 'eu')).toContain('papers.periodic-test')
    expect(askedOf({}, 'eu')).not.toContain('papers.annual-inspection')
  })

  it('the tyre placard is asked up to 10,000 lb, and while the rating is unknown', () => {
    expect(askedOf({}, 'us')).toContain('papers.tyre-placard')
    expect(askedOf({ maximumMassKg: 10_000 * lb }, 'us')).toContain('papers.tyre-placard')
    expect(askedOf({ maximumMassKg: 10_001 * lb }, 'us')).not.toContain('papers.tyre-placard')
  })
})
