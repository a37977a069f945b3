import type { Strap } from '../../../shared-logic/rig/tie-down'
import type { Case, Situation } from './judged'

/**
 * A trailer of 500 kg balanced on its axle 5 m behind the ball, and a boat of 1,500 kg set so that `share` of the 2,000 kg rests on the ball.
 * Source: statics, moments about the axle.
 */
const lever = (share: number, more: Situation = {}): Situation => ({
  ...more,
  trailer: { massKg: 500, ballToAxleM: 5, axleCount: 1, maximumMassKg: 2_500, axleRatingKg: 2_300, tyre: { loadIndex: 110 }, ...more.trailer },
  boat: { dryMassKg: 1_500, engine: 'none', lengthM: 6, ...more.boat },
  more: { loading: { trailerCentreAftOfBallM: 5, stemAftOfBallM: 1, boatCentreAftOfStemM: 4 - (5 * 2_000 * share) / 1_500 }, ...more.more },
})

const loadingOf = (share: number) => lever(share).more?.loading
const scales = (couplingKg: number, axlesKg: number): Situation['more'] => ({ weighings: [{ method: 'tongue and axles', date: '2025-05-01', couplingKg, axlesKg }] })
const sums = { basis: 'worked out' }
const plated = (maximumMassKg: number): Situation => lever(0.1, { trailer: { maximumMassKg } })
const axleRated = (axleRatingKg: number): Situation => lever(0.1, { trailer: { axleRatingKg } })

