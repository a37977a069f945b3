import { describe, expect, it } from 'vitest'
import { dcValueN, dValueN, heaviestTrailerKg, vValueN } from '../../shared-logic/coupling/coupling-values'
import { rigSchema } from '../../shared-logic/rig/rig'
import { couplingBandKg, leastVehicleStaticKg } from '../../shared-logic/rules/coupling-load'
import { heaviestOnSurgeKg, surgeBrakesAllowed } from '../../shared-logic/rules/brake-thresholds'
import { defaultSumsSettings } from '../../shared-logic/sums/settings'
import { sumsOf } from '../../shared-logic/sums/sums'
import { pounds } from '../../shared-logic/units/us-customary'

describe('D, Dc and V (UN Regulation 55 / Directive 94/20/EC, as restated in coupling technical pages)', () => {
  it.each([[2400, 1800, 10.09], [3000, 3500, 15.85], [3500, 3500, 17.17], [1900, 750, 5.28], [2500, 1500, 9.2]])('a vehicle of %i kg and a trailer of %i kg need D %d kN', (tow, trailer, kilonewtons) =>
    expect(dValueN(tow, trailer) / 1000).toBeCloseTo(kilonewtons, 2))
  it.each([[2400, 1700, 9.76], [2500, 1800, 10.27]])('a vehicle of %i kg and axles carrying %i kg need Dc %d kN', (tow, axles, kilonewtons) => expect(dcValueN(tow, axles) / 1000).toBeCloseTo(kilonewtons, 2))
  it('D 10.0 kN behind 2,400 kg allows 1,772 kg', () => expect((heaviestTrailerKg(10_000, 2400) ?? 0) / 1000).toBeCloseTo(1.772, 3))
  it('a D-value beyond the vehicle’s own weight sets no limit', () => expect(heaviestTrailerKg(25_000, 2400)).toBeUndefined())
  it('V is 6.90 kN for 6.5 m of load on 5.0 m, and 4.08 kN for 4.0 m, the ratio then counting 1', () => {
    expect(vValueN(1700, 6.5, 5, false) / 1000).toBeCloseTo(6.9, 2)
    expect(vValueN(1700, 4, 5, false) / 1000).toBeCloseTo(4.08, 2)
    expect(vValueN(1700, 4, 5, true) / 1000).toBeCloseTo(3.06, 2)
  })
  it('a ball marked D 10.0 kN is too small for 2,400 kg and 1,800 kg', () => {
    const rig = rigSchema.parse({ name: 'D', trailer: { maximumMassKg: 1800 }, couplingRatings: { towVehicleMaximumKg: 2400, dValueN: 10_000 } })
    const { dValue } = sumsOf(rig, 'eu', defaultSumsSettings).coupling
    expect(dValue.standing).toBe('too small')
    expect((dValue.neededN ?? 0) / 1000).toBeCloseTo(10.09, 2)
    expect(Math.round(1800 - (dValue.heaviestTrailerKg ?? 0))).toBe(28)
  })
})

describe('coupling load of the tow vehicle, two texts that disagree', () => {
  it.each([[500, 25], [1500, 60]])('a car with %i kg towable must allow %i kg (Directive 92/21/EEC as amended, quoted second-hand)', (towable, least) => expect(leastVehicleStaticKg(towable, '92/21/EEC as amended')).toBeCloseTo(least, 9))
  it('1,500 kg towable: 25 kg under the lesser of 4 % and 25 kg (masses and dimensions text, point 7.8.2)', () => expect(leastVehicleStaticKg(1500, 'point 7.8.2')).toBe(25))
})

describe('bands of coupling load as published in tongue-weight literature', () => {
  it.each([[0.1, 0.15, 350, 525], [0.07, 0.12, 245, 420]])('3,500 lb from %d to %d are %i to %i lb', (from, to, least, most) => {
    const band = couplingBandKg(pounds(3500), from, to)
    expect(band.fromKg / pounds(1)).toBeCloseTo(least, 6)
    expect(band.toKg / pounds(1)).toBeCloseTo(most, 6)
  })
})

describe('heaviest trailer on surge brakes (49 CFR 393.48(d))', () => {
  it.each([[6000, 10_500], [15_000, 18_750], [6800, 11_900], [9000, 12_000], [10_000, 12_500]])('behind %i lb it is %i lb', (vehicle, trailer) => {
    expect(heaviestOnSurgeKg(pounds(vehicle)) / pounds(1)).toBeCloseTo(trailer, 6)
    expect(surgeBrakesAllowed(heaviestOnSurgeKg(pounds(vehicle)), pounds(vehicle))).toBe(true)
    expect(surgeBrakesAllowed(pounds(trailer + 1), pounds(vehicle))).toBe(false)
  })
})
