import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { classesOf, classOfLoss, corrosivityClasses, slowsDown, topRate } from '../../../shared-logic/corrosion/corrosivity'
import { coatingLife, lifeByTable, lifeObserved, type DatedReadings } from '../../../shared-logic/corrosion/life'
import { lossAfter, lossExponents, yearsToLose } from '../../../shared-logic/corrosion/long-term-loss'
import { exposures } from '../../../shared-logic/rig/trailer'
import type { Spot } from '../../../shared-logic/survey/spot'

const um = (...list: number[]): number[] => list.map((each) => each * 1e-6)
const rail: Spot = { id: 'a', place: 'left rail', material: 'galvanized steel', kind: 'red rust', component: 'rail', coatingReadingsM: um(40, 55, 60) }
const tongue: Spot = { ...rail, component: 'tongue' }
const setting = { trailer: { exposure: 'coast', builtYear: 2014 }, surveyDate: '2026-06-01' } as const

describe('life left in the zinc', () => {
  it('is told from the lowest reading and the age', () => {
    expect(coatingLife(tongue, setting)).toMatchObject({ kind: 'worked out', lowestM: expect.closeTo(40e-6, 12), believed: 'table', table: { ageYears: 12, classes: { mildest: 'C4', worst: 'C5' }, leastYears: expect.closeTo(40 / 8.4, 9) }, observed: undefined })
  })

  it('waits for readings, exposure and year built, naming each, and gives no number', () => {
    expect(coatingLife({ ...rail, coatingReadingsM: undefined }, { trailer: {}, surveyDate: '2026-06-01' })).toEqual({ kind: 'waits', for: ['spots.coatingReadingsM', 'trailer.exposure', 'trailer.builtYear'] })
    expect(coatingLife(rail, { trailer: { builtYear: 2014 }, surveyDate: '2026-06-01' })).toEqual({ kind: 'waits', for: ['trailer.exposure'] })
    expect(coatingLife(rail, { trailer: { exposure: 'coast' }, surveyDate: '2026-06-01' })).toEqual({ kind: 'waits', for: ['trailer.builtYear'] })
    expect(coatingLife(rail, { trailer: { exposure: 'coast', builtYear: 2027 }, surveyDate: '2026-06-01' })).toEqual({ kind: 'waits', for: ['trailer.builtYear'] })
  })

  it.each(['painted steel', 'painted over zinc', 'bare steel', 'aluminium'] as const)('is not told of %s: no gauge reads its zinc alone', (material) => {
    expect(coatingLife({ ...rail, material }, setting)).toEqual({ kind: 'no zinc to read', material })
  })

  it('credits no slowing to a rail dipped in salt water, and slowing to the tongue that stays dry', () => {
    const salt = { ...setting, trailer: { ...setting.trailer, exposure: 'salt water, not rinsed' as const } }
    expect(coatingLife(rail, salt)).toMatchObject({ isDipped: true, table: { slows: false, classes: { mildest: 'C5', worst: 'CX' }, isRemembered: true } })
    expect(coatingLife(tongue, salt)).toMatchObject({ isDipped: false, table: { slows: true, classes: { mildest: 'C4', worst: 'C5' }, isRemembered: false } })
    expect(exposures.filter((exposure) => !slowsDown(exposure, true))).toEqual(['salt water, rinsed', 'salt water, not rinsed'])
  })
})