export const paperSumsCases: readonly Case[] = [
  { states: '2,000 kg worked out on 2,353 kg keeps 15 %', check: 'papers.loaded-mass', values: sums, given: plated(2_353), outcome: 'within on paper', verdict: 'pass' },
  { states: '2,000 kg worked out on 2,352 kg is an advisory', check: 'papers.loaded-mass', values: sums, given: plated(2_352), outcome: 'little reserve on paper', verdict: 'advisory' },
  { states: '2,000 kg worked out on 1,999 kg never fails: weigh it', check: 'papers.loaded-mass', values: sums, given: plated(1_999), outcome: 'over on paper', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a weighing on record goes before the sum, and fails over the rating', check: 'papers.loaded-mass', values: sums, given: lever(0.1, { trailer: { maximumMassKg: 2_100 }, more: { loading: loadingOf(0.1), ...scales(210, 1_891) } }), outcome: 'over', verdict: 'fail' },
  { states: 'worked out without the boat’s mass is not seen', check: 'papers.loaded-mass', values: sums, given: { trailer: { massKg: 500, maximumMassKg: 2_000 }, boat: {} }, outcome: 'not worked out', verdict: 'not seen' },
  { states: 'no plate: the total worked out is told and not judged', check: 'papers.loaded-mass', values: sums, given: { ...lever(0.1), trailer: { massKg: 500 } }, outcome: 'rating unknown', verdict: 'not seen' },
  { states: '1,800 kg on the axles by the sums keep 15 % of 2,118 kg', check: 'papers.axle-load', values: sums, given: axleRated(2_118), outcome: 'within on paper', verdict: 'pass' },
  { states: '1,800 kg on the axles by the sums keep less than 15 % of 2,117 kg', check: 'papers.axle-load', values: sums, given: axleRated(2_117), outcome: 'little reserve on paper', verdict: 'advisory' },
  { states: '1,800 kg on axles rated 1,799 kg by the sums ask for the scale', check: 'papers.axle-load', values: sums, given: axleRated(1_799), outcome: 'over on paper', verdict: 'advisory', by: 'before it is towed' },
  { states: 'a reading entered goes before the sums', check: 'papers.axle-load', values: { ...sums, axles: 2_301 }, given: axleRated(2_300), outcome: 'over', verdict: 'fail' },
  { states: 'axles without a place cannot be worked out', check: 'papers.axle-load', values: sums, given: { trailer: { massKg: 500, axleRatingKg: 900, axleCount: 2 } }, outcome: 'not worked out', verdict: 'not seen' },
  { states: 'weighed, but nothing entered, leaves it open', check: 'papers.axle-load', values: { basis: 'weighed' }, given: axleRated(2_300), outcome: undefined, verdict: 'not seen' },
]

const shareCase = (states: string, couplingKg: number, outcome: string, verdict: Case['verdict']): Case => ({ states, check: 'papers.coupling-share', values: { basis: 'weighed', coupling: couplingKg, total: 2_000 }, given: lever(0.1), outcome, verdict })
const reckonedCase = (states: string, share: number, outcome: string, verdict: Case['verdict'], given: Situation = lever(share)): Case => ({ states, check: 'papers.coupling-share', values: sums, given, outcome: `${outcome} on paper`, verdict })
const marked = (share: number): Situation => lever(share, { more: { loading: loadingOf(share), couplingRatings: { ballStaticKg: 200 } } })

/** Bands: common practice, no source. */
export const couplingShareCases: readonly Case[] = [
  shareCase('140 kg of 2,000 kg is 7 % and passes', 140, 'within', 'pass'),
  shareCase('139 kg is under 7 %', 139, 'light', 'advisory'),
  shareCase('100 kg is 5 %: still light', 100, 'light', 'advisory'),
  shareCase('99 kg is very light', 99, 'very light', 'advisory'),
  shareCase('80 kg is 4 %: very light', 80, 'very light', 'advisory'),
  shareCase('79 kg is below 4 % and fails', 79, 'too light', 'fail'),
  shareCase('300 kg is 15 % and passes', 300, 'within', 'pass'),
  shareCase('301 kg is over 15 %', 301, 'heavy', 'advisory'),
  shareCase('360 kg is 18 %: heavy', 360, 'heavy', 'advisory'),
  shareCase('361 kg is very heavy', 361, 'very heavy', 'advisory'),
  shareCase('more on the coupling than the whole is one wrong figure', 2_001, 'more than the whole', 'not seen'),
  { states: '201 kg weighed on a ball marked 200 kg fails', check: 'papers.coupling-share', values: { basis: 'weighed', coupling: 201, total: 2_000 }, given: marked(0.1), outcome: 'over the static limit', verdict: 'fail' },
  { states: '200 kg weighed on it passes', check: 'papers.coupling-share', values: { basis: 'weighed', coupling: 200, total: 2_000 }, given: marked(0.1), outcome: 'within', verdict: 'pass' },
  { states: 'a bridge showing less with the trailer coupled means a lifted coupling', check: 'papers.coupling-share', values: sums, given: lever(0.1, { more: { weighings: [{ method: 'weighbridge', date: '2025-05-01', towAloneKg: 2_100, towCoupledKg: 2_080, trailerAxlesKg: 2_000 }] } }), outcome: 'lifts', verdict: 'fail' },
  { states: 'a coupling scale alone, against a total that was only added up, is an advisory', check: 'papers.coupling-share', values: { basis: 'weighed', coupling: 79 }, given: lever(0.1), outcome: 'too light on paper', verdict: 'advisory', by: 'before it is towed' },
  reckonedCase('10 % reckoned passes', 0.1, 'within', 'pass'),
  reckonedCase('6.9 % reckoned is light', 0.069, 'light', 'advisory'),
  reckonedCase('4.9 % reckoned is very light', 0.049, 'very light', 'advisory'),
  reckonedCase('3.9 % reckoned asks for the scale before towing', 0.039, 'too light', 'advisory'),
  reckonedCase('a lifted coupling by the sums asks for the scale', -0.01, 'lifts', 'advisory'),
  reckonedCase('15.1 % reckoned is heavy', 0.151, 'heavy', 'advisory'),
  reckonedCase('18.1 % reckoned is very heavy', 0.181, 'very heavy', 'advisory'),
  reckonedCase('202 kg reckoned on a ball marked 200 kg asks for the scale', 0.101, 'over the static limit', 'advisory', marked(0.101)),
  { states: 'without places nothing is said of the share', check: 'papers.coupling-share', values: sums, given: { trailer: { massKg: 500 }, boat: { dryMassKg: 900 } }, outcome: 'not worked out', verdict: 'not seen' },
  { states: 'weighed, but no reading, leaves it open', check: 'papers.coupling-share', values: { basis: 'weighed' }, given: lever(0.1), outcome: undefined, verdict: 'not seen' },
]

const ownLoad = { marking: 'as the record', against: 'load worked out' }
/** 1,800 kg on one axle: 900 kg a tyre. Index 110 carries 1,060 kg, 109 1,030 kg, 104 900 kg, 103 875 kg (published load index tables). */
const tyred = (loadIndex: number, more: Situation = {}): Situation => ({ ...lever(0.1, { trailer: { tyre: { loadIndex }, axleRatingKg: 1_700 }, ...more }), position: 'axle 1' })

export const tyreLoadCases: readonly Case[] = [
  { states: '900 kg on a tyre of 1,060 kg keeps 15 %', check: 'wheels.load', values: ownLoad, given: tyred(110), outcome: 'carries its load', verdict: 'pass' },
  { states: '900 kg on a tyre of 1,030 kg keeps less', check: 'wheels.load', values: ownLoad, given: tyred(109), outcome: 'little reserve', verdict: 'advisory' },
  { states: '900 kg on a tyre of 900 kg is not yet over', check: 'wheels.load', values: ownLoad, given: tyred(104), outcome: 'little reserve', verdict: 'advisory' },
  { states: '900 kg reckoned on a tyre of 875 kg asks for the scale', check: 'wheels.load', values: ownLoad, given: tyred(103), outcome: 'overloaded on paper', verdict: 'advisory', by: 'before it is towed' },
  { states: '880 kg weighed on one tyre of 875 kg fails', check: 'wheels.load', values: ownLoad, given: tyred(103, { more: { weighings: [{ method: 'each axle', date: '2025-05-01', axles: [{ leftKg: 880, rightKg: 800 }] }] } }), outcome: 'overloaded', verdict: 'fail' },
  { states: 'no load on record cannot be worked out', check: 'wheels.load', values: ownLoad, given: { trailer: { tyre: { loadIndex: 110 }, axleRatingKg: 1_700, axleCount: 1 }, position: 'axle 1' }, outcome: 'load not worked out', verdict: 'not seen' },
  { states: 'tyres below the axle’s rating fail however little rests on them', check: 'wheels.load', values: ownLoad, given: lever(0.1, { trailer: { tyre: { loadIndex: 110 }, axleRatingKg: 2_200 } }), outcome: 'too little', verdict: 'fail' },
]

const ratedCoupling = (couplingRatings: NonNullable<Situation['more']>['couplingRatings']): Situation => ({ trailer: { maximumMassKg: 2_000 }, more: { couplingRatings } })
/** What holds 2,000 kg: its weight, 2,000 kg × 9.80665 m/s². */
const weightOf2000 = 19_614

export const couplerSumsCases: readonly Case[] = [
  { states: 'a coupler recorded for 2,000 kg fits a trailer of 2,000 kg', check: 'coupler.class', values: { marking: 'as recorded' }, given: ratedCoupling({ couplerRatingKg: 2_000 }), outcome: 'capacity fits class', verdict: 'pass' },
  { states: 'a coupler recorded for 1,999 kg does not', check: 'coupler.class', values: { marking: 'as recorded' }, given: ratedCoupling({ couplerRatingKg: 1_999 }), outcome: 'capacity too small', verdict: 'fail' },
  { states: 'no capacity on record is not seen', check: 'coupler.class', values: { marking: 'as recorded' }, given: ratedCoupling({}), outcome: 'not recorded', verdict: 'not seen' },
  { states: 'a chain recorded at its weight and more holds a trailer of 2,000 kg', check: 'coupler.chain-strength', values: { marking: 'as recorded' }, given: ratedCoupling({ chainBreakingForceN: weightOf2000 * 1.2 }), outcome: 'each holds', verdict: 'pass' },
  { states: 'two chains that together fall short of its weight are too weak', check: 'coupler.chain-strength', values: { marking: 'as recorded' }, given: ratedCoupling({ chainBreakingForceN: (weightOf2000 / 2) * 0.99 }), outcome: 'too weak', verdict: 'fail' },
  { states: 'no chain on record is not seen', check: 'coupler.chain-strength', values: { marking: 'as recorded' }, given: ratedCoupling({}), outcome: 'not recorded', verdict: 'not seen' },
]

export const brakeSumsCases: readonly Case[] = [
  { states: '1,750 kg behind a recorded vehicle of 1,000 kg is allowed (49 CFR 393.48(d): 1.75 times)', check: 'brakes.surge-match', values: { vehicle: 'as recorded' }, given: { trailer: { brakes: 'surge', maximumMassKg: 1_750 }, more: { couplingRatings: { towVehicleMaximumKg: 1_000 } } }, outcome: 'allowed', verdict: 'pass' },
  { states: '1,751 kg behind it is not', check: 'brakes.surge-match', values: { vehicle: 'as recorded' }, given: { trailer: { brakes: 'surge', maximumMassKg: 1_751 }, more: { couplingRatings: { towVehicleMaximumKg: 1_000 } } }, outcome: 'too light a vehicle', verdict: 'advisory' },
  { states: 'no vehicle on record is not seen', check: 'brakes.surge-match', values: { vehicle: 'as recorded' }, given: { trailer: { brakes: 'surge', maximumMassKg: 1_750 } }, outcome: 'not recorded', verdict: 'not seen' },
]

const strap = (position: string, place: Strap['place'], ratedN: number, leads: 'forward' | 'aft', side: 'left' | 'right', offDegrees: number): Strap => ({
  position, place, route: 'direct', ratedN, angles: { downRad: Math.PI / 6, offRad: (offDegrees * Math.PI) / 180, leads, side },
})
/** Two transom straps and a bow tie on a boat of 1,000 kg, weight 9,807 N; half of it is 4,903 N, and direct straps count half (49 CFR 393.106(d)). */
const tied = (bowN: number, transomN: number, more: Partial<NonNullable<NonNullable<Situation['more']>['tieDown']>> = {}): Situation => ({
  trailer: { supports: 'bunks' }, boat: { dryMassKg: 1_000, engine: 'none', lengthM: 6 },
  more: { tieDown: { friction: 0.3, straps: [strap('bow', 'bow tie', bowN, 'aft', 'left', 0), strap('left', 'transom', transomN, 'forward', 'left', 45), strap('right', 'transom', transomN, 'forward', 'right', 45)], ...more } },
})
const unrated = (tied(6_000, 6_000).more?.tieDown?.straps ?? []).map(({ position, place, route, angles }): Strap => ({ position, place, route, ...(angles && { angles }) }))
const recorded = { straps: 'as recorded' }

export const tieDownSumsCases: readonly Case[] = [
  { states: 'straps on record counting half of the boat’s weight are enough', check: 'tie-down.total', values: sums, given: tied(3_270, 3_270), outcome: 'enough', verdict: 'pass' },
  { states: 'counting just less is an advisory, for the boat was not weighed', check: 'tie-down.total', values: sums, given: tied(3_268, 3_268), outcome: 'short on paper', verdict: 'advisory' },
  { states: 'a winch strap on record is no tie-down', check: 'tie-down.total', values: sums, given: tied(3_268, 3_268, { straps: [...(tied(3_268, 3_268).more?.tieDown?.straps ?? []), strap('winch', 'winch', 20_000, 'forward', 'left', 0)] }), outcome: 'short on paper', verdict: 'advisory' },
  { states: 'figures entered go before those on record', check: 'tie-down.total', values: { ...sums, boat: 1_000, bow: 9_000, route: 'none' }, given: tied(5_000, 5_000), outcome: 'short', verdict: 'advisory', by: 'before it is towed' },
  { states: 'no strap on record cannot be worked out', check: 'tie-down.total', values: sums, given: { boat: { dryMassKg: 1_000, engine: 'none' } }, outcome: 'not worked out', verdict: 'not seen' },
  { states: 'three straps on record hold a boat of 20 ft that nothing blocks', check: 'tie-down.number', values: sums, given: tied(3_270, 3_270), outcome: 'enough', verdict: 'pass' },
  { states: 'two do not', check: 'tie-down.number', values: sums, given: tied(3_270, 3_270, { straps: [strap('bow', 'bow tie', 5_000, 'aft', 'left', 0), strap('left', 'transom', 5_000, 'forward', 'left', 45)] }), outcome: 'too few', verdict: 'advisory', by: 'before it is towed' },
  { states: 'no strap on record cannot be counted', check: 'tie-down.number', values: sums, given: { boat: { lengthM: 6 } }, outcome: 'not worked out', verdict: 'not seen' },
  { states: 'the number needed waits for the boat’s length', check: 'tie-down.number', values: sums, given: { ...tied(3_270, 3_270), boat: { dryMassKg: 1_000, engine: 'none' } }, outcome: 'length unknown', verdict: 'not seen' },
  { states: 'three strong straps hold each way', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000), outcome: 'holds', verdict: 'pass' },
  { states: 'a weak bow tie falls short forward', check: 'tie-down.directions', values: recorded, given: tied(500, 6_000), outcome: 'short forward', verdict: 'advisory', by: 'before it is towed' },
  { states: 'nothing that pulls to the left leaves the way to the right short', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000, { friction: 0, straps: [strap('bow', 'bow tie', 9_000, 'aft', 'left', 0), strap('left', 'transom', 9_000, 'forward', 'left', 0), strap('right', 'transom', 9_000, 'forward', 'right', 80)] }), outcome: 'short right', verdict: 'advisory' },
  { states: 'and nothing that pulls to the right the way to the left', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000, { friction: 0, straps: [strap('bow', 'bow tie', 9_000, 'aft', 'left', 0), strap('right', 'transom', 9_000, 'forward', 'right', 0), strap('left', 'transom', 9_000, 'forward', 'left', 80)] }), outcome: 'short left', verdict: 'advisory' },
  { states: 'a bow tie alone falls short rearward', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000, { friction: 0.6, straps: [strap('bow', 'bow tie', 9_000, 'aft', 'left', 0)] }), outcome: 'short rearward', verdict: 'advisory' },
  { states: 'straps that lead level hold nothing down', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000, { friction: 1, straps: ['left' as const, 'right' as const].map((side) => ({ ...strap(side, 'transom', 9_000, 'forward', side, 45), angles: { downRad: 0, offRad: Math.PI / 4, leads: 'forward' as const, side } })) }), outcome: 'short up', verdict: 'advisory' },
  { states: 'what is left to a bow stop of unknown strength is said', check: 'tie-down.directions', values: recorded, given: tied(500, 6_000, { bowStopBlocks: true }), outcome: 'rests on the bow stop', verdict: 'advisory' },
  { states: 'a rated bow stop holds its part', check: 'tie-down.directions', values: recorded, given: tied(500, 6_000, { bowStopBlocks: true, bowStopRatedN: 5_000 }), outcome: 'holds', verdict: 'pass' },
  { states: 'no strap on record waits', check: 'tie-down.directions', values: recorded, given: { boat: { dryMassKg: 1_000, engine: 'none' } }, outcome: 'waits', verdict: 'not seen' },
  { states: 'straps without a rating wait', check: 'tie-down.directions', values: recorded, given: tied(6_000, 6_000, { straps: unrated }), outcome: 'waits', verdict: 'not seen' },
  { states: 'straps set otherwise than recorded are not spoken for', check: 'tie-down.directions', values: { straps: 'differ from the record' }, given: tied(6_000, 6_000), outcome: 'differ', verdict: 'not seen' },
]
