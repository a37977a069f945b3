import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dateAfter, yearsBetween } from '../../../shared-logic/corrosion/calendar'
import { yearsToEdge } from '../../../shared-logic/corrosion/forecast'
import { growthBetween, isCertain } from '../../../shared-logic/corrosion/growth'
import { within } from '../../../shared-logic/corrosion/ranged'
import type { SpotSurvey } from '../../../shared-logic/corrosion/trail-point'
import { trailsOf, type Trail } from '../../../shared-logic/corrosion/trails'
import type { Spot } from '../../../shared-logic/survey/spot'

const cm2 = 1e-4
const zinc: Spot = { id: 's1', place: 'upper face', material: 'galvanized steel', kind: 'red rust', component: 'cross-member' }
const measured = (areaCm2: number, uncertaintyCm2: number, more: Partial<Spot> = {}): Spot => ({ ...zinc, areaM2: areaCm2 * cm2, areaUncertaintyM2: uncertaintyCm2 * cm2, faceAreaM2: 0.3, ...more })
const survey = (date: string, ...spots: Spot[]): SpotSurvey => ({ date, places: [{ position: 'cross-members', spots }] })
const trailsIn = (...surveys: SpotSurvey[]): readonly Trail[] => trailsOf(surveys, { trailer: {} })
const only = (...surveys: SpotSurvey[]): Trail => {
  const [trail, more] = trailsIn(...surveys)
  if (!trail || more) throw new Error('not one trail')
  return trail
}