describe('the measured rate', () => {
  const series = (...of: (readonly [string, number])[]): DatedReadings[] => of.map(([date, micrometres]) => ({ date, readingsM: um(micrometres) }))

  it('is believed over the table after a year and a loss beyond 5 µm (common practice)', () => {
    const life = coatingLife({ ...rail, coatingReadingsM: um(60) }, setting, series(['2024-06-01', 70], ['2026-06-01', 60]))
    expect(life).toMatchObject({ believed: 'measured rate', observed: { trusted: true, asIn: 'C5' } })
  })

  it.each([
    ['less than a year apart', '2025-12-01', 70], ['loss within the error of the gauge', '2024-06-01', 65], ['loss within the error of the gauge', '2024-06-01', 55],
  ] as const)('is not believed where it is %s', (doubt, from, micrometres) => {
    expect(coatingLife({ ...rail, coatingReadingsM: um(60) }, setting, series([from, micrometres], ['2026-06-01', 60]))).toMatchObject({ believed: 'table', observed: { trusted: false, doubt } })
  })

  it('tells a life even where exposure and age are not known', () => {
    expect(coatingLife({ ...rail, coatingReadingsM: um(60) }, { trailer: {}, surveyDate: '2026-06-01' }, series(['2024-06-01', 70], ['2026-06-01', 60]))).toMatchObject({ kind: 'worked out', table: undefined, tableWaits: ['trailer.exposure', 'trailer.builtYear'], believed: 'measured rate' })
  })

  it('may be worse than the table', () => {
    expect(lifeObserved(series(['2024-06-01', 150], ['2026-06-01', 60]))?.asIn).toBe('worse than the table')
  })

  it('of one survey, or of two on one day, is none', () => {
    expect(lifeObserved(series(['2026-06-01', 60]))).toBeUndefined()
    expect(lifeObserved(series(['2026-06-01', 70], ['2026-06-01', 60]))).toBeUndefined()
  })
})

describe('laws of loss', () => {
  const thickness = fc.double({ min: 1e-6, max: 300e-6, noNaN: true })
  const classIndex = fc.integer({ min: 0, max: corrosivityClasses.length - 1 })
  const classAt = (index: number) => corrosivityClasses[index] ?? 'CX'

  it('thinner zinc never lasts longer, a worse place never makes it last longer', () => {
    fc.assert(fc.property(thickness, thickness, classIndex, classIndex, fc.integer({ min: 0, max: 60 }), fc.boolean(), (a, b, i, j, age, slows) => {
      const place = { mildest: classAt(Math.min(i, j)), worst: classAt(Math.max(i, j)) }
      const [thin, thick] = [lifeByTable(Math.min(a, b), place, age, slows), lifeByTable(Math.max(a, b), place, age, slows)]
      expect(thin.leastYears <= thick.leastYears && thin.mostYears <= thick.mostYears + 1e-9).toBe(true)
      const mild = lifeByTable(a, { mildest: place.mildest, worst: place.mildest }, age, slows)
      const harsh = lifeByTable(a, { mildest: place.worst, worst: place.worst }, age, slows)
      expect(harsh.leastYears <= mild.leastYears && harsh.mostYears <= mild.mostYears * (1 + 1e-9) + 1e-9).toBe(true)
    }))
  })

  it('the cautious end never lies beyond the hopeful one', () => {
    fc.assert(fc.property(thickness, classIndex, fc.integer({ min: 0, max: 60 }), fc.boolean(), (a, index, age, slows) => {
      const { leastYears, mostYears } = lifeByTable(a, { mildest: classAt(index), worst: classAt(index) }, age, slows)
      expect(leastYears).toBeLessThanOrEqual(mostYears * (1 + 1e-9))
    }))
  })

  it('years to lose is the loss after years turned round, before and after the bend at 20', () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 25, noNaN: true }), fc.double({ min: 0.1, max: 90, noNaN: true }), fc.constantFrom(...Object.values(lossExponents).flatMap(({ average, cautious }) => [average, cautious])), (rate, years, exponent) => {
      expect(yearsToLose(rate, lossAfter(rate, years, exponent), exponent)).toBeCloseTo(years, 6)
    }))
  })

  it('every rate of a class falls into it, and exposures never grow milder with salt', () => {
    for (const of of corrosivityClasses) expect(classOfLoss('zinc', topRate('zinc', of))).toBe(of)
    const worst = (exposure: (typeof exposures)[number], isDipped: boolean): number => corrosivityClasses.indexOf(classesOf(exposure, isDipped).worst)
    for (const exposure of exposures) expect(worst(exposure, true)).toBeGreaterThanOrEqual(worst(exposure, false))
    for (const isDipped of [true, false]) expect(worst('salt water, not rinsed', isDipped)).toBeGreaterThanOrEqual(worst('salt water, rinsed', isDipped))
  })
})
