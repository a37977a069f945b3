import { describe, expect, it } from 'vitest'
import { classOfLoss, isRememberedRate, topRate } from '../../shared-logic/corrosion/corrosivity'
import { lifeByTable, lifeObserved } from '../../shared-logic/corrosion/life'
import { lossAfter, lossExponents, yearsLeftByPower, yearsLeftEvenly, yearsToLose } from '../../shared-logic/corrosion/long-term-loss'

const { zinc, aluminium } = lossExponents
const steel = lossExponents['carbon steel']

describe('corrosivity from the first year’s loss, ISO 9223:2012', () => {
  it.each([
    [1.3, 'C1'], [1.31, 'C2'], [25, 'C2'], [25.1, 'C3'], [50, 'C3'], [50.1, 'C4'], [80, 'C4'], [80.1, 'C5'], [200, 'C5'], [201, 'CX'], [700, 'CX'], [701, undefined],
  ] as const)('steel that loses %d µm stands in %s (handbook table after ISO 12944-2: LU*)', (loss, of) => {
    expect(classOfLoss('carbon steel', loss)).toBe(of)
  })

  it.each([
    [0.1, 'C1'], [0.7, 'C2'], [0.71, 'C3'], [2.1, 'C3'], [2.11, 'C4'], [4.2, 'C4'], [4.3, 'C5'], [8.4, 'C5'],
  ] as const)('zinc that loses %d µm stands in %s (LU*)', (loss, of) => {
    expect(classOfLoss('zinc', loss)).toBe(of)
  })

  it.each([[9, 'CX'], [25, 'CX'], [26, undefined]] as const)('zinc that loses %d µm: %s (zinc CX from memory; above it, worse than the table)', (loss, of) => {
    expect(classOfLoss('zinc', loss)).toBe(of)
    expect(isRememberedRate('zinc', 'CX')).toBe(true)
    expect(isRememberedRate('zinc', 'C5')).toBe(false)
  })

  it('aluminium that loses 3 g/m2 stands in C4 (from memory)', () => {
    expect(classOfLoss('aluminium', 3)).toBe('C4')
    expect(isRememberedRate('aluminium', 'C4')).toBe(true)
    expect(classOfLoss('aluminium', 1_000)).toBe('CX')
  })

  it.each([['C1', 0.7], ['C2', 5], ['C3', 15], ['C4', 30], ['C5', 60], ['CX', 180]] as const)('the mass column agrees: %s up to %d g/m2 at 7.14 g/m2 for each µm', (of, grams) => {
    expect(topRate('zinc', of) * 7.14).toBeCloseTo(grams, grams > 100 ? -1 : 0)
  })
})

describe('long-term loss, ISO 9224:2012 (Table 3 as transcribed: LU*)', () => {
  it.each([
    [1, 1, 1, 1, 1, 1, 1], [2, 1.437, 1.49, 1.757, 1.831, 1.656, 1.75], [5, 2.32, 2.523, 3.701, 4.076, 3.227, 3.665], [10, 3.334, 3.758, 6.501, 7.464, 5.346, 6.412],
    [15, 4.122, 4.745, 9.04, 10.635, 7.181, 8.894], [20, 4.791, 5.599, 11.422, 13.671, 8.854, 11.218],
  ])('t^b after %i years', (years, ...factors) => {
    const found = [steel.average, steel.cautious, zinc.average, zinc.cautious, aluminium.average, aluminium.cautious].map((exponent) => lossAfter(1, years, exponent))
    expect(found).toEqual(factors.map((factor) => expect.closeTo(factor, 3)))
  })

  it.each([
    ['steel at 200 µm a year, 10 years', 200, 10, steel.average, 666.85, 2], ['zinc at 4.2 µm a year, 20 years', 4.2, 20, zinc.average, 47.97, 2],
    ['zinc at 4.2 µm a year, 30 years: straight on from 20 (not 66.70)', 4.2, 30, zinc.average, 67.47, 2], ['steel at 80 µm a year, 25 years (not 430.74)', 80, 25, steel.average, 433.41, 2],
    ['aluminium at 10 g/m2 a year, 20 years (rate from memory)', 10, 20, aluminium.average, 88.54, 2], ['zinc, cautious, 10 years', 1, 10, zinc.cautious, 7.464, 3], ['zinc after 50 years (not 24.058)', 1, 50, zinc.average, 25.351, 3],
    ['copper, cautious, 20 years', 1, 20, lossExponents.copper.cautious, 8.801, 3], ['copper, average, 20 years', 1, 20, lossExponents.copper.average, 7.375, 3],
  ])('%s', (_what, rate, years, exponent, loss, digits) => {
    expect(lossAfter(rate, years, exponent)).toBeCloseTo(loss, digits)
  })

  it('88.54 g/m2 of aluminium is a mean of 32.79 µm at 2.7 g/cm3, and says nothing of pits', () => {
    expect(lossAfter(10, 20, aluminium.average) / 2.7).toBeCloseTo(32.79, 2)
  })

  it.each([
    [steel.average, 0.1253], [steel.cautious, 0.161], [zinc.average, 0.4643], [zinc.cautious, 0.5967], [lossExponents.copper.average, 0.246], [lossExponents.copper.cautious, 0.3195], [aluminium.average, 0.3223], [aluminium.cautious, 0.4527],
  ])('with b %d the slope after 20 years is %d of the first year’s', (exponent, slope) => {
    expect(lossAfter(1, 31, exponent) - lossAfter(1, 30, exponent)).toBeCloseTo(slope, 4)
  })
})