describe('a spot over the surveys', () => {
  it('of one survey is a first record, and no date is told', () => {
    expect(only(survey('2026-06-01', measured(3, 0.3)))).toMatchObject({ standing: 'first record', change: undefined, forecast: { kind: 'none', why: 'one survey' } })
  })

  it('is new where somebody had looked before and found nothing', () => {
    expect(only(survey('2025-06-01'), survey('2026-06-01', measured(3, 0.3))).standing).toBe('new')
    expect(only({ date: '2025-06-01', places: [{ position: 'tongue', spots: [] }] }, survey('2026-06-01', measured(3, 0.3))).standing).toBe('first record')
  })

  it('has grown only beyond the combined uncertainty: 3 ± 0.3 to 3.5 ± 0.4 is exactly at it', () => {
    const standing = (later: number): string => only(survey('2024-06-01', measured(3, 0.3)), survey('2026-06-01', measured(later, 0.4))).standing
    expect([standing(3.49), standing(3.51)]).toEqual(['same', 'grown'])
    expect(standing(2.4)).toBe('smaller')
  })

  it('has grown where its pit is deeper beyond the gauges’ error, though its area is the same', () => {
    const at = (pitMm: number): Spot => measured(3, 0.3, { kind: 'pitting', pitDepthM: pitMm / 1000, wallM: 0.004 })
    expect(only(survey('2024-06-01', at(0.4)), survey('2026-06-01', at(0.5))).standing).toBe('same')
    expect(only(survey('2024-06-01', at(0.4)), survey('2026-06-01', at(0.6)))).toMatchObject({ standing: 'grown', change: { pitDepth: { by: expect.closeTo(0.0002, 9) } } })
  })

  it('that grows slowly from look to look is found out against the first', () => {
    const trail = only(survey('2022-06-01', measured(3, 0.3)), survey('2024-06-01', measured(3.3, 0.3)), survey('2026-06-01', measured(3.6, 0.3)))
    expect(trail).toMatchObject({ standing: 'grown', change: { fromDate: '2022-06-01' } })
  })

  it('is healed once repaired, and has come back when it rusts again', () => {
    const before = survey('2022-06-01', measured(3, 0.3))
    const repaired = survey('2024-06-01', { ...zinc, state: 'repaired' })
    expect(only(before, repaired)).toMatchObject({ standing: 'healed', forecast: { why: 'repaired' } })
    const back = only(before, repaired, survey('2026-06-01', measured(1, 0.1)))
    expect(back).toMatchObject({ standing: 'come back', change: undefined, forecast: { why: 'one survey' } })
    expect(back.points).toHaveLength(3)
  })

  it('that the newest survey does not name was not looked at again, and is not taken for healed', () => {
    expect(only(survey('2025-06-01', measured(3, 0.3)), survey('2026-06-01'))).toMatchObject({ standing: 'not looked at again', last: { date: '2025-06-01' } })
  })

  it('cannot be compared where it was not measured both times', () => {
    expect(only(survey('2025-06-01', zinc), survey('2026-06-01', measured(3, 0.3)))).toMatchObject({ standing: 'not comparable', forecast: { why: 'not measured' } })
  })

  it('takes 20 % for the error of an area whose own was not recorded', () => {
    const plain = (areaCm2: number): Spot => ({ ...zinc, areaM2: areaCm2 * cm2, faceAreaM2: 0.3 })
    const trail = only(survey('2024-06-01', plain(3)), survey('2026-06-01', plain(3.8)))
    expect(trail).toMatchObject({ standing: 'same', last: { isAssumed: true, area: { low: expect.closeTo(3.04 * cm2, 12), high: expect.closeTo(4.56 * cm2, 12) } } })
  })

  it('is followed by its trail, whatever its id, and the order of the surveys does not matter', () => {
    const first = survey('2024-06-01', measured(3, 0.3))
    const second = survey('2026-06-01', measured(6, 0.5, { id: 's9', trail: 's1' }))
    expect(only(second, first)).toEqual(only(first, second))
    expect(trailsIn(first, survey('2026-06-01', measured(6, 0.5, { id: 's9' })))).toHaveLength(2)
  })

  it('is followed to another part where the later survey says that it is the same spot', () => {
    const before = survey('2024-06-01', measured(3, 0.3))
    const moved: SpotSurvey = { date: '2026-06-01', places: [{ position: 'cross-members', spots: [] }, { position: 'left rail', spots: [measured(6, 0.5, { id: 's9', trail: 's1' })] }] }
    expect(only(before, moved)).toMatchObject({ standing: 'grown', position: 'left rail' })
    // And on from there.
    expect(only(before, moved, { date: '2027-06-01', places: [{ position: 'left rail', spots: [measured(6, 0.5, { id: 's10', trail: 's1' })] }] }).points).toHaveLength(3)
  })

  it('is not taken for the spot of another part that happens to have the same id', () => {
    const twoParts: SpotSurvey = { date: '2024-06-01', places: [{ position: 'cross-members', spots: [measured(3, 0.3)] }, { position: 'left rail', spots: [measured(1, 0.1)] }] }
    expect(trailsIn(twoParts)).toHaveLength(2)
    const later: SpotSurvey = { date: '2026-06-01', places: [{ position: 'left rail', spots: [measured(2, 0.1, { id: 's9', trail: 's1' })] }, { position: 'cross-members', spots: [measured(3, 0.3, { id: 's8', trail: 's1' })] }] }
    expect(trailsIn(twoParts, later).map(({ position, standing }) => [position, standing])).toEqual([['cross-members', 'same'], ['left rail', 'grown']])
  })

  it('hands its readings to the life of the zinc: 70 to 58 µm in two years is 6 µm a year', () => {
    const trail = only(survey('2024-06-01', measured(3, 0.3, { coatingReadingsM: [70e-6] })), survey('2026-06-01', measured(3, 0.3, { coatingReadingsM: [58e-6] })))
    expect(trail.life).toMatchObject({ kind: 'worked out', believed: 'measured rate', observed: { asIn: 'C5' } })
  })

  it('does not carry readings over a repair', () => {
    const trail = only(survey('2022-06-01', measured(3, 0.3, { coatingReadingsM: [70e-6] })), survey('2024-06-01', { ...zinc, state: 'repaired' }), survey('2026-06-01', measured(3, 0.3, { coatingReadingsM: [120e-6] })))
    expect(trail.life).toMatchObject({ kind: 'waits' })
  })
})

