import { describe, expect, it } from 'vitest'
import { accelerations, directFrictionShare, holdingFactor, slidingForceN, strapsOverTopNeeded, strapTensionNeededN } from '../../shared-logic/lashing/direct-strap'
import { frictionUsed } from '../../shared-logic/lashing/friction'
import { methodsOf } from '../../shared-logic/lashing/methods'
import { tieDownPlanOf } from '../../shared-logic/lashing/plan'
import { pressedDownN } from '../../shared-logic/lashing/strap-forces'
import { plannedStrap } from '../../shared-logic/lashing/planned-strap'
import type { Strap } from '../../shared-logic/rig/tie-down'
import { breakingOfLashingCapacityN } from '../../shared-logic/rules/tie-down-capacity'
import { feet, pounds, poundsForce } from '../../shared-logic/units/us-customary'

const degrees = (value: number): number => (value * Math.PI) / 180
const angles = (down: number, off: number) => ({ downRad: degrees(down), offRad: degrees(off) })
const strap = (place: Strap['place'], down: number, off: number, leads: 'forward' | 'aft', more: Partial<Strap> = {}): Strap => ({
  position: place, place, route: 'direct', angles: { ...angles(down, off), leads, side: 'left' }, ...more,
})
const boatOf = (massKg: number, straps: readonly Strap[], friction: number) => ({ name: 'invented', trailer: {}, boat: { dryMassKg: massKg }, tieDown: { straps: [...straps], friction } })
const daN = (value: number): number => value * 10

describe('one strap, direct and over the top', () => {
  it('holds 2,500 daN directly and 240 daN by friction over the top (German insurers’ association, Securing cargo for the road: LC 2500 daN, STF 400 daN, friction 0.3)', () => {
    const over = plannedStrap(strap('amidships', 90, 0, 'aft', { route: 'over the top', tensionN: daN(400) }), 0)
    expect(plannedStrap(strap('bow tie', 0, 0, 'aft', { ratedN: daN(2500) }), 0).limitN).toBe(daN(2500))
    expect(0.3 * pressedDownN([over])).toBeCloseTo(daN(240), 6)
  })
  it('counts 0.3375 of a static friction of 0.45 beside direct lashings (CTU Code annex 7: 75 %)', () => expect(0.45 * directFrictionShare).toBeCloseTo(0.3375, 12))
  it.each([[0, 1000], [30, 866], [45, 707], [60, 500], [75, 259]])('of 1,000 N at %i degrees has a component of %i N (cosine)', (down, newton) => {
    expect(1000 * holdingFactor(angles(down, 0), 0)).toBeCloseTo(newton, 0)
  })
  it('a marked lashing capacity of 2,000 daN stands for a breaking force of at least 4,000 daN (EN 12195-2, as quoted)', () => {
    expect(breakingOfLashingCapacityN(daN(2000))).toBe(daN(4000))
  })
})

// Formula: EN 12195-1:2011 as restated in the German insurers' load securing handbook, 4.1.6: c G <= 0.75 mu G + n LC (X + 0.75 mu Z) / L.
// Worked by hand with g = 9.81 m/s2; the program's is the standard gravity, 9.80665, so its figures are brought to 9.81 for the comparison.
const at981 = (newton: number | undefined): number => ((newton ?? 0) * 9.81) / 9.80665

