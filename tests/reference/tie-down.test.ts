import { describe, expect, it } from 'vitest'
import { securementForces } from '../../shared-logic/rules/securement-forces'
import { aggregateLimitN, isAggregateEnough, neededAggregateN, type CountedTiedown, type TiedownRoute } from '../../shared-logic/rules/tie-down-capacity'
import { leastTiedowns } from '../../shared-logic/rules/tiedown-count'
import { feet, pounds, poundsForce } from '../../shared-logic/units/us-customary'

const strap = (lb: number, route: TiedownRoute = 'direct'): CountedTiedown => ({ limitN: poundsForce(lb), route })
const countedLb = (straps: readonly CountedTiedown[]): number => aggregateLimitN(straps) / poundsForce(1)

describe('aggregate working load limit, 49 CFR 393.106(d)', () => {
  it('a boat of 3,500 lb needs 1,750 lb', () => {
    expect(neededAggregateN(poundsForce(3_500))).toBeCloseTo(poundsForce(1_750), 6)
  })

  it.each([
    ['a bow strap of 2,000 lb and two transom straps of 1,200 lb, all direct', [strap(2_000), strap(1_200), strap(1_200)], 2_200, 3_500, true],
    ['the same without the bow strap', [strap(1_200), strap(1_200)], 1_200, 3_500, false],
    ['two transom straps of 733 lb, direct', [strap(733), strap(733)], 733, 2_000, false],
    ['one strap of 2,000 lb over to the other side', [strap(2_000, 'other side')], 2_000, 4_000, true],
    ['the same strap back to the same side', [strap(2_000, 'same side')], 1_000, 4_000, false],
    ['two transom straps of 2,000 lb and a bow strap of 1,750 lb, direct', [strap(2_000), strap(2_000), strap(1_750)], 2_875, 4_000, true],
  ])('%s count %s', (_, straps, lb, boatLb, enough) => {
    expect(countedLb(straps)).toBeCloseTo(lb, 6)
    expect(isAggregateEnough(aggregateLimitN(straps), poundsForce(boatLb))).toBe(enough)
  })

  it('a pound short of half the weight is not enough', () => {
    expect(isAggregateEnough(poundsForce(1_999), poundsForce(4_000))).toBe(false)
  })
})

describe('least number of tiedowns, 49 CFR 393.110 as restated', () => {
  it.each([
    [4, 1_000, 1, 1],
    [8, 900, 2, 1],
    [10, 4_000, 2, 1],
    [10.5, 4_000, 3, 2],
    [18, 3_500, 3, 2],
    [20, 3_500, 3, 2],
    [22, 5_000, 4, 3],
    [5, 1_100, 1, 1],
    [30, 9_000, 4, 3],
    [30.1, 9_000, 5, 4],
  ])('%d ft, %i lb: %i not blocked, %i blocked', (ft, lb, open, blocked) => {
    expect(leastTiedowns(feet(ft), pounds(lb), false)).toBe(open)
    expect(leastTiedowns(feet(ft), pounds(lb), true)).toBe(blocked)
  })

  it('5 ft and 1,200 lb, not blocked: two (from memory)', () => {
    expect(leastTiedowns(feet(5), pounds(1_200), false)).toBe(2)
  })

  it('an unknown mass counts as heavy', () => {
    expect(leastTiedowns(feet(4), undefined, false)).toBe(2)
  })
})

const inPounds = (against: 'breaking' | 'working') => Object.fromEntries(Object.entries(securementForces(poundsForce(3_500), against)).map(([key, n]) => [key, Number((n / poundsForce(1)).toFixed(3))]))

describe('forces on a boat of 3,500 lb, 49 CFR 393.102', () => {
  it('against breaking: 2,800 forward, 1,750 rearward and sideways, 700 down', () => {
    expect(inPounds('breaking')).toEqual({ forwardN: 2_800, rearwardN: 1_750, sidewaysN: 1_750, downwardN: 700 })
  })

  it('against the working load limit: 1,522.5 forward, 1,750 rearward, 875 sideways', () => {
    expect(inPounds('working')).toMatchObject({ forwardN: 1_522.5, rearwardN: 1_750, sidewaysN: 875 })
  })
})
