import { describe, expect, it } from 'vitest'
import { densities, fullShare } from '../../shared-logic/load/densities'
import { crewMassKg, personsOf } from '../../shared-logic/rules/people'
import { neededRatingKg } from '../../shared-logic/rules/ratings'
import { defaultSumsSettings } from '../../shared-logic/sums/settings'
import { sumsOf } from '../../shared-logic/sums/sums'
import { parseQuantity } from '../../shared-logic/units/convert'
import { pounds } from '../../shared-logic/units/us-customary'
import { rigSchema } from '../../shared-logic/rig/rig'

const si = (written: string, quantity: 'mass' | 'volume'): number => {
  const parsed = parseQuantity(written, quantity, 'metric')
  return parsed.ok ? parsed.si : Number.NaN
}

describe('persons on the capacity plate (33 CFR 183.41(b); 550, 547 and 546 lb from the boatbuilder’s handbook of the coast guard)', () => {
  it.each([[550, 4], [547, 4], [546, 4], [600, 4], [700, 5], [800, 6], [602.5, 5]])('%d lb are %i persons', (lb, persons) => expect(personsOf(lb)).toBe(persons))
})

describe('axle ratings of boat trailers (agency letter of 15 January 1976)', () => {
  // 3,500 lb in all, 350 of them on the coupling: the middle of the mass a tenth of the way ahead of the axle.
  const on = (axleRatingLb: number) => sumsOf({
    name: 'Letter', trailer: { massKg: pounds(3500), maximumMassKg: pounds(3500), axleRatingKg: pounds(axleRatingLb), axleCount: 1, ballToAxleM: 5 }, loading: { trailerCentreAftOfBallM: 4.5 },
  }, 'us', defaultSumsSettings)
  it.each([[3150, 'little reserve'], [3000, 'over']] as const)('an axle rated %i lb, less than the plate, under 3,150 lb: %s', (axleRatingLb, standing) => {
    const { load, balance } = on(axleRatingLb)
    expect((balance.lever?.couplingKg ?? 0) / pounds(1)).toBeCloseTo(350, 6)
    expect(load.lines.find(({ limit }) => limit.id === 'axles together')?.standing).toBe(standing)
    expect(load.lines.find(({ limit }) => limit.id === 'maximum mass')?.standing).toBe('little reserve')
  })
})