describe('direct lashing of 1,500 kg on friction 0.20', () => {
  it.each([
    ['forward at 0.8: two straps 30 degrees down, 20 off', 0.8, 30, 20, 2, 9565, 0.8888, 5381],
    ['rearward at 0.5: one strap 35 degrees down', 0.5, 35, 0, 1, 5150, 0.9052, 5690],
  ])('%s', (_, share, down, off, count, needed, factor, each) => {
    expect(Math.abs(at981(slidingForceN(1500, share, 0.2)) - needed)).toBeLessThan(0.6)
    expect(holdingFactor(angles(down, off), 0.2)).toBeCloseTo(factor, 4)
    expect(Math.abs(at981(strapTensionNeededN(1500, share, 0.2, angles(down, off), count)) - each)).toBeLessThan(0.6)
  })
  it('sideways a transom strap 40 degrees down and 20 off the long axis would need 14,369 N; one straight across at 45 degrees 6,334 N', () => {
    expect(holdingFactor(angles(40, 70), 0.2)).toBeCloseTo(0.358, 3)
    expect(Math.abs(at981(strapTensionNeededN(1500, 0.5, 0.2, angles(40, 70), 1)) - 14369)).toBeLessThan(5)
    expect(Math.abs(at981(strapTensionNeededN(1500, 0.5, 0.2, angles(45, 0), 1)) - 6334)).toBeLessThan(0.6)
  })
  it('the plan finds the same tension for each strap', () => {
    const bow = strap('bow tie', 30, 20, 'aft', { ratedN: 10_000 })
    const right = { ...bow, angles: { ...angles(30, 20), leads: 'aft' as const, side: 'right' as const } }
    const plan = tieDownPlanOf(boatOf(1500, [bow, right, strap('transom', 35, 0, 'forward', { ratedN: 10_000 })], 0.2), 'eu')
    const [forward, rearward] = plan.methods[0]?.directions ?? []
    expect(Math.abs(at981(forward?.ratingEachN) - 5381)).toBeLessThan(0.6)
    expect(Math.abs(at981(rearward?.ratingEachN) - 5690)).toBeLessThan(0.6)
  })
})

describe('over the top', () => {
  it.each([
    [1000, 0.5, 0.3, 60, 4000, 1.1, 1.04, 2],
    [1000, 0.8, 0.3, 60, 4000, 1.25, 2.95, 3],
    [1000, 0.8, 0.45, 90, 4000, 1.25, 1.19, 2],
  ])('%i kg at %f, friction %f, %i degrees, STF %i N, safety %f: %f, so %i straps (formula and 1.1: road transport union; worked by hand)', (mass, share, friction, down, tension, safety, exact, count) => {
    const needed = strapsOverTopNeeded(mass, share, friction, degrees(down), tension, safety)
    expect(needed?.exact).toBeCloseTo(exact, 2)
    expect(needed?.count).toBe(count)
  })
  it('counts 1.6 and 1.8 times friction, number and tension forward and else (load securing handbook 4.1.6, rounded there)', () => {
    const [eu] = methodsOf.eu
    expect(2 / eu.safety.forward).toBeCloseTo(1.6, 9)
    for (const direction of ['rearward', 'left', 'right'] as const) expect(2 / eu.safety[direction]).toBeCloseTo(1.8, 1)
  })
  it.each([[1, false], [2, true]])('%i of those straps hold 1,000 kg sideways: %s', (count, holds) => {
    const over = strap('amidships', 60, 90, 'aft', { route: 'over the top', tensionN: 4000, ratedN: 20_000 })
    const plan = tieDownPlanOf(boatOf(1000, Array.from({ length: count }, () => over), 0.3), 'eu')
    const left = plan.methods[0]?.directions.find(({ direction }) => direction === 'left')
    expect(left?.standing).toBe(holds ? 'holds' : 'short')
    expect(left?.heldN).toBeCloseTo(0.3 * 1000 * 9.80665 + (count * 2 * 0.3 * Math.sin(degrees(60)) * 4000) / 1.1, 6)
  })
})

