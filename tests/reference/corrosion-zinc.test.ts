import { describe, expect, it } from 'vitest'
import { a123TotalLimitM2, bareSpotsOf } from '../../shared-logic/corrosion/bare-spots'
import { gradeSpot, gradeSpots, gravestFirst } from '../../shared-logic/corrosion/grade-spot'
import { a123Grade, isoZincMinimum, zincMassKgPerM2, zincReadings, zincThicknessM, type A123Category } from '../../shared-logic/corrosion/zinc-thickness'
import type { Spot } from '../../shared-logic/survey/spot'
import { formatQuantity } from '../../shared-logic/units/convert'

const galvanized = (over: Partial<Spot>): Spot => ({ id: 'a', place: 'left rail', material: 'galvanized steel', kind: 'red rust', ...over })
const micrometres = (...list: number[]): number[] => list.map((each) => each * 1e-6)

describe('least zinc on new steel, ISO 1461:2009 (a galvanizer’s page and the Nordic trade association: LU*)', () => {
  it.each([
    [8, 70, 85], [6.1, 70, 85], [6, 55, 70], [4, 55, 70], [3.1, 55, 70], [3, 45, 55], [2, 45, 55], [1.5, 45, 55], [1.4, 35, 45],
  ])('steel of %d mm: at least %i µm anywhere, %i µm in the mean', (steelMm, localUm, meanUm) => {
    const { localM, meanM } = isoZincMinimum(steelMm / 1000)
    expect([localM * 1e6, meanM * 1e6]).toEqual([expect.closeTo(localUm, 9), expect.closeTo(meanUm, 9)])
  })

  it('58, 66, 71, 62, 74 µm on 4 mm: every reading above the local minimum of 55, the mean of 66.2 below 70', () => {
    const readings = zincReadings(micrometres(58, 66, 71, 62, 74), 0.004)
    expect((readings?.meanM ?? 0) * 1e6).toBeCloseTo(66.2, 9)
    expect(readings?.minimum).toMatchObject({ lowestKept: true, meanKept: false })
    // No defect on a used trailer, only less reserve.
    expect(gradeSpot(galvanized({ share: 0.0005, wallM: 0.004, coatingReadingsM: micrometres(58, 66, 71, 62, 74) }), []).coating).toMatchObject({ finding: 'slight', verdict: 'pass' })
  })

  it('a reading at the local minimum keeps it, one below does not', () => {
    expect(zincReadings(micrometres(55), 0.004)?.minimum?.lowestKept).toBe(true)
    expect(zincReadings(micrometres(54.9, 80), 0.004)?.minimum?.lowestKept).toBe(false)
  })
})

describe('coating grades, ASTM A123/A123M-17 Table 1 (LU*)', () => {
  it.each<[A123Category, number, number]>([
    ['strip and bar', 5, 75], ['structural shapes', 8, 100], ['pipe and tubing', 8, 75], ['pipe and tubing', 3, 45], ['pipe and tubing', 3.2, 75],
    ['structural shapes', 1.5, 45], ['structural shapes', 1.6, 65], ['structural shapes', 4.8, 75], ['structural shapes', 6.4, 100], ['strip and bar', 15.9, 75], ['strip and bar', 16, 100], ['wire', 6, 65],
  ])('%s of %d mm: grade %i', (category, steelMm, grade) => {
    expect(a123Grade(category, steelMm / 1000)).toBe(grade)
  })
})

describe('zinc by mass and by thickness', () => {
  it('75 µm by the rule of A123 are 530.0 g/m2, 2.953 mil and 1.737 oz/ft2 (A123 Table 2 factors: LU)', () => {
    const mass = zincMassKgPerM2(75e-6, 'ASTM A123')
    expect(mass * 1000).toBeCloseTo(530, 1)
    expect(75e-6 / 2.54e-5).toBeCloseTo(2.953, 3)
    expect((mass * 1000) / 305.15).toBeCloseTo(1.737, 3)
    expect(formatQuantity('thickness', 75e-6, 'us')).toBe('3 mil')
  })

  it.each([
    [650, 'ASTM A123', 91.98], [275, 'zinc sheet', 38.52], [305.15, 'zinc sheet', 42.74], [610, 'ISO 1461', 84.7], [325, 'zinc sheet', 45.5], [325, 'ASTM A123', 46], [325, 'ISO 1461', 45.1],
  ] as const)('%d g/m2 by the rule of %s are %d µm', (grams, rule, micrometre) => {
    expect(zincThicknessM(grams / 1000, rule) * 1e6).toBeCloseTo(micrometre, micrometre === 84.7 || grams === 325 ? 1 : 2)
  })

  it.each([
    ['zinc sheet', 606.9], ['ASTM A123', 600.7], ['ISO 1461', 612],
  ] as const)('85 µm by the rule of %s are %d g/m2', (rule, grams) => {
    expect(zincMassKgPerM2(85e-6, rule) * 1000).toBeCloseTo(grams, 1)
  })
})

