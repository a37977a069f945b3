import { describe, expect, it } from 'vitest'
import { gradeStrapDamage } from '../../shared-logic/rules/strap-damage'
import { breakingOfLashingCapacityN, chainLimitN, lashingCapacityOfBreakingN, unmarkedWebbingLimitN, weakestPartN, workingLimitOfBreakingN } from '../../shared-logic/rules/tie-down-capacity'
import { inches, poundsForce } from '../../shared-logic/units/us-customary'

describe('unmarked tiedowns, tables to 49 CFR 393.108', () => {
  it.each([
    [1.75, 1_750],
    [2, 2_000],
    [3, 3_000],
    [4, 4_000],
    [2.5, 2_000],
  ])('webbing %d in wide counts %i lb', (inch, lb) => {
    expect(unmarkedWebbingLimitN(inches(inch))).toBeCloseTo(poundsForce(lb), 6)
  })

  it('webbing 1 in wide has no rating in the table as read', () => {
    expect(unmarkedWebbingLimitN(inches(1))).toBeUndefined()
  })

  it('webbing sold as 50 mm counts as 2 in (common practice, no source)', () => {
    expect(unmarkedWebbingLimitN(0.05)).toBeCloseTo(poundsForce(2_000), 6)
  })

  it.each([
    [1 / 4, 1_300],
    [5 / 16, 1_900],
    [3 / 8, 2_650],
    [7 / 16, 3_700],
    [1 / 2, 4_500],
    [5 / 8, 6_900],
  ])('unmarked chain of %d in counts as grade 30: %i lb', (inch, lb) => {
    expect(chainLimitN(inches(inch))).toBeCloseTo(poundsForce(lb), 6)
  })

  it.each([
    [1 / 4, 3_150],
    [5 / 16, 4_700],
    [3 / 8, 6_600],
  ])('marked grade 70 chain of %d in counts %i lb', (inch, lb) => {
    expect(chainLimitN(inches(inch), 70)).toBeCloseTo(poundsForce(lb), 6)
  })

  it('strap 3,333 lb, hook 2,500 lb, anchor 2,000 lb: 2,000 lb count (393.108(a))', () => {
    expect(weakestPartN(poundsForce(3_333), poundsForce(2_500), poundsForce(2_000))).toBeCloseTo(poundsForce(2_000), 6)
  })
})

describe('what labels say', () => {
  it('LC 2000 daN stands for a breaking force of at least 4000 daN (EN 12195-2)', () => {
    expect(breakingOfLashingCapacityN(20_000)).toBe(40_000)
    expect(lashingCapacityOfBreakingN(40_000)).toBe(20_000)
  })

  it('a breaking strength of 6,000 lb stands for a working load limit of 2,000 lb (web tie-down trade standard T-1, 3:1)', () => {
    expect(workingLimitOfBreakingN(poundsForce(6_000))).toBeCloseTo(poundsForce(2_000), 6)
  })
})

describe('damage across webbing', () => {
  it.each([
    [2, 0.25, true, false],
    [2, 0.375, true, false],
    [2, 0.5, true, true],
    [1.75, 0.4, true, true],
    [3, 0.625, true, false],
    [3, 0.65, true, true],
    [4, 0.625, true, false],
    [4, 0.75, true, false],
    [4, 0.875, true, true],
    [2, 0.2, false, false],
    [2, 0.201, true, false],
  ])('%d in web, damage of %d in: beyond a tenth %s (published scrapping guidelines), past the out-of-service table %s (from memory)', (width, damage, pastShare, pastOutOfService) => {
    expect(gradeStrapDamage(inches(damage), inches(width))).toMatchObject({ pastShare, pastOutOfService })
  })

  it.each([
    [4.9, false],
    [5, false],
    [5.1, true],
    [6, true],
  ])('50 mm web with a tear of %d mm: to be renewed is %s (10 % of the width)', (mm, renew) => {
    expect(gradeStrapDamage(mm / 1000, 0.05).pastShare).toBe(renew)
  })

  it('6 mm of 50 mm is 12 %', () => {
    expect(gradeStrapDamage(0.006, 0.05).share).toBeCloseTo(0.12, 9)
  })
})
