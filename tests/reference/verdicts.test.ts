import { describe, expect, it } from 'vitest'
import { worstVerdict } from '../../shared-logic/survey/verdict'
import { judged, type Judged } from '../shared-logic/checks/judged'

/** The worst of some findings, and whether the rig may be towed before they are put right. */
const together = (...findings: readonly Judged[]) => ({ verdict: worstVerdict(findings.map(({ verdict }) => verdict)), mayBeTowed: !findings.some(({ verdict, by }) => verdict === 'fail' && by === 'before it is towed') })
const tread = (depth: number): Judged => judged('wheels.tread', { depth }, { ruleBook: 'eu' })
const nuts = (missing: number, loose: number): Judged => judged('wheels.nuts', { missing, loose })

// Minor, major, dangerous: Directive 2014/45/EU, Annex I (wheel nuts: UK inspection manual 5.2.1). That a verdict is the worst finding and
// never a sum, and which finding is which: common practice, no source.
describe('a rig’s verdict', () => {
  it('with one loose nut, tread of 2.4 mm against 1.6 mm and a faded side reflector is a fail', () => {
    const found = [nuts(0, 1), tread(0.0024), judged('lights.reflector', { state: 'faded' }, { position: 'reflector side rear left' })]
    expect(found.map(({ verdict }) => verdict)).toEqual(['fail', 'advisory', 'advisory'])
    expect(together(...found).verdict).toBe('fail')
  })
  it('with two nuts missing on one wheel and rust on a brake line is a fail, not to be towed', () => {
    const found = [nuts(2, 0), judged('brakes.lines', { condition: 'surface rust' }, { trailer: { brakes: 'surge' } })]
    expect(found.map(({ verdict }) => verdict)).toEqual(['fail', 'advisory'])
    expect(together(...found)).toEqual({ verdict: 'fail', mayBeTowed: false })
  })
  it('with one dangerous, two major and three minor findings is that of the worst: a fail, not to be towed', () => {
    expect(together(nuts(2, 0), nuts(0, 1), nuts(1, 0), tread(0.0024), tread(0.0025), tread(0.0026))).toEqual({ verdict: 'fail', mayBeTowed: false })
  })
  it('with five minor findings is an advisory, however many they are', () => {
    const minor = Array.from({ length: 5 }, () => tread(0.0024))
    expect(together(...minor)).toEqual({ verdict: 'advisory', mayBeTowed: true })
  })
  it('with lining of 2.2 mm and tyres seven years old is an advisory', () => {
    const found = [judged('brakes.lining', { thickness: 0.0022 }), judged('wheels.age', { code: 'read', date: '2218' }, { surveyDate: '2025-06-01' })]
    expect(found.map(({ verdict }) => verdict)).toEqual(['advisory', 'advisory'])
    expect(together(...found)).toEqual({ verdict: 'advisory', mayBeTowed: true })
  })
})

describe('inspection of commercial trailers (49 CFR 396.17: at least once in 12 months)', () => {
  it.each([['2024-05-31', 'overdue', 'advisory'], ['2024-06-01', 'current', 'pass']] as const)('on 2025-06-01 one of %s is %s', (inspected, outcome, verdict) => {
    expect(judged('papers.annual-inspection', { record: 'seen', inspected }, { surveyDate: '2025-06-01' })).toMatchObject({ outcome, verdict })
  })
})