describe('bare spots against the repair limits', () => {
  it('8, 6 and 12 cm2 on 3.2 m2: the total of 26 keeps within 160 cm2, the largest breaks 10 cm2 (ISO 1461:2009, 6.3: LU)', () => {
    const bare = bareSpotsOf([0.0008, 0.0006, 0.0012], 3.2)
    expect(bare).toMatchObject({ totalKept: true, singleKept: false, repairable: false })
    expect([bare.totalM2, bare.totalLimitM2]).toEqual([expect.closeTo(0.0026, 9), expect.closeTo(0.016, 9)])
    const spots = [8, 6, 12].map((cm2, index) => galvanized({ id: String(index), areaM2: cm2 / 10_000, faceAreaM2: 3.2 }))
    expect(gravestFirst(gradeSpots(spots))[0]).toMatchObject({ gravest: 'red rust past spot repair', spot: { id: '2' } })
  })

  it('0.5 % of 0.8 m2 is 40 cm2: kept at it, broken above it', () => {
    expect(bareSpotsOf([], 0.8).totalLimitM2).toBeCloseTo(0.004, 12)
    const four = [0.001, 0.001, 0.001, 0.001]
    expect(bareSpotsOf(four, 0.8).repairable).toBe(true)
    expect(bareSpotsOf([...four, 0.000_01], 0.8).repairable).toBe(false)
  })

  it('a single spot of 10 cm2 may be mended, one of 10.1 cm2 not', () => {
    expect(bareSpotsOf([0.001], 1).singleKept).toBe(true)
    expect(bareSpotsOf([0.001_01], 1).singleKept).toBe(false)
  })

  it('A123: 2.0 m2 and 180 kg allow 4,050 mm2, the lesser of 10,000 and 4,050; by surface alone 10,000 (as restated: LU)', () => {
    expect(a123TotalLimitM2(2, 180) * 1e6).toBeCloseTo(4_050, 6)
    expect(a123TotalLimitM2(2) * 1e6).toBeCloseTo(10_000, 6)
  })

  it('A123: a bare area 25.4 mm across at its narrowest may be mended in the plant, one of 25.5 not', () => {
    const circle = (acrossM: number): number => (Math.PI * acrossM ** 2) / 4
    expect(bareSpotsOf([circle(0.0254)], 2, 180).a123).toMatchObject({ narrowestKept: true, repairable: true })
    expect(bareSpotsOf([circle(0.0255)], 2, 180).a123).toMatchObject({ narrowestKept: false, repairable: false })
  })

  it('A123: 40 cm2 in spots on 2.0 m2 of 180 kg keep within 40.5 cm2, 41 cm2 do not, though ISO 1461 would allow 100', () => {
    const spots = (count: number): number[] => Array.from({ length: count }, () => 0.0001)
    expect([40, 41].map((count) => bareSpotsOf(spots(count), 2, 180).a123.repairable)).toEqual([true, false])
    expect(bareSpotsOf(spots(41), 2, 180).repairable).toBe(true)
    const { bareSpots } = gradeSpot(galvanized({ areaM2: 0.0001, faceAreaM2: 2 }), [], { massKg: 180 }).coating
    expect(bareSpots?.a123.totalLimitM2).toBeCloseTo(0.004_05, 9)
  })
})

describe('white product (galvanizers’ association’s texts)', () => {
  it('30 % of a mudguard with 72 µm left on 2 mm is appearance only: RA 1 C, and passes', () => {
    const { coating, verdict } = gradeSpot(galvanized({ kind: 'white product', component: 'mudguard', share: 0.3, wallM: 0.002, coatingReadingsM: micrometres(72) }), [])
    expect(coating).toMatchObject({ finding: 'white product', grades: [{ scale: 'ISO 10289, appearance', rating: { measured: 1 } }] })
    expect(verdict).toBe('pass')
  })

  it('18 to 30 µm under it on 4 mm steel is heavy: an advisory, never a fail', () => {
    expect(gradeSpot(galvanized({ kind: 'white product', share: 0.3, wallM: 0.004, coatingReadingsM: micrometres(18, 22, 30) }), [])).toMatchObject({ gravest: 'heavy white product', verdict: 'advisory' })
  })
})
