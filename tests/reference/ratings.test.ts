import { describe, expect, it } from 'vitest'
import { axleLoadAtMaximumKg, cargoCapacityKg, judgeLoad, neededRatingKg, reserveOf, trailerCategoryOf } from '../../shared-logic/rules/ratings'
import { worstVerdict, type Verdict } from '../../shared-logic/survey/verdict'
import { pounds } from '../../shared-logic/units/us-customary'

describe('reserve against a rating (common practice, no source)', () => {
  const loadedKg = 1974.8225

  it('1974.8 kg on a rating of 2000 kg leaves 1.26 %: an advisory', () => {
    expect(1150 + 127.8225 + 57 + 120 + 520).toBeCloseTo(loadedKg, 6)
    expect(reserveOf(loadedKg, 2000) * 100).toBeCloseTo(1.26, 2)
    expect(judgeLoad(loadedKg, 2000)).toBe('little reserve')
  })

  it('the rating for 15 % of the rating is 2323.3 kg, for 20 % 2468.5 kg, for 15 % of the load 2271.0 kg', () => {
    expect(neededRatingKg(loadedKg, 0.15, 'of the rating')).toBeCloseTo(2323.3, 1)
    expect(neededRatingKg(loadedKg, 0.2, 'of the rating')).toBeCloseTo(2468.5, 1)
    expect(neededRatingKg(loadedKg, 0.15, 'of the load')).toBeCloseTo(2271, 1)
  })

  it.each([
    [2001, 'over'],
    [2000, 'little reserve'],
    [1701, 'little reserve'],
    [1700, 'within'],
    [1699, 'within'],
  ])('%i kg on a rating of 2000 kg is %s', (kg, expected) => {
    expect(judgeLoad(kg, 2000)).toBe(expected)
  })
})

describe('axle ratings of boat trailers, NHTSA letter of 15 January 1976', () => {
  it.each([
    [3_150, true],
    [3_000, false],
  ])('GVWR 3,500 lb, 350 lb on the coupling, axle rating %i lb: consistent is %s', (axleLb, consistent) => {
    expect(axleLoadAtMaximumKg(pounds(3_500), pounds(350)) <= pounds(axleLb) + 1e-9).toBe(consistent)
  })
})

describe('placards and categories', () => {
  it('GVWR 2,990 lb, weighed empty 740 lb: 2,250 lb of cargo (49 CFR 571.110 S4.3.5, published example)', () => {
    expect(cargoCapacityKg(pounds(2_990), pounds(740))).toBeCloseTo(pounds(2_250), 9)
  })

  it.each([
    [750, 'O1'],
    [751, 'O2'],
    [3_500, 'O2'],
    [3_501, 'O3'],
    [10_000, 'O3'],
    [10_001, 'O4'],
  ])('a maximum mass of %i kg is category %s (Regulation (EU) 2018/858)', (kg, category) => {
    expect(trailerCategoryOf(kg)).toBe(category)
  })
})

const times = (count: number, verdict: Verdict): Verdict[] => Array.from({ length: count }, () => verdict)

describe('a verdict is the worst finding, never a sum (common practice, no source)', () => {
  it('one dangerous, two major and three minor come to fail', () => {
    expect(worstVerdict([...times(3, 'fail'), ...times(3, 'advisory')])).toBe('fail')
  })

  it('five minor come to advisory', () => {
    expect(worstVerdict(times(5, 'advisory'))).toBe('advisory')
  })
})