describe('the date the next grade is reached', () => {
  const grown = (more: Partial<Spot> = {}) => only(survey('2024-06-01', measured(3, 0.1, more)), survey('2026-06-01', measured(6, 0.1, more))).forecast

  it('for 0.1 % to 0.2 % in two years lies between growth by itself and even growth to 0.25 %', () => {
    // Evenly 0.05 % a year: a year; doubling in two: 0.64 years. The uncertainty widens both.
    const forecast = grown()
    expect(forecast).toMatchObject({ kind: 'date', scale: 'ISO 10289', edgeShare: 0.0025, mayBeReached: false })
    if (forecast.kind !== 'date' || forecast.latestDate === undefined) throw new Error('no range')
    expect(yearsBetween('2026-06-01', forecast.earliestDate)).toBeGreaterThan(0.5)
    expect(yearsBetween('2026-06-01', forecast.earliestDate)).toBeLessThan(2 * Math.log2(1.25))
    expect(yearsBetween('2026-06-01', forecast.latestDate)).toBeGreaterThan(1)
    expect(yearsBetween('2026-06-01', forecast.latestDate)).toBeLessThan(1.2)
  })

  it('looks for the next degree of ISO 4628-3 on paint: from 0.2 % to 0.5 %', () => {
    expect(grown({ material: 'painted steel' })).toMatchObject({ kind: 'date', scale: 'ISO 4628-3', edgeShare: 0.005 })
  })

  it('may be reached already where the uncertainty reaches over the edge', () => {
    expect(only(survey('2024-06-01', measured(3, 0.1)), survey('2026-06-01', measured(7.45, 0.2))).forecast).toMatchObject({ mayBeReached: true, earliestDate: '2026-06-01' })
  })

  it.each<[string, Partial<Spot>, Partial<Spot>, string]>([
    ['growth within the uncertainty', { areaM2: 3 * cm2, areaUncertaintyM2: 0.3 * cm2 }, { areaM2: 3.2 * cm2, areaUncertaintyM2: 0.3 * cm2 }, 'growth not certain'],
    ['a last grade', { areaM2: 0.1, areaUncertaintyM2: 0.001 }, { areaM2: 0.2, areaUncertaintyM2: 0.001 }, 'last grade'],
    ['bare aluminium', { areaM2: 3 * cm2, material: 'aluminium', kind: 'pitting' }, { areaM2: 6 * cm2, material: 'aluminium', kind: 'pitting' }, 'no area scale'],
    ['hardly any growth', { areaM2: 75.5 * cm2, areaUncertaintyM2: 0.01 * cm2 }, { areaM2: 75.6 * cm2, areaUncertaintyM2: 0.01 * cm2 }, 'not within fifty years'],
  ])('is not told for %s', (_what, before, after, why) => {
    expect(only(survey('2024-06-01', { ...zinc, faceAreaM2: 0.3, ...before }), survey('2026-06-01', { ...zinc, faceAreaM2: 0.3, ...after })).forecast).toEqual({ kind: 'none', why })
  })

  it('is a range that holds both ways of growing, and no surer measurement makes it wider', () => {
    fc.assert(fc.property(fc.double({ min: 0.001, max: 0.2, noNaN: true }), fc.double({ min: 1.05, max: 4, noNaN: true }), fc.double({ min: 0.001, max: 0.2, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0.5, max: 8, noNaN: true }), (first, factor, relative, surer, span) => {
      const last = first * factor
      const edge = last * 1.3
      const range = (error: number) => {
        const [before, after] = [within(first, first * error), within(last, last * error)]
        const growth = growthBetween(before, after)
        return { certain: isCertain(growth), ...yearsToEdge(before, after, growth, span, edge) }
      }
      const wide = range(relative)
      const narrow = range(relative * surer)
      fc.pre(wide.certain)
      const evenly = ((edge - last) * span) / (last - first)
      const byItself = (Math.log(edge / last) * span) / Math.log(factor)
      expect(wide.soonest <= Math.min(evenly, byItself) + 1e-9 && wide.latest >= Math.max(evenly, byItself) - 1e-9).toBe(true)
      expect(narrow.soonest >= wide.soonest - 1e-9 && narrow.latest <= wide.latest + 1e-9).toBe(true)
    }))
  })
})

describe('the calendar', () => {
  it('counts years over leap days, and turns them back into a date', () => {
    expect(yearsBetween('2016-06-01', '2026-06-01')).toBeCloseTo(10, 2)
    expect(dateAfter('2026-06-01', 1)).toBe('2027-06-01')
    expect(dateAfter('2026-06-01', 0)).toBe('2026-06-01')
  })
})
