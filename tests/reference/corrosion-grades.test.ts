import { describe, expect, it } from 'vitest'
import { degreeOfRusting, protectionFormula, protectionRating, rustGrade } from '../../shared-logic/corrosion/area-grades'
import { acrossOf, corrosionLimits } from '../../shared-logic/corrosion/limits'
import { gradeSpot, gradeSpots, gravestFirst } from '../../shared-logic/corrosion/grade-spot'
import type { Spot } from '../../shared-logic/survey/spot'

describe('degrees of rusting, ISO 4628-3', () => {
  it.each([
    [0, 0], [0.05, 1], [0.5, 2], [1, 3], [8, 4], [45, 5],
  ])('the nominal area %d %% is Ri %i (as restated on an engineering reference page)', (percent, degree) => {
    expect(degreeOfRusting(percent)).toBe(degree)
  })

  it.each([
    [0.02, 1], [0.4, 2], [0.75, 3], [7.9, 4], [8.1, 5], [12, 5], [0.000_1, 1],
  ])('a measured %d %% is Ri %i by the ceiling rule (common practice on the nominals)', (percent, degree) => {
    expect(degreeOfRusting(percent)).toBe(degree)
  })
})

describe('rust grades, ASTM D610-08 (2012) Table 1', () => {
  it.each([
    [0, 10], [0.01, 10], [0.011, 9], [0.03, 9], [0.1, 8], [0.11, 7], [0.3, 7], [1, 6], [1.01, 5], [3, 5], [10, 4], [10.1, 3], [16, 3], [33, 2], [50, 1], [50.1, 0], [100, 0],
  ])('%d %% rusted is grade %i', (percent, grade) => {
    expect(rustGrade(percent)).toBe(grade)
  })

  it('0.05 % is grade 8 by the table, though a published correlation pairs Ri 1 with 9: grades are never converted', () => {
    expect(degreeOfRusting(0.05)).toBe(1)
    expect(rustGrade(0.05)).toBe(8)
  })
})

describe('protection ratings, ISO 10289 through GB/T 6461-2002', () => {
  it.each([
    [0.1, 9, 9], [0.12, 8, 8.762], [0.25, 8, 7.806], [0.3, 7, 7.569], [0.5, 7, 6.903], [1, 6, 6], [2, 5, 5.097], [2.5, 5, 4.806],
    [10, 3, 3], [25, 2, 1.806], [30, 1, 1.569], [50, 1, 0.903], [60, 0, 0.666],
  ])('%d %% of base-metal corrosion is Rp %i by table and %d by formula', (percent, rating, formula) => {
    expect(protectionRating(percent)).toBe(rating)
    expect(protectionFormula(percent)).toBeCloseTo(formula, 3)
  })

  it.each([
    [3, 4, 4.569], [5, 4, 3.903],
  ])('%d %% is Rp %i by table (band edge from memory) and %d by formula', (percent, rating, formula) => {
    expect(protectionRating(percent)).toBe(rating)
    expect(protectionFormula(percent)).toBeCloseTo(formula, 3)
  })

  it('no base-metal corrosion is Rp 10, and the formula says nothing', () => {
    expect(protectionRating(0)).toBe(10)
    expect(protectionFormula(0)).toBeUndefined()
  })

  it('0.046416 % ends the formula at 10; the table says 9: never 10 where base metal is corroded', () => {
    expect(protectionFormula(0.046416)).toBeCloseTo(10, 3)
    expect(protectionRating(0.046416)).toBe(9)
  })

  it('the table is never above the rounded formula', () => {
    const percents = Array.from({ length: 2_000 }, (_, index) => 0.05 * 1.0038 ** index).filter((percent) => percent <= 100)
    expect(percents.length).toBeGreaterThan(1_000)
    expect(percents.filter((percent) => protectionRating(percent) > Math.round(protectionFormula(percent) ?? 10))).toEqual([])
  })
})

const spot = (over: Partial<Spot>): Spot => ({ id: 'a', place: 'left rail', material: 'painted steel', kind: 'red rust', ...over })
const circle = (acrossM: number): number => (Math.PI * acrossM ** 2) / 4

describe('holes, pits and eaten-away places', () => {
  it('50 mm across is not rejected by size, 51 mm is (New Zealand vehicle inspection requirements, general trailers 3-1)', () => {
    expect(gradeSpot(spot({ kind: 'pitting', areaM2: circle(0.05), pitDepthM: 0.0005, wallM: 0.004 }), []).gravest).toBe('pitted')
    expect(gradeSpot(spot({ kind: 'pitting', areaM2: circle(0.051), pitDepthM: 0.0005, wallM: 0.004 }), []).gravest).toBe('eaten away')
    expect(acrossOf(circle(0.05))).toBeCloseTo(corrosionLimits.eatenAcrossM, 9)
  })

  it('a frame member with a rust hole is rejected (Québec C-24.2 r. 32 s. 98; UK inspection manual)', () => {
    expect(gradeSpot(spot({ kind: 'hole' }), []).gravest).toBe('hole')
  })

  it.each([
    [2.7, 'deep pit'],
    [2.8, 'pitted'],
    [2.9, 'pitted'],
  ])('a pit leaving %d of 4.0 mm is graded %s (IACS UR Z10.5 8.2 as analogue: 70 %% remain)', (leftMm, grade) => {
    const pit = spot({ kind: 'pitting', pitDepthM: (4 - leftMm) / 1000, wallM: 0.004 })
    expect(gradeSpot(pit, [pit]).gravest).toBe(grade)
  })
})

describe('bare spots on zinc against ISO 1461:2009, 6.3', () => {
  it('0.5 % of 0.8 m2 is 40 cm2', () => {
    expect(corrosionLimits.bareShare * 0.8).toBeCloseTo(0.004, 9)
  })

  it('8, 6 and 12 cm2 on 3.2 m2: the total of 26 cm2 keeps within 160 cm2, the largest breaks 10 cm2', () => {
    const zinc = [8, 6, 12].map((cm2, index) => spot({ id: String(index), material: 'galvanized steel', areaM2: cm2 / 10_000, faceAreaM2: 3.2 }))
    expect((gravestFirst(gradeSpots(zinc))[0]?.share?.value ?? 0) * 3.2).toBeCloseTo(0.0026, 9)
    expect((gravestFirst(gradeSpots(zinc))[0]?.share?.value ?? 1) <= corrosionLimits.bareShare).toBe(true)
    expect(zinc.map((each) => (each.areaM2 ?? 0) > corrosionLimits.bareSpotM2)).toEqual([false, false, true])
    expect(gravestFirst(gradeSpots(zinc))[0]).toMatchObject({ grade: 'red rust on zinc', spot: { id: '2' } })
  })
})
