import { describe, expect, it } from 'vitest'
import { isWornOut, judgeBallWear, leastBallInUseM, wearShare } from '../../shared-logic/rules/ball-wear'
import { chainNeedFor, judgeChains } from '../../shared-logic/rules/chains'
import { classChainForceN, couplerClassFor, couplerStrengthFor, leastBallM } from '../../shared-logic/rules/coupler-classes'
import { inches, pounds, poundsForce } from '../../shared-logic/units/us-customary'
import { judged } from '../shared-logic/checks/judged'

describe('coupler classes, SAE J684 as restated in COMAR 11.13.08.10', () => {
  it.each([
    [2_000, 'class 1', 2_000],
    [2_001, 'class 2', 3_500],
    [3_500, 'class 2', 3_500],
    [3_501, 'class 3', 5_000],
    [5_000, 'class 3', 5_000],
    [5_001, 'class 4', 5_001],
    [7_500, 'class 4', 7_500],
  ])('a trailer of %i lb needs %s and chains of %i lb each', (lb, expected, chainLb) => {
    expect(couplerClassFor(pounds(lb))).toBe(expected)
    expect(classChainForceN(pounds(lb))).toBeCloseTo(poundsForce(chainLb), 6)
  })

  it('the standard ends at 10,000 lb', () => {
    expect(couplerClassFor(pounds(10_000))).toBe('class 4')
    expect(couplerClassFor(pounds(10_001))).toBeUndefined()
    expect(couplerStrengthFor(pounds(10_001))).toBeUndefined()
  })

  it.each([
    [2_000, 6_000, 2_000],
    [3_500, 10_500, 3_000],
    [5_000, 15_000, 4_000],
    [8_000, 24_000, 8_000],
  ])('at %i lb the coupler breaks at no less than %i lb along and %i lb across', (lb, along, across) => {
    expect(couplerStrengthFor(pounds(lb))?.longitudinalN).toBeCloseTo(poundsForce(along), 6)
    expect(couplerStrengthFor(pounds(lb))?.transverseN).toBeCloseTo(poundsForce(across), 6)
  })

  it.each([
    [2_000, 1.875],
    [2_001, 2],
    [5_000, 2],
  ])('at %i lb the smallest ball is %d in', (lb, ball) => {
    expect(leastBallM(pounds(lb))).toBeCloseTo(inches(ball), 9)
  })
})

describe('safety chains', () => {
  const standing = judgeChains(poundsForce(2_000), 2, chainNeedFor(pounds(3_500)))

  it('two chains of 2,000 lb behind 3,500 lb meet the federal benchmark (49 CFR 393.70(d), agency guidance: combined)', () => {
    expect(standing.togetherEnough).toBe(true)
  })

  it('the same chains do not meet New Hampshire RSA 266:63 (each chain)', () => {
    expect(standing.eachEnough).toBe(false)
  })

  it.each([
    [3_499, false],
    [3_500, true],
    [3_501, true],
  ])('a chain of %i lb behind 3,500 lb is enough by itself: %s', (lb, enough) => {
    expect(judgeChains(poundsForce(lb), 2, chainNeedFor(pounds(3_500))).eachEnough).toBe(enough)
  })
})

describe('ball wear', () => {
  it.each([
    [49.7, 'as new'],
    [49.61, 'as new'],
    [49.6, 'worn, within limit'],
    [49.3, 'worn, within limit'],
    [49, 'worn, within limit'],
    [48.99, 'worn out'],
    [48.9, 'worn out'],
  ])("a 50 mm ball of %d mm is %s (new: tow ball guide restating 94/20/EC; limit: vehicle makers' repair manuals)", (mm, expected) => {
    expect(judgeBallWear(0.05, mm / 1000)).toBe(expected)
  })

  it('which is a pass, an advisory and a fail at 49.70, 49.30 and 48.90 mm', () => {
    const verdicts = [49.7, 49.3, 48.9].map((mm) => judged('coupler.ball-wear', { diameter: mm / 1000, surface: 'smooth' }, { trailer: { ballDiameterM: 0.05 } }).verdict)
    expect(verdicts).toEqual(['pass', 'advisory', 'fail'])
  })

  it('a pin of 38.0 mm worn to 36.0 mm has lost 5.26 %: rejected (New Zealand vehicle inspection requirements, 5 %)', () => {
    expect(wearShare(0.038, 0.036) * 100).toBeCloseTo(5.26, 2)
    expect(isWornOut(0.038, 0.036)).toBe(true)
    expect(isWornOut(0.038, 0.0361)).toBe(false)
  })

  it.each([
    [1.99, 'as new'],
    [1.9, 'as new'],
    [1.899, 'worn out'],
  ])('a 2 in ball of %d in is %s by the 5 % rule', (inch, expected) => {
    expect(judgeBallWear(inches(2), inches(inch))).toBe(expected)
    expect(leastBallInUseM(inches(2))).toBeCloseTo(inches(1.9), 9)
  })
})
