import { describe, expect, it } from 'vitest'
import { standingOf, standingOfShare, verdictOfStanding } from '../../shared-logic/balance/bands'
import { leverOf, type Mass } from '../../shared-logic/balance/lever'
import { axleForShareM, moveForShareM } from '../../shared-logic/balance/reach-target'
import { boatBySlidingKg, couplingByBeamKg, offsetToRightM, weighedOnBridge, weighedOnPads } from '../../shared-logic/balance/weighing'
import { defaultSumsSettings } from '../../shared-logic/sums/settings'

// Statics (moments about the ball), worked by hand; figures rounded as printed, compared to half the last digit.
const tandem: readonly Mass[] = [
  { id: 'trailer', massKg: 450, atM: 3.6 },
  { id: 'boat', massKg: 1100, atM: 4.75 },
  { id: 'fuel', massKg: 140, atM: 5.1 },
  { id: 'gear', massKg: 60, atM: 4 },
]

describe('the lever, by statics', () => {
  it('carries 190.2 kg, 10.87 %, at the coupling', () => {
    const lever = leverOf(tandem, 5)
    expect(lever?.totalKg).toBe(1750)
    expect(lever?.centreM).toBeCloseTo(4.4566, 4)
    expect(lever?.couplingKg).toBeCloseTo(190.2, 1)
    expect((lever?.share ?? 0) * 100).toBeCloseTo(10.87, 2)
    expect(lever?.axleKg).toBeCloseTo(1559.8, 1)
  })
  it('carries 40.9 kg, 3.41 %, with a light nose', () => {
    const lever = leverOf([{ id: 'trailer', massKg: 300, atM: 3.2 }, { id: 'boat', massKg: 900, atM: 4.6 }], 4.4)
    expect(lever?.couplingKg).toBeCloseTo(40.9, 1)
    expect((lever?.share ?? 0) * 100).toBeCloseTo(3.41, 2)
  })
  it('lifts the ball when the centre of mass is aft of the axle', () => {
    expect(leverOf([{ id: 'all', massKg: 1000, atM: 5.2 }], 5)?.couplingKg).toBeLessThan(0)
  })
  it.each([
    [0.12, 'boat', 0.09], [0.1, 'boat', -0.069],
  ])('for a share of %f the %s moves %f m forward', (share, id, forwardM) => {
    expect(moveForShareM(tandem, 5, new Set([id]), share)).toBeCloseTo(forwardM, 3)
  })
  it('for 10 % the boat with fuel and gear goes back 58 mm', () => {
    expect(moveForShareM(tandem, 5, new Set(['boat', 'fuel', 'gear']), 0.1)).toBeCloseTo(-0.058, 3)
  })
  it('for 10 % the axle stands at 4.9517 m, its mass neglected; at 4.9478 m with an axle group of 120 kg', () => {
    expect(axleForShareM(tandem, 0.1)).toBeCloseTo(4.9517, 4)
    // The trailer's 450 kg include the axle group, which stood at 5.00 m.
    const rest = [{ id: 'trailer less axles', massKg: 330, atM: (450 * 3.6 - 120 * 5) / 330 }, ...tandem.slice(1)]
    expect(axleForShareM(rest, 0.1, 120)).toBeCloseTo(4.9478, 4)
  })
  it('for 12 % the axle goes back 64 mm, its mass neglected; 70 mm with an axle group of 120 kg', () => {
    expect((axleForShareM(tandem, 0.12) ?? 0) - 5).toBeCloseTo(0.064, 3)
    const rest = [{ id: 'trailer less axles', massKg: 330, atM: (450 * 3.6 - 120 * 5) / 330 }, ...tandem.slice(1)]
    expect((axleForShareM(rest, 0.12, 120) ?? 0) - 5).toBeCloseTo(0.07, 3)
  })
  it('2,000 kg with the centre at 4.5 m and the axle at 5.0 m: 200 kg; for 12 % the axle at 5.1136 m', () => {
    const masses = [{ id: 'all', massKg: 2000, atM: 4.5 }]
    expect(leverOf(masses, 5)?.couplingKg).toBeCloseTo(200, 9)
    expect(axleForShareM(masses, 0.12)).toBeCloseTo(5.1136, 4)
  })
  it('2,400 kg with 150 kg at the ball, boat 1,900 kg, axle at 5.2 m: 10 % wants the boat 0.2463 m forward', () => {
    const centreM = (5.2 * (2400 - 150)) / 2400
    const masses = [{ id: 'boat', massKg: 1900, atM: centreM }, { id: 'rest', massKg: 500, atM: centreM }]
    expect(moveForShareM(masses, 5.2, new Set(['boat']), 0.1)).toBeCloseTo(0.2463, 4)
  })
})

