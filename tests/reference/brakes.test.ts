import { describe, expect, it } from 'vitest'
import { longTravelM, strokeReserve } from '../../shared-logic/rules/actuator'
import { leastLiningM } from '../../shared-logic/rules/brake-lining'
import { brakeThresholds, callsForBrakes, overrunOnsetN, restsTooHeavily, surgeBrakesAllowed } from '../../shared-logic/rules/brake-thresholds'
import { breakawayHoldS } from '../../shared-logic/rules/breakaway'
import { defaultSumsSettings } from '../../shared-logic/sums/settings'
import { sumsOf } from '../../shared-logic/sums/sums'
import { en } from '../../shared-logic/words/en'
import { saySums } from '../../shared-logic/words/sums'
import { judged } from '../shared-logic/checks/judged'

const lb = (pounds: number): number => pounds * 0.45359237

describe('surge brakes and towing vehicle (49 CFR 393.48(d); ratings in lb)', () => {
  it.each([
    [10_500, 6_000, true], [10_501, 6_000, false], [18_750, 15_000, true], [12_000, 6_800, false], [12_001, 9_000, false],
    [12_001, 10_000, true], [20_001, 17_000, false], [11_500, 6_572, true], [11_500, 6_571, false], [20_000, 16_000, true],
  ])('a trailer of %i behind %i: allowed %s', (trailer, vehicle, allowed) => expect(surgeBrakesAllowed(lb(trailer), lb(vehicle))).toBe(allowed))
})

describe('when brakes are called for', () => {
  const federal = brakeThresholds['federal benchmark']
  it('2,900 lb, 900 lb of it on a vehicle whose axles weigh 4,000 lb: not called for, 22.5 % (49 CFR 393.42(b)(3))', () => {
    expect(callsForBrakes(federal, lb(2_900))).toBe(false)
    expect(restsTooHeavily(lb(900), lb(4_000))).toBe(false)
  })
  it('over 40 % resting on the vehicle calls for brakes (49 CFR 393.42(b)(3))', () => {
    expect(restsTooHeavily(lb(1_600), lb(4_000))).toBe(false)
    expect(restsTooHeavily(lb(1_601), lb(4_000))).toBe(true)
  })
  it('3,001 lb without brakes does not meet the federal benchmark (49 CFR 393.42)', () => {
    expect(callsForBrakes(federal, lb(3_001))).toBe(true)
    expect(federal.binding).toBe(false)
  })
  it('a utility trailer of 3,000 lb of 1990 has to have them in California (Vehicle Code 26302(b))', () => expect(callsForBrakes(brakeThresholds.California, lb(3_000), 1990)).toBe(true))
  it.each([[3_000, 'called for by law', 'fail'], [2_999, 'not called for', 'pass']] as const)('without any, %i lb in California: %s (Vehicle Code 26302(b))', (massLb, outcome, verdict) => {
    expect(judged('brakes.required', { fitted: 'none', place: 'California' }, { trailer: { maximumMassKg: lb(massLb), builtYear: 1990 } })).toMatchObject({ outcome, verdict })
  })
  it('without any, 3,001 lb does not meet the benchmark, which binds nobody here: an advisory (49 CFR 393.42)', () => {
    expect(judged('brakes.required', { fitted: 'none' }, { trailer: { maximumMassKg: lb(3_001) } })).toMatchObject({ outcome: 'called for by the benchmark', verdict: 'advisory' })
  })
  it.each([[1996, false], [1997, true], [undefined, true]])('an unbraked trailer of 750 kg built in %s has to have a secondary coupling: %s (UK trailer trade association)', (builtYear, called) => {
    const trailer = { maximumMassKg: 750, brakes: 'none' as const, ...(builtYear !== undefined && { builtYear }) }
    expect(sumsOf({ name: 'Light', trailer }, 'eu', defaultSumsSettings).brakes.secondaryCoupling).toBe(called)
    expect(sumsOf({ name: 'Light', trailer: { ...trailer, maximumMassKg: 751 } }, 'eu', defaultSumsSettings).brakes.secondaryCoupling).toBe(false)
    expect(sumsOf({ name: 'Light', trailer }, 'us', defaultSumsSettings).brakes.secondaryCoupling).toBe(false)
  })
  it.each([[3500, false], [3501, true]])('overrun brakes alone on %i kg are asked about: %s (UN Regulation 13, category O2; from memory)', (maximumMassKg, asked) => {
    const brakes = sumsOf({ name: 'Heavy', trailer: { maximumMassKg, brakes: 'surge', brakedAxleCount: 2, axleCount: 2 } }, 'eu', defaultSumsSettings)
    expect(brakes.brakes.overrunBeyond).toBe(asked)
    expect(saySums(en, brakes, 'metric', undefined).flatMap(({ lines }) => lines).some(({ text, verdict }) => text.startsWith('Overrun brakes alone') && verdict === 'advisory')).toBe(asked)
  })
  it('one of before 1966 has not', () => expect(callsForBrakes(brakeThresholds.California, lb(3_000), 1965)).toBe(false))
  it('a camp trailer of 1,500 lb has to have them in California (Vehicle Code 26303)', () => {
    expect(callsForBrakes(brakeThresholds['California, camp trailer'], lb(1_500))).toBe(true)
    expect(callsForBrakes(brakeThresholds['California, camp trailer'], lb(1_499))).toBe(false)
  })
  it('over 3,000 lb in the District of Columbia (Municipal Regulations 18-721)', () => {
    expect(callsForBrakes(brakeThresholds['District of Columbia'], lb(3_000))).toBe(false)
    expect(callsForBrakes(brakeThresholds['District of Columbia'], lb(3_001))).toBe(true)
  })
  it('over 750 kg in Europe (UK trailer trade association; category O1 of Regulation (EU) 2018/858)', () => {
    expect([750, 751].map((massKg) => callsForBrakes(brakeThresholds.Europe, massKg))).toEqual([false, true])
  })
})