describe('shares of gravity', () => {
  it('0.8 forward, 0.5 rearward and sideways (EN 12195-1, load securing handbook 4.1.6)', () => expect(accelerations).toEqual({ forward: 0.8, rearward: 0.5, sideways: 0.5 }))
  it.each([['us working', 1522.5, 1750, 875], ['us breaking', 2800, 1750, 1750]])('%s on 3,500 lb: %f, %f, %f lb, and 700 lb up (49 CFR 393.102)', (id, forward, rearward, sideways) => {
    const sum = tieDownPlanOf(boatOf(pounds(3500), [], 0.2), 'us').methods.find(({ method }) => method.id === id)
    expect(sum?.directions.map(({ neededN }) => Math.round((neededN / poundsForce(1)) * 10) / 10)).toEqual([forward, rearward, sideways, sideways, 700])
  })
  it.each([['carpet', 0.2], ['plastic', 0.15], ['wet', 0.15]] as const)('bunks, %s: friction %f (nearest entries of CTU Code annex 7 appendix 2)', (supportSurface, value) => {
    expect(frictionUsed({ supports: 'bunks' }, { straps: [], supportSurface }).value).toBe(value)
  })
  it('rollers: none (common practice, no source)', () => expect(frictionUsed({ supports: 'rollers' }, { straps: [] }).value).toBe(0))
})

const direct = (lb: number): Strap => strap('transom', 30, 20, 'forward', { ratedN: poundsForce(lb) })
const over = (lb: number): Strap => ({ ...direct(lb), route: 'over the top' })
const same = (lb: number): Strap => ({ ...direct(lb), route: 'back to the same side' })
const planFor = (lb: number, straps: readonly Strap[], ft = 18, bowStopBlocks = false) =>
  tieDownPlanOf({ name: 'invented', trailer: {}, boat: { dryMassKg: pounds(lb), lengthM: feet(ft) }, tieDown: { straps: [...straps], bowStopBlocks } }, 'us')

describe('plans by 49 CFR 393.106(d) and 393.110', () => {
  it.each([
    ['bow strap of 2,000 lb and two transom straps of 1,200 lb under 3,500 lb', 3500, [direct(2000), direct(1200), direct(1200)], 2200, 1750, 'holds', 'holds'],
    ['without the bow strap', 3500, [direct(1200), direct(1200)], 1200, 1750, 'short', 'short'],
    ['two transom straps of 733 lb under 2,000 lb', 2000, [direct(733), direct(733)], 733, 1000, 'short', 'short'],
    ['two of 2,000 lb and one of 1,750 lb under 4,000 lb', 4000, [direct(2000), direct(2000), direct(1750)], 2875, 2000, 'holds', 'holds'],
    ['one strap of 2,000 lb over to the other side under 4,000 lb: exactly enough, but too few', 4000, [over(2000)], 2000, 2000, 'holds', 'short'],
    ['the same strap back to the same side', 4000, [same(2000)], 1000, 2000, 'short', 'short'],
  ] as const)('%s', (_, lb, straps, countedLb, neededLb, aggregate, count) => {
    const plan = planFor(lb, straps)
    expect((plan.aggregate?.countedN ?? 0) / poundsForce(1)).toBeCloseTo(countedLb, 6)
    expect((plan.aggregate?.neededN ?? 0) / poundsForce(1)).toBeCloseTo(neededLb, 6)
    expect([plan.aggregate?.standing, plan.count?.standing]).toEqual([aggregate, count])
  })
  it.each([[4, 1000, 1, 1], [8, 900, 2, 1], [10, 4000, 2, 1], [10.5, 4000, 3, 2], [18, 3500, 3, 2], [20, 3500, 3, 2], [22, 5000, 4, 3]])('%f ft and %i lb: %i straps, blocked %i (393.110 as restated)', (ft, lb, open, blocked) => {
    expect(planFor(lb, [], ft).count?.least).toBe(open)
    expect(planFor(lb, [], ft, true).count?.least).toBe(blocked)
  })
  it('5 ft and 1,200 lb: 2 straps (393.110, from memory)', () => expect(planFor(1200, [], 5).count?.least).toBe(2))
  it('a strap of 3,333 lb with a hook of 2,500 lb and an anchor of 2,000 lb counts as 2,000 lb (393.108(a))', () => {
    const weak = { ...direct(3333), fittingRatedN: poundsForce(2500), anchorRatedN: poundsForce(2000) }
    expect((planFor(2000, [weak]).aggregate?.countedN ?? 0) / poundsForce(1)).toBeCloseTo(1000, 6)
  })
})