// Published in tongue-weight literature (boat owners' articles and forum derivations), units as printed there.
describe('published examples', () => {
  const foot = 0.3048
  const inch = 0.0254
  const pound = 0.45359237
  it.each([[2, 362], [3, 343], [4, 323]])('4,000 lb with 400 lb at the ball, axle at 16 ft moved %i in forward: %i lb', (forwardIn, expectedLb) => {
    const axleM = 16 * foot
    const masses = [{ id: 'all', massKg: 4000 * pound, atM: (axleM * 3600) / 4000 }]
    expect((leverOf(masses, axleM - forwardIn * inch)?.couplingKg ?? 0) / pound).toBeCloseTo(expectedLb, 0)
  })
  it('280 lb of 3,100 lb with the axle at 180 in: centre of gravity 164 in behind the ball', () => {
    const { centreM } = weighedOnBridge(0, 280, 2820, 180)
    expect(centreM).toBeCloseTo(163.74, 2)
    expect(180 - centreM).toBeCloseTo(16.26, 2)
  })
  it('the same rig for 160 lb: the axle to 172.65 in', () => {
    const axleIn = axleForShareM([{ id: 'all', massKg: 3100, atM: (180 * 2820) / 3100 }], 160 / 3100) ?? 0
    expect(axleIn).toBeCloseTo(172.65, 2)
    expect(180 - axleIn).toBeCloseTo(7.35, 2)
  })
  it.each([[1, 2, 255], [1, 3, 340]])('beam of %i and %i: a scale reading of 85 means %i', (a, b, expected) => {
    expect(couplingByBeamKg(85, a, b)).toBe(expected)
  })
  it('boat slid 18 in, axle to scale 180 in, 280 then 220 lb: the boat is 600 lb', () => {
    expect(boatBySlidingKg(180, 18, 280, 220)).toBe(600)
  })
})

describe('weighing, by statics', () => {
  it('pads: 171 kg at 0.45 m and 1,579 kg at 5.00 m: 1,750 kg, centre 4.5554 m, 155.6 kg when coupled', () => {
    const weighed = weighedOnPads(171, 0.45, 812 + 767, 5)
    expect(weighed.totalKg).toBe(1750)
    expect(weighed.centreM).toBeCloseTo(4.5554, 4)
    expect(weighed.couplingKg).toBeCloseTo(155.6, 1)
    expect((weighed.couplingKg / weighed.totalKg) * 100).toBeCloseTo(8.89, 2)
    // What the jockey wheel shows is a tenth more than what the coupling will carry.
    expect(171 / weighed.couplingKg).toBeCloseTo(1.1, 2)
  })
  it('812 kg left and 767 kg right on a 1.90 m track: 24.4 mm to the left', () => {
    expect(offsetToRightM(812, 767, 1.9, 1750)).toBeCloseTo(-0.0244, 4)
  })
  it('weighbridge 2,140, 2,322 and 1,568 kg: 182 kg of 1,750, 10.4 %', () => {
    const weighed = weighedOnBridge(2140, 2322, 1568, 5.2)
    expect(weighed).toMatchObject({ couplingKg: 182, totalKg: 1750 })
    expect(weighed.centreM).toBeCloseTo(4.6592, 4)
    expect((weighed.couplingKg / weighed.totalKg) * 100).toBeCloseTo(10.4, 1)
  })
})

// Common practice, no source: 7 to 15 % good, under 4 % a fail. The smallest static load marked: tongue-weight literature.
describe('verdict of the coupling load', () => {
  const bands = defaultSumsSettings.balance.us
  it.each([
    [-0.001, 'lifts', 'fail'], [0.0341, 'too light', 'fail'], [0.0399, 'too light', 'fail'], [0.04, 'very light', 'advisory'], [0.05, 'light', 'advisory'], [0.0699, 'light', 'advisory'],
    [0.07, 'within', 'pass'], [0.1087, 'within', 'pass'], [0.15, 'within', 'pass'], [0.1501, 'heavy', 'advisory'], [0.18, 'heavy', 'advisory'], [0.181, 'very heavy', 'advisory'],
  ] as const)('a share of %d is %s: %s', (share, standing, verdict) => {
    expect(standingOfShare(share, bands)).toBe(standing)
    expect(verdictOfStanding[standing]).toBe(verdict)
  })
  it('190 kg fail where bar and ball are marked 150 and the head 200 kg', () => {
    const standing = standingOf(0.1087, 190, bands, Math.min(150, 150, 200))
    expect(verdictOfStanding[standing]).toBe('fail')
    expect(standingOf(0.1087, 150, bands, 150)).toBe('within')
  })
  it('a centre of mass aft of the axle fails', () => expect(verdictOfStanding[standingOfShare(leverOf([{ id: 'all', massKg: 1000, atM: 5.2 }], 5)?.share ?? 1, bands)]).toBe('fail'))
})