describe('breakaway, lining, actuator', () => {
  it('holds 15 minutes: 14 fails, 15 passes (49 CFR 393.43(d); District of Columbia 18-721)', () => {
    expect(breakawayHoldS).toBe(900)
    expect([14, 15].map((minutes) => judged('brakes.breakaway-hold', { held: minutes * 60 }).verdict)).toEqual(['fail', 'pass'])
  })
  it('lining 3.2, 2.0, 1.5 mm: pass, advisory, fail (1.6 mm or 1/16 in: 49 CFR 393.47(d); 3 mm: common practice, no source)', () => {
    expect(leastLiningM.bonded).toBeCloseTo(0.0254 / 16, 9)
    expect([0.0032, 0.002, 0.0015].map((thickness) => judged('brakes.lining', { thickness }).verdict)).toEqual(['pass', 'advisory', 'fail'])
  })
  it('riveted lining 1/32 in over the rivets (49 CFR 570.59(c))', () => expect(leastLiningM.riveted).toBeCloseTo(0.00079375, 9))
  it('actuator travel 25 and 26 mm: pass and advisory (1 in: surge brake manuals of two trailer makers)', () => {
    expect(longTravelM).toBe(0.0254)
    expect([0.025, 0.026].map((travel) => judged('brakes.actuator-travel', { travel }).verdict)).toEqual(['pass', 'advisory'])
  })
  it('18 of 90 mm leaves 80 %; 70 of 90 leaves 22 % and fails (one third: common practice, no source)', () => {
    expect(strokeReserve(0.018, 0.09)).toBeCloseTo(0.8, 9)
    expect(strokeReserve(0.07, 0.09)).toBeCloseTo(0.2222, 4)
    expect([0.018, 0.03, 0.07].map((travel) => judged('brakes.actuator-travel', { travel, stroke: 0.09 }).verdict)).toEqual(['pass', 'advisory', 'fail'])
  })
  it('an overrun trailer of 1500 kg begins to brake at 294 to 589 N (UN Regulation 13, Annex 12; from memory)', () => {
    const onset = overrunOnsetN(1500)
    expect([Math.round(onset.fromN), Math.round(onset.toN)]).toEqual([294, 589])
  })
})