describe('people and tanks', () => {
  it('four adults and two children count 375 kg (ISO 14946:2021, ISO 12217-3:2013)', () => expect(crewMassKg(4, 2)).toBe(375))
  it('a tank counts as full at 95 %, ballast at all of it (ISO 14946:2021 clause 5 d) to f))', () => {
    expect([fullShare('petrol'), fullShare('diesel'), fullShare('fresh water'), fullShare('ballast')]).toEqual([0.95, 0.95, 0.95, 1])
  })
  it('180 L of petrol at 95 % and 747.5 kg/m³ weigh 127.8 kg (fill ISO 14946; density EN 228 middle, from memory)', () => {
    expect(0.18 * fullShare('petrol') * densities.petrol.middle).toBeCloseTo(127.8, 1)
  })
  it('petrol lies between 720 and 775 kg/m³ (EN 228, from memory): 6.01 to 6.47 lb a gallon', () => {
    expect([densities.petrol.low, densities.petrol.high]).toEqual([720, 775])
    expect((densities.petrol.low * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(6.01, 2)
    expect((densities.petrol.high * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(6.47, 2)
  })
  it('diesel lies between 820 and 845 kg/m³ (EN 590 at 15 °C, temperate grades): 6.84 to 7.05 lb a gallon', () => {
    expect([densities.diesel.low, densities.diesel.high]).toEqual([820, 845])
    expect((densities.diesel.low * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(6.84, 2)
    expect((densities.diesel.high * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(7.05, 2)
  })
  it('fresh and sea water are 8.35 and 8.55 lb a gallon (1,000 and 1,025 kg/m³, from memory)', () => {
    expect((densities['fresh water'].middle * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(8.345, 3)
    expect((densities.ballast.middle * si('1 gal', 'volume')) / pounds(1)).toBeCloseTo(8.554, 3)
  })
  it('40 gal of petrol at 745 kg/m³ weigh 248.7 lb (exact units; density from memory)', () => expect((si('40 gal', 'volume') * 745) / pounds(1)).toBeCloseTo(248.7, 1))
})

// Common practice, no source: reserve counted as a share of the rating, 15 % wanted.
describe('a load sheet', () => {
  const loaded = rigSchema.parse({
    name: 'Load example', trailer: { massKg: 520, maximumMassKg: 2000 },
    boat: { dryMassKg: 1150, tanks: [{ contents: 'petrol', capacityM3: 0.18 }, { contents: 'fresh water', capacityM3: 0.06 }] },
    loading: { tanks: [{ fill: 0.95 }, { fill: 0.95 }], gear: [{ name: 'Gear', massKg: 120 }] },
  })
  const { load } = sumsOf(loaded, 'us', defaultSumsSettings)
  const plate = load.lines.find(({ limit }) => limit.id === 'maximum mass')

  it('1,150 kg of boat, 127.8 of fuel, 57 of water, 120 of gear on 520 kg of trailer come to 1,974.8 kg: 1.26 % under a plate of 2,000 kg', () => {
    expect(load.total.massKg).toBeCloseTo(1974.8225, 4)
    expect((plate?.reserveShare ?? 0) * 100).toBeCloseTo(1.26, 2)
    expect(plate?.standing).toBe('little reserve')
  })
  it('the smallest rating that carries it full with 15 % in reserve is 2,323.3 kg; with 20 %, 2,468.5 kg', () => {
    expect(load.smallestRatingKg).toBeCloseTo(2323.3, 1)
    expect(sumsOf(loaded, 'us', { ...defaultSumsSettings, reserve: 0.2 }).load.smallestRatingKg).toBeCloseTo(2468.5, 1)
  })
  it('3,600 lb of boat, 40 gal of petrol, 250 lb of gear on 1,100 lb of trailer come to 5,199.5 lb at the middle density; the rating for 15 % is 6,117 lb', () => {
    const american = rigSchema.parse({
      name: 'In pounds', trailer: { massKg: pounds(1100) }, boat: { dryMassKg: pounds(3600), tanks: [{ contents: 'petrol', capacityM3: si('40 gal', 'volume') }] },
      loading: { tanks: [{ fill: 1 }], gear: [{ name: 'Gear', massKg: pounds(250) }] },
    })
    const total = sumsOf(american, 'us', defaultSumsSettings).load.total.massKg ?? 0
    expect(total / pounds(1)).toBeCloseTo(5198.7 + (si('40 gal', 'volume') * 2.5) / pounds(1), 1)
    expect(total / pounds(1) / 0.85).toBeCloseTo(6117, 0)
  })
  it('the same with petrol at 745 kg/m³ comes to 5,198.7 lb', () => {
    expect((pounds(3600 + 250 + 1100) + si('40 gal', 'volume') * 745) / pounds(1)).toBeCloseTo(5198.7, 1)
  })
  it('5,198.7 lb want 6,116 lb for 15 % of the rating, 5,979 for 15 % of the load, 6,498 for 20 % of the rating', () => {
    const needed = [neededRatingKg(pounds(5198.7), 0.15, 'of the rating'), neededRatingKg(pounds(5198.7), 0.15, 'of the load'), neededRatingKg(pounds(5198.7), 0.2, 'of the rating')]
    expect(needed.map((kg) => Math.round(kg / pounds(1)))).toEqual([6116, 5979, 6498])
  })
  it.each([[2001, 'over'], [1700, 'within']] as const)('%i kg on a plate of 2,000 kg: %s', (massKg, standing) => {
    const { load: sheet } = sumsOf({ name: 'Plain', trailer: { massKg, maximumMassKg: 2000 } }, 'us', defaultSumsSettings)
    expect(sheet.lines.find(({ limit }) => limit.id === 'maximum mass')?.standing).toBe(standing)
  })
})
