import { describe, expect, it } from 'vitest'
import { bearingDistanceM, bearingMonths, endPlayM, hubGoodC, hubStopC, medianOf } from '../../shared-logic/rules/bearings'
import { daysPast, dueOn } from '../../shared-logic/rules/service-interval'
import { judged } from '../shared-logic/checks/judged'

const celsius = (degF: number): number => ((degF - 32) * 5) / 9

/** Each hub against the median of the others, as the surveyor enters it. */
const verdictsOf = (hubsF: readonly number[]): string[] =>
  hubsF.map((hub, index) => judged('hubs.heat', { hub: celsius(hub), others: celsius(medianOf(hubsF.filter((_, other) => other !== index)) ?? Number.NaN) }).verdict)

describe('hub temperatures (published bearing and hub articles; 20 and 30 °F: common practice among them)', () => {
  it('110, 112, 109, 140 °F: the fourth, 30 °F above the middle of the rest, is attended to', () => expect(verdictsOf([110, 112, 109, 140])).toEqual(['pass', 'pass', 'pass', 'fail']))
  it('118, 121, 116, 124 °F: all pass', () => expect(verdictsOf([118, 121, 116, 124])).toEqual(['pass', 'pass', 'pass', 'pass']))
  it('150 °F is 66 °C, 250 °F is 121 °C', () => expect([Math.round(hubGoodC), Math.round(hubStopC)]).toEqual([66, 121]))
  it('the middle of an even number of hubs is halfway between the two in the middle', () => {
    expect(medianOf([1, 2, 3, 10])).toBe(2.5)
    expect(medianOf([3, 1, 2])).toBe(2)
    expect(medianOf([])).toBeUndefined()
  })
})

describe('lubricant and play', () => {
  it('milky oil fails until the hub has been opened (published bearing and hub articles; verdict: common practice, no source)', () => {
    expect(judged('hubs.oil-condition', { condition: 'milky' })).toMatchObject({ verdict: 'fail', by: 'before it is towed' })
  })
  it('end play 0.18 and 0.30 mm: pass and advisory, never fail (0.001 to 0.010 in: from memory; one maker’s manual, quoted second-hand, agrees)', () => {
    expect(endPlayM.most).toBeCloseTo(0.00025, 5)
    expect([0.00018, 0.0003].map((play) => judged('hubs.end-play', { felt: 'slight rock', play }).verdict)).toEqual(['pass', 'advisory'])
  })
  it('visible rock with noise fails (Directive 2014/45/EU, Annex I, item 5.1.3)', () => expect(judged('hubs.end-play', { felt: 'rock and knock' }).verdict).toBe('fail'))
})

describe('bearing service (published bearing and hub articles)', () => {
  it('done 2024-05-10, every 12 months, on 2025-06-01: due 2025-05-10, 22 days over, an advisory', () => {
    expect(dueOn('2024-05-10', bearingMonths)).toBe('2025-05-10')
    expect(daysPast('2025-05-10', '2025-06-01')).toBe(22)
    expect(judged('hubs.grease-interval', { record: 'date known', greased: '2024-05-10' }, { surveyDate: '2025-06-01' }).verdict).toBe('advisory')
  })
  it('done at 20,000 km, every 19,000 km, now 38,900 km: not due, 100 km left', () => {
    const since = 38_900_000 - 20_000_000
    expect(bearingDistanceM - since).toBe(100_000)
    expect(judged('hubs.grease-interval', { record: 'date known', greased: '2025-05-01', distance: since }, { surveyDate: '2025-06-01' }).verdict).toBe('pass')
  })
})
