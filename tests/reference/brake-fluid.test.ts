import { describe, expect, it } from 'vitest'
import { brakeFluidGrades, fluidMonths, type BrakeFluid } from '../../shared-logic/rules/brake-fluid'
import { daysPast, dueOn, serviceState } from '../../shared-logic/rules/service-interval'
import { fromSi } from '../../shared-logic/units/convert'
import { units } from '../../shared-logic/units/unit-table'
import { judged } from '../shared-logic/checks/judged'

const fahrenheit = units.temperature.find((unit) => unit.symbol === '°F')
const inFahrenheit = (degC: number): number => (fahrenheit ? Math.round(fromSi(degC, fahrenheit)) : Number.NaN)

describe('boiling points of brake fluid (FMVSS 116, as restated in two tables)', () => {
  it.each([
    ['DOT 3', 205, 140, 401, 284], ['DOT 4', 230, 155, 446, 311], ['DOT 5', 260, 180, 500, 356], ['DOT 5.1', 260, 180, 500, 356],
  ] as const)('%s: %i °C dry, %i °C wet; %i and %i °F', (grade: BrakeFluid, dry, wet, dryF, wetF) => {
    const { dryC, wetC } = brakeFluidGrades[grade]
    expect([dryC, wetC, inFahrenheit(dryC), inFahrenheit(wetC)]).toEqual([dry, wet, dryF, wetF])
  })
  it('only DOT 5 is silicone', () => {
    expect(Object.entries(brakeFluidGrades).filter(([, grade]) => grade.silicone).map(([name]) => name)).toEqual(['DOT 5'])
  })
  it('DOT 4 measured at 150 °C fails (verdict: common practice, no source)', () => expect(judged('brakes.fluid-boiling-point', { grade: 'DOT 4', boiling: 150 }).verdict).toBe('fail'))
})

describe('fluid age (two years, one in salt: common practice, no source)', () => {
  it('24 and 12 months', () => expect([fluidMonths['fresh water'], fluidMonths['salt water']]).toEqual([24, 12]))
  it('changed 2022-06-01, every 24 months, on 2025-06-01: due 2024-06-01, 365 days over, an advisory', () => {
    expect(dueOn('2022-06-01', 24)).toBe('2024-06-01')
    expect(daysPast('2024-06-01', '2025-06-01')).toBe(365)
    expect(serviceState('2022-06-01', 24, '2025-06-01')).toBe('overdue')
    expect(judged('brakes.fluid-age', { record: 'date known', changed: '2022-06-01', water: 'fresh water' }, { surveyDate: '2025-06-01' }).verdict).toBe('advisory')
  })
  it('the last day of a longer month falls due on the last day of a shorter one', () => expect(dueOn('2024-08-31', 6)).toBe('2025-02-28'))
})
