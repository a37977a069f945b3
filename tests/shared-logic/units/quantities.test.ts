import fc from 'fast-check'
import { unit as mathUnit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { formatQuantity, fromSi, parseQuantity, shownUnit, toSi } from '../../../shared-logic/units/convert'
import { quantities, unitSystems, type Quantity, type UnitSystem } from '../../../shared-logic/units/quantity'
import { shownIn, units } from '../../../shared-logic/units/unit-table'

const si = (written: string, quantity: Quantity, system: UnitSystem = 'metric'): number => {
  const parsed = parseQuantity(written, quantity, system)
  return parsed.ok ? parsed.si : Number.NaN
}

describe('a quantity as people write it', () => {
  it.each([
    ['3/8 in', 'smallLength', 0.009525],
    ['1-3/4 in', 'smallLength', 0.04445],
    ['1 3/4"', 'smallLength', 0.04445],
    ['1.6 mm', 'smallLength', 0.0016],
    ['1,6 mm', 'smallLength', 0.0016],
    ['5 ft 7 in', 'length', 1.7018],
    ["5' 7\"", 'length', 1.7018],
    ['-5 ft 6 in', 'length', -1.6764],
    ['4500 lb', 'mass', 2041.165665],
    ['4,500 lb', 'mass', 2041.165665],
    ['2.04 t', 'mass', 2040],
    ['18 gal', 'volume', 0.068137412],
    ['50 psi', 'pressure', 344_737.864_658],
    ['212 F', 'temperature', 100],
    ['-40 °F', 'temperature', -40],
    ['10 ft lb', 'torque', 13.558179],
    ['15 min', 'duration', 900],
    ['12.5 %', 'ratio', 0.125],
    ['6 ft 9', 'length', 2.0574],
    ['6 ft 9 1/2', 'length', 2.0701],
    ['6ft9', 'length', 2.0574],
    ["6' 9", 'length', 2.0574],
    ["6'-9\"", 'length', 2.0574],
    ['-6 ft 9', 'length', -2.0574],
    ['5ft7in', 'length', 1.7018],
    ['3 m2', 'area', 3],
    ['0.5 m3', 'volume', 0.5],
    ['3 per min', 'rate', 3],
    ['1200 lbf', 'force', 5337.865_938_313],
    ['45°', 'angle', 0.785_398_163],
    ['45 degrees', 'angle', 0.785_398_163],
    ['250 lb/in', 'springRate', 4464.491_831],
  ] as const)('%s of %s is %f in SI', (written, quantity, expected) => {
    expect(si(written, quantity)).toBeCloseTo(expected, 6)
  })

  it('takes a bare number in the unit the reader is shown', () => {
    expect(si('4500', 'mass', 'us')).toBeCloseTo(2041.165665, 5)
    expect(si('4500', 'mass', 'metric')).toBe(4500)
  })

  it.each([
    ['', 'quantity.empty'],
    ['heavy', 'quantity.not-a-number'],
    ['3 4 5', 'quantity.not-a-number'],
    ['12 stone', 'quantity.unknown-unit'],
    ['--3 kg', 'quantity.not-a-number'],
    ['3,4,5', 'quantity.not-a-number'],
    ['5 kg -2 kg', 'quantity.not-a-number'],
    ['1200 lbf1', 'quantity.unknown-unit'],
    ['12 kg2', 'quantity.unknown-unit'],
    ['12 lb 6', 'quantity.no-unit-after'],
  ] as const)('“%s” is refused as %s', (written, code) => {
    const parsed = parseQuantity(written, 'mass', 'metric')
    expect(parsed.ok ? 'taken' : parsed.problem.code).toBe(code)
  })

  it('tells the unit that is not known as it was typed', () => {
    expect(parseQuantity('1200 lbf1', 'force', 'us')).toEqual({ ok: false, problem: { code: 'quantity.unknown-unit', unit: 'lbf1', known: 'N, kN, daN, lbf' } })
    expect(parseQuantity('12 stone 4 lb', 'mass', 'us')).toMatchObject({ problem: { unit: 'stone' } })
  })

  it('takes a bare number behind feet as inches, unless it makes another foot', () => {
    expect(parseQuantity('6 ft 13', 'length', 'us')).toMatchObject({ problem: { code: 'quantity.no-unit-after', number: '13' } })
    expect(parseQuantity('6 m 13', 'length', 'us')).toMatchObject({ problem: { code: 'quantity.no-unit-after', number: '13' } })
    expect(parseQuantity('6 ft 9 2', 'length', 'us')).toMatchObject({ problem: { code: 'quantity.not-a-number' } })
  })

  it('is shown in the reader’s unit, grouped and rounded for reading', () => {
    expect(formatQuantity('mass', 1974.8225, 'metric')).toBe('1,975 kg')
    expect(formatQuantity('smallLength', 0.0254, 'metric')).toBe('25.4 mm')
    expect(formatQuantity('smallLength', 0.00159, 'metric')).toBe('1.59 mm')
    expect(formatQuantity('smallLength', 0.0015875, 'us')).toBe('1/16 in')
    expect(formatQuantity('temperature', -5, 'metric')).toBe('−5 °C')
    expect(formatQuantity('angle', Math.PI / 4, 'us')).toBe('45°')
  })
})

describe('every unit', () => {
  const every = quantities.flatMap((quantity) => units[quantity].map((unit) => [quantity, unit.symbol, unit] as const))

  it.each(every)('%s in %s goes there and back', (_quantity, _symbol, unit) => {
    fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => Math.abs(fromSi(toSi(value, unit), unit) - value) <= 1e-9 * Math.max(1, Math.abs(value))))
  })

  it.each(quantities.flatMap((quantity) => unitSystems.map((system) => [quantity, system] as const)))('%s has a unit to be shown in for %s', (quantity, system) => {
    expect(shownUnit(quantity, system).symbol).toBe(shownIn[system][quantity].symbol)
  })
})

// An independent oracle: mathjs, a general-purpose maths library, converts the same unit.
describe('factors agree with mathjs', () => {
  it.each([
    ['mass', 'lb', 'lbm', 'kg'], ['mass', 't', 'tonne', 'kg'], ['mass', 'oz', 'oz', 'kg'],
    ['length', 'ft', 'ft', 'm'], ['length', 'in', 'inch', 'm'], ['length', 'mi', 'mile', 'm'], ['length', 'mil', 'mil', 'm'],
    ['area', 'sq in', 'sqin', 'm2'], ['area', 'sq ft', 'sqft', 'm2'],
    ['volume', 'gal', 'gallon', 'm3'], ['volume', 'qt', 'quart', 'm3'], ['volume', 'L', 'litre', 'm3'],
    ['pressure', 'psi', 'psi', 'Pa'], ['pressure', 'bar', 'bar', 'Pa'],
    ['force', 'lbf', 'lbf', 'N'], ['duration', 'h', 'hour', 's'],
  ] as const)('one %s %s', (quantity, symbol, mathName, siName) => {
    const ours = units[quantity].find((unit) => unit.symbol === symbol)
    const theirs = mathUnit(1, mathName).toNumber(siName)
    expect(Math.abs((ours?.perSi ?? 0) - theirs) / theirs).toBeLessThan(1e-5)
  })
})
