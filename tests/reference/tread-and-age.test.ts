import { describe, expect, it } from 'vitest'
import { isTreadBelow, isTreadLow, leastTreadM, queenslandLeastTreadM } from '../../shared-logic/rules/tread'
import { oldTyreYears, tooOldTyreYears } from '../../shared-logic/rules/tyre-age'
import { longCutM } from '../../shared-logic/rules/tyre-pressure'
import { judged } from '../shared-logic/checks/judged'

describe('tread depth', () => {
  it('2/32 in is 1.5875 mm (49 CFR 393.75(c), 49 CFR 570.62(a))', () => expect(leastTreadM.us).toBeCloseTo(0.0015875, 9))
  it('Europe asks 1.6 mm (Construction and Use Regulations, UK, regulation 27)', () => expect(leastTreadM.eu).toBe(0.0016))
  it.each([
    ['1.59 mm', 0.00159, 'us', false], ['1.59 mm', 0.00159, 'eu', true], ['1.5 mm', 0.0015, 'us', true], ['1.5 mm', 0.0015, 'eu', true],
  ] as const)('%s against the %4$s limit', (_said, depth, book, below) => expect(isTreadBelow(depth, leastTreadM[book])).toBe(below))
  it('1.5 mm meets Queensland’s practice note', () => expect(isTreadBelow(0.0015, queenslandLeastTreadM)).toBe(false))
  it('less than twice the limit is low (common practice, no source)', () => {
    expect(isTreadLow(0.0031, leastTreadM.us)).toBe(true)
    expect(isTreadLow((4 / 32) * 0.0254, leastTreadM.us)).toBe(false)
  })
  it('1.59 mm passes no worse than advisory in the United States, fails in Europe', () => {
    expect(judged('wheels.tread', { depth: 0.00159 }).verdict).toBe('advisory')
    expect(judged('wheels.tread', { depth: 0.00159 }, { ruleBook: 'eu' }).verdict).toBe('fail')
  })
})

describe('damage and age', () => {
  it('a 26 mm sidewall cut reaching the cords fails (New Zealand damage limits: over 25 mm)', () => {
    expect(longCutM).toBe(0.025)
    expect(judged('wheels.sidewall', { condition: 'cut', length: 0.026, cords: 'reached' }).verdict).toBe('fail')
  })
  it('6 and 10 years (common practice, no source)', () => expect([oldTyreYears, tooOldTyreYears]).toEqual([6, 10]))
  it('2319 on 1 June 2025 passes (limit: common practice, no source)', () => expect(judged('wheels.age', { code: 'read', date: '2319' }, { surveyDate: '2025-06-01' }).verdict).toBe('pass'))
  it('5012 on 1 June 2025 fails (limit: common practice, no source)', () => expect(judged('wheels.age', { code: 'read', date: '5012' }, { surveyDate: '2025-06-01' }).verdict).toBe('fail'))
  it('tread 2.4 mm against 1.6 mm is an advisory', () => expect(judged('wheels.tread', { depth: 0.0024 }, { ruleBook: 'eu' }).verdict).toBe('advisory'))
})
