import { describe, expect, it } from 'vitest'
import { coatingCondition, degreeOfRusting, nearestDegreeOfRusting, protectionFormula, protectionRating, rustGrade } from '../../shared-logic/corrosion/area-grades'
import { areaGradesOf } from '../../shared-logic/corrosion/area-scales'
import { gradeSpot } from '../../shared-logic/corrosion/grade-spot'
import { within } from '../../shared-logic/corrosion/ranged'
import { letterOfSizes } from '../../shared-logic/corrosion/rust-letter'
import type { Spot } from '../../shared-logic/survey/spot'

/** A breath above an edge. */
const above = (percent: number): number => percent * (1 + 1e-6)
const painted: Spot = { id: 'a', place: 'left rail', material: 'painted steel', kind: 'red rust' }

describe('degrees of rusting, ISO 4628-3', () => {
  it.each([
    [0, 0], [0.05, 1], [0.5, 2], [1, 3], [8, 4], [45, 5],
  ])('the nominal area %d %% is Ri %i (restated on an engineering reference page: LU*)', (percent, degree) => {
    expect(degreeOfRusting(percent)).toBe(degree)
  })

  it.each([
    [0.02, 1], [0.4, 2], [0.75, 3], [7.9, 4], [8.1, 5], [12, 5], [0.000_1, 1],
    [above(0.05), 2], [above(0.5), 3], [above(1), 4], [above(8), 5],
  ])('a measured %d %% is Ri %i by the ceiling rule (common practice on the nominals)', (percent, degree) => {
    expect(degreeOfRusting(percent)).toBe(degree)
  })

  it.each([
    [0, 0], [0.158, 1], [0.159, 2], [0.707, 2], [0.708, 3], [2.828, 3], [2.829, 4], [12, 4], [18.91, 4], [18.92, 5], [45, 5],
  ])('a measured %d %% is Ri %i by the nearest nominal on a log scale (geometric means)', (percent, degree) => {
    expect(nearestDegreeOfRusting(percent)).toBe(degree)
  })

  it('14 cm2 on 0.35 m2 are 0.40 %: Ri 2 by either rule; 420 cm2 are 12 %: Ri 5 by the ceiling, Ri 4 by the nearest', () => {
    expect([degreeOfRusting(0.4), nearestDegreeOfRusting(0.4)]).toEqual([2, 2])
    const [degree] = gradeSpot({ ...painted, areaM2: 0.042, faceAreaM2: 0.35 }, []).coating.grades
    expect(degree).toMatchObject({ scale: 'ISO 4628-3', degree: { measured: 5 }, nearest: 4 })
  })
})

describe('rust grades, ASTM D610-08 (2012) Table 1', () => {
  it.each([
    [0, 10], [0.01, 10], [0.011, 9], [0.03, 9], [0.1, 8], [0.11, 7], [0.3, 7], [1, 6], [1.01, 5], [3, 5], [10, 4], [10.1, 3], [16, 3], [33, 2], [50, 1], [50.1, 0], [100, 0],
    [above(0.03), 8], [above(0.3), 6], [above(3), 4], [above(16), 2], [above(33), 1],
  ])('%d %% rusted is grade %i', (percent, grade) => {
    expect(rustGrade(percent)).toBe(grade)
  })

  it('0.05 % is grade 8 by the table, though a published correlation pairs Ri 1 with 9: grades are never converted', () => {
    expect(degreeOfRusting(0.05)).toBe(1)
    expect(rustGrade(0.05)).toBe(8)
  })

  it('0.5 % is grade 6 by the table, though the correlation pairs Ri 2 with 7', () => {
    expect([degreeOfRusting(0.5), rustGrade(0.5)]).toEqual([2, 6])
  })

  it('0.40 % in two patches is 6-S; 12 % in many sizes is 3-G (letters by measurement: project rule)', () => {
    const patches = [0.0009, 0.0005].map((areaM2, index) => ({ ...painted, id: String(index), areaM2, faceAreaM2: 0.35 }))
    expect(patches.map((spot) => gradeSpot(spot, patches).coating.grades[1])).toEqual([0, 1].map(() => expect.objectContaining({ scale: 'ASTM D610', grade: { mildest: 6, measured: 6, worst: 6 }, letter: 'S' })))
    const many = Array.from({ length: 12 }, (_, index) => ({ ...painted, id: String(index), areaM2: 0.0035, faceAreaM2: 0.35 }))
    expect(many.slice(0, 1).map((spot) => gradeSpot(spot, many).coating.grades[1])).toEqual([expect.objectContaining({ grade: { mildest: 3, measured: 3, worst: 3 }, letter: 'G' })])
  })

  it('specks below 1 mm across are pinpoint; four alike are general, three alike spot', () => {
    const speck = (acrossMm: number): number => (Math.PI * (acrossMm / 1000) ** 2) / 4
    expect(letterOfSizes([0.9, 0.9, 0.9, 8].map(speck))).toBe('P')
    expect(letterOfSizes([1.1, 1.1, 1.1, 1.1].map(speck))).toBe('G')
    expect(letterOfSizes([5, 5, 5].map(speck))).toBe('S')
    expect(letterOfSizes([])).toBeUndefined()
  })

  it('grades 10 and 0 carry no letter (ASTM D610)', () => {
    const lettersAt = (share: number): unknown[] => areaGradesOf(painted, within(share * 100, 0), [{ ...painted, areaM2: share, faceAreaM2: 1 }]).map((grade) => ('letter' in grade ? grade.letter : undefined))
    expect(lettersAt(0.000_05)).toEqual([undefined, undefined])
    expect(lettersAt(0.6)).toEqual([undefined, undefined])
    expect(lettersAt(0.4)).toEqual([undefined, 'S'])
  })
})