describe('years of zinc left', () => {
  const years = (um: number, rate: number): number[] => [yearsLeftEvenly(rate, um), yearsToLose(rate, um, zinc.average), yearsToLose(rate, um, zinc.cautious)]

  it.each([
    [85, 2.1, 40.5, 82.6, 64.9], [85, 4.2, 20.2, 39, 31], [85, 8.4, 10.1, 17.2, 14.2], [85, 25, 3.4, 4.5, 4.1],
    [70, 2.1, 33.3, 67.2, 52.9], [70, 4.2, 16.7, 31.3, 25], [70, 8.4, 8.3, 13.6, 11.3], [70, 25, 2.8, 3.5, 3.3],
    [55, 2.1, 26.2, 51.8, 41], [55, 4.2, 13.1, 23.6, 19], [55, 8.4, 6.5, 10.1, 8.6], [55, 25, 2.2, 2.6, 2.5],
    [45, 2.1, 21.4, 41.6, 33], [45, 4.2, 10.7, 18.5, 15.1], [45, 8.4, 5.4, 7.9, 6.8], [45, 25, 1.8, 2.1, 2],
  ])('new, %i µm at %d µm a year: evenly %d, by the power %d and cautiously %d years', (um, rate, ...expected) => {
    expect(years(um, rate)).toEqual(expected.map((each) => expect.closeTo(each, 1)))
  })

  it.each([
    ['new 85 µm, top of C4, evenly', yearsLeftEvenly(4.2, 85), 20.24], ['new 85 µm, top of C4, straight on after 20 years', yearsToLose(4.2, 85, zinc.average), 38.99],
    ['new 85 µm, top of C5', yearsToLose(8.4, 85, zinc.average), 17.23], ['40 µm left at 12 years, top of C5, evenly', yearsLeftEvenly(8.4, 40), 4.76], ['the same by the power', yearsLeftByPower(8.4, 12, 40, zinc.average), 9.9],
    ['40 µm left at 12 years, top of C4, cautious power', yearsLeftByPower(4.2, 12, 40, zinc.cautious), 15.72], ['60 µm left at 8 years, top of C4', yearsLeftByPower(4.2, 8, 60, zinc.average), 29.85],
    ['30 µm under white product, top of C5', yearsLeftEvenly(8.4, 30), 3.57],
  ])('%s', (_what, found, expected) => {
    expect(found).toBeCloseTo(expected, 2)
  })

  it('the plain power would give 40.4 years for 85 µm at 4.2: the milder answer, not given', () => {
    expect((85 / 4.2) ** (1 / zinc.average)).toBeCloseTo(40.4, 1)
    expect(yearsToLose(4.2, 85, zinc.average)).toBeLessThan(39)
  })

  it('40 µm at 12 years in C5: 4.8 to 9.9 years in air; dipped in salt water no slowing is credited', () => {
    const air = lifeByTable(40e-6, { mildest: 'C5', worst: 'C5' }, 12, true)
    expect([air.leastYears, air.mostYears]).toEqual([expect.closeTo(4.76, 2), expect.closeTo(9.9, 2)])
    const dipped = lifeByTable(40e-6, { mildest: 'C5', worst: 'CX' }, 12, false)
    expect([dipped.leastYears, dipped.mostYears]).toEqual([expect.closeTo(1.6, 9), expect.closeTo(4.76, 2)])
    expect(dipped.isRemembered).toBe(true)
  })

  it('85 to 52 µm in 9 years: 3.667 µm a year, 14.2 years, 8.7 until 20 µm are left', () => {
    const observed = lifeObserved([{ date: '2017-06-01', readingsM: [85e-6] }, { date: '2026-06-01', readingsM: [52e-6] }])
    expect((observed?.rateM ?? 0) * 1e6).toBeCloseTo(3.667, 2)
    expect(yearsLeftEvenly(33 / 9, 52)).toBeCloseTo(14.18, 2)
    expect(yearsLeftEvenly(33 / 9, 52, 20)).toBeCloseTo(8.73, 2)
    expect(observed).toMatchObject({ trusted: true, asIn: 'C4' })
    // The gauge errs by 5 µm (common practice): 38 and 28 µm in 9 years bound it.
    expect([observed?.years?.leastYears, observed?.years?.mostYears]).toEqual([expect.closeTo(52 / (38 / 9), 1), expect.closeTo(52 / (28 / 9), 1)])
    expect([observed?.untilReserve?.leastYears, observed?.untilReserve?.mostYears]).toEqual([expect.closeTo(32 / (38 / 9), 1), expect.closeTo(32 / (28 / 9), 1)])
  })
})
