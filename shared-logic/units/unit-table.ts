import type { Quantity, UnitSystem } from './quantity'

/** One unit a person may write. `perSi`: how many SI units one of it is; `offset`: SI value at zero (temperatures). */
export interface Unit {
  readonly symbol: string
  readonly spellings: readonly string[]
  readonly perSi: number
  readonly offset?: number
}

const unit = (symbol: string, perSi: number, spellings: readonly string[] = [], offset?: number): Unit =>
  offset === undefined ? { symbol, perSi, spellings } : { symbol, perSi, spellings, offset }

/** International pound and inch, exact (international yard and pound agreement of 1959). */
export const poundKg = 0.45359237
export const inchM = 0.0254
export const footM = 0.3048
const standardGravity = 9.80665
export const poundForceN = poundKg * standardGravity
const gallonM3 = 231 * inchM ** 3

const lengths = [
  unit('m', 1, ['metre', 'metres', 'meter', 'meters']),
  unit('cm', 0.01),
  unit('mm', 0.001),
  unit('ft', footM, ["'", '′', 'foot', 'feet']),
  unit('in', inchM, ['"', '″', 'inch', 'inches']),
  unit('µm', 1e-6, ['um', 'μm', 'micron', 'microns']),
  unit('mil', inchM / 1000, ['mils', 'thou']),
  unit('km', 1000),
  unit('mi', 1609.344, ['mile', 'miles']),
] as const

/** The units of length by their symbols, for what is kept with the unit it was read in. */
export const lengthSymbols = ['m', 'cm', 'mm', 'ft', 'in', 'µm', 'mil', 'km', 'mi'] as const
export type LengthSymbol = (typeof lengthSymbols)[number]

/** Every unit the program understands, by quantity. */
export const units: Readonly<Record<Quantity, readonly Unit[]>> = {
  mass: [unit('kg', 1, ['kgs', 'kilo', 'kilos']), unit('t', 1000, ['tonne', 'tonnes']), unit('g', 0.001), unit('lb', poundKg, ['lbs', 'pound', 'pounds']), unit('oz', poundKg / 16)],
  length: lengths,
  smallLength: lengths,
  thickness: lengths,
  distance: lengths,
  area: [unit('m²', 1, ['m2', 'sq m']), unit('cm²', 1e-4, ['cm2', 'sq cm']), unit('mm²', 1e-6, ['mm2', 'sq mm']), unit('sq in', inchM ** 2, ['in2', 'in²']), unit('sq ft', footM ** 2, ['ft2', 'ft²'])],
  volume: [unit('L', 0.001, ['l', 'litre', 'litres', 'liter', 'liters']), unit('m³', 1, ['m3']), unit('gal', gallonM3, ['gallon', 'gallons', 'us gal']), unit('qt', gallonM3 / 4)],
  pressure: [unit('kPa', 1000, ['kpa']), unit('bar', 100_000), unit('psi', poundForceN / inchM ** 2), unit('Pa', 1), unit('MPa', 1e6)],
  temperature: [unit('°C', 1, ['c', 'degc', 'deg c'], 0), unit('°F', 5 / 9, ['f', 'degf', 'deg f'], (-32 * 5) / 9)],
  temperatureRise: [unit('K', 1, ['k', '°c', 'c']), unit('°F', 5 / 9, ['f', 'degf'])],
  force: [unit('N', 1, ['n']), unit('kN', 1000, ['kn']), unit('daN', 10, ['dan']), unit('lbf', poundForceN, ['lb', 'lbs'])],
  torque: [unit('N·m', 1, ['nm', 'n m', 'n.m']), unit('ft·lb', poundForceN * footM, ['ft lb', 'ftlb', 'lb ft', 'ft-lb', 'lbf ft'])],
  voltage: [unit('V', 1, ['v', 'volt', 'volts']), unit('mV', 0.001, ['mv'])],
  duration: [unit('min', 60, ['minute', 'minutes']), unit('s', 1, ['sec', 'second', 'seconds']), unit('h', 3600, ['hour', 'hours'])],
  months: [unit('months', 1, ['month', 'mo']), unit('years', 12, ['year', 'yr', 'y'])],
  years: [unit('years', 1, ['year', 'yr', 'y']), unit('months', 1 / 12, ['month', 'mo'])],
  ratio: [unit('%', 0.01, ['percent', 'per cent'])],
  rate: [unit('per min', 1, ['/min', 'per minute', 'fpm'])],
  angle: [unit('°', Math.PI / 180, ['deg', 'degs', 'degree', 'degrees']), unit('rad', 1)],
  springRate: [unit('kg/mm', 1000), unit('kg/cm', 100), unit('kg/m', 1), unit('lb/in', poundKg / inchM, ['lbs/in', 'lbf/in']), unit('lb/ft', poundKg / footM), unit('N/mm', 1000 / standardGravity)],
}

/** The unit a quantity is shown in, and the decimals that go with it. */
export interface Shown {
  readonly symbol: string
  readonly decimals: number
}
export const shownIn: Readonly<Record<UnitSystem, Readonly<Record<Quantity, Shown>>>> = {
  metric: {
    mass: { symbol: 'kg', decimals: 0 }, length: { symbol: 'm', decimals: 2 }, smallLength: { symbol: 'mm', decimals: 2 }, thickness: { symbol: 'µm', decimals: 0 },
    area: { symbol: 'cm²', decimals: 1 }, volume: { symbol: 'L', decimals: 0 }, pressure: { symbol: 'kPa', decimals: 0 }, temperature: { symbol: '°C', decimals: 0 },
    temperatureRise: { symbol: 'K', decimals: 0 }, force: { symbol: 'N', decimals: 0 }, torque: { symbol: 'N·m', decimals: 0 }, voltage: { symbol: 'V', decimals: 2 },
    duration: { symbol: 'min', decimals: 1 }, months: { symbol: 'months', decimals: 0 }, distance: { symbol: 'km', decimals: 0 }, ratio: { symbol: '%', decimals: 2 },
    rate: { symbol: 'per min', decimals: 0 }, years: { symbol: 'years', decimals: 1 }, angle: { symbol: '°', decimals: 1 }, springRate: { symbol: 'kg/mm', decimals: 2 },
  },
  us: {
    mass: { symbol: 'lb', decimals: 0 }, length: { symbol: 'ft', decimals: 2 }, smallLength: { symbol: 'in', decimals: 3 }, thickness: { symbol: 'mil', decimals: 1 },
    area: { symbol: 'sq in', decimals: 2 }, volume: { symbol: 'gal', decimals: 1 }, pressure: { symbol: 'psi', decimals: 0 }, temperature: { symbol: '°F', decimals: 0 },
    temperatureRise: { symbol: '°F', decimals: 0 }, force: { symbol: 'lbf', decimals: 0 }, torque: { symbol: 'ft·lb', decimals: 0 }, voltage: { symbol: 'V', decimals: 2 },
    duration: { symbol: 'min', decimals: 1 }, months: { symbol: 'months', decimals: 0 }, distance: { symbol: 'mi', decimals: 0 }, ratio: { symbol: '%', decimals: 2 },
    rate: { symbol: 'per min', decimals: 0 }, years: { symbol: 'years', decimals: 1 }, angle: { symbol: '°', decimals: 1 }, springRate: { symbol: 'lb/in', decimals: 0 },
  },
}