describe('protection ratings, ISO 10289 through GB/T 6461-2002', () => {
  it.each([
    [0.1, 9, 9], [0.12, 8, 8.762], [0.25, 8, 7.806], [0.3, 7, 7.569], [0.5, 7, 6.903], [1, 6, 6], [2, 5, 5.097], [2.5, 5, 4.806],
    [10, 3, 3], [25, 2, 1.806], [30, 1, 1.569], [50, 1, 0.903], [60, 0, 0.666], [100, 0, 0],
  ])('%d %% of base-metal corrosion is Rp %i by table and %d by formula (LU*)', (percent, rating, formula) => {
    expect(protectionRating(percent)).toBe(rating)
    expect(protectionFormula(percent)).toBeCloseTo(formula, 3)
  })

  it.each([
    [3, 4, 4.569], [5, 4, 3.903],
  ])('%d %% is Rp %i by table (band edge from memory) and %d by formula', (percent, rating, formula) => {
    expect(protectionRating(percent)).toBe(rating)
    expect(protectionFormula(percent)).toBeCloseTo(formula, 3)
  })

  it.each([
    [0.1, 8], [0.25, 7], [0.5, 6], [1, 5], [2.5, 4], [5, 3], [10, 2], [25, 1], [50, 0],
  ])('a breath above %d %% is one rating lower, Rp %i', (edge, rating) => {
    expect(protectionRating(edge)).toBe(rating + 1)
    expect(protectionRating(above(edge))).toBe(rating)
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

describe('coating of edges and faces, IMO MSC.1/Circ.1330, 4.1.3', () => {
  it.each([
    [{ rustPercent: 2.9 }, 'good'], [{ rustPercent: 3 }, 'fair'], [{ rustPercent: 20 }, 'fair'], [{ rustPercent: 21 }, 'poor'],
    [{ scalePercent: 9.9 }, 'fair'], [{ scalePercent: 10 }, 'poor'], [{ edgePercent: 25, rustPercent: 1 }, 'fair'], [{ edgePercent: 19.9 }, 'good'], [{ edgePercent: 20 }, 'fair'],
    [{ edgePercent: 50 }, 'fair'], [{ edgePercent: 51 }, 'poor'], [{}, 'good'],
  ] as const)('%o is %s', (breakdown, condition) => {
    expect(coatingCondition(breakdown)).toBe(condition)
  })
})

describe('a share known within limits', () => {
  it('125,000 to 149,000 of 2,400,000 px is Ri 4 and grade 4 throughout', () => {
    const spot: Spot = { ...painted, share: 137 / 2400, measurement: { sha256: 'a'.repeat(64), widthPx: 2000, heightPx: 1200, scale: { kind: 'length', from: [0, 0], to: [100, 0], lengthM: 0.1 }, outline: { by: 'finder', finder: 'rust 1', sensitivity: 0.5, strokes: [] }, result: { areaM2: 0.1, uncertaintyM2: 0.01, shareLow: 125 / 2400, shareHigh: 149 / 2400 } } }
    expect(gradeSpot(spot, []).coating.grades).toEqual([
      expect.objectContaining({ degree: { mildest: 4, measured: 4, worst: 4 } }),
      { scale: 'ASTM D610', grade: { mildest: 4, measured: 4, worst: 4 } },
    ])
  })

  it('0.917 % to 1.083 % is printed as a span: Ri 3 to 4, grade 6 to 5, and the worse counts', () => {
    const graded = gradeSpot({ ...painted, areaM2: 0.01 * 0.35, areaUncertaintyM2: 0.00083 * 0.35, faceAreaM2: 0.35 }, [])
    expect(graded.coating).toMatchObject({ finding: 'painted rust', isCautious: true, grades: [{ degree: { mildest: 3, measured: 3, worst: 4 } }, { grade: { mildest: 6, measured: 6, worst: 5 } }] })
  })
})
