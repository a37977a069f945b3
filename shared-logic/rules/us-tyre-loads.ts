import { inchM, poundForceN, poundKg } from '../units/unit-table'

/** Highest cold pressure of each load range, psi. Source: published ST tyre load and pressure table; F from memory. */
const pressuresPsi = { B: 35, C: 50, D: 65, E: 80, F: 95 } as const
export type LoadRange = keyof typeof pressuresPsi

/** Load of one ST tyre at that pressure, lb. Source: published ST tyre load and pressure table. */
const loadsLb: Readonly<Record<string, Partial<Record<LoadRange, number>>>> = {
  'ST175/80-13': { B: 1100, C: 1360 },
  'ST185/80-13': { B: 1200, C: 1480 },
  'ST205/75-15': { B: 1480, C: 1820, D: 2150 },
  'ST225/75-15': { B: 1760, C: 2150, D: 2540, E: 2840 },
  'ST235/80-16': { B: 2090, C: 2600, D: 3000, E: 3420 },
}

/** 'st 205/75 R15' and 'ST205/75D15' are one row of the table: 'ST205/75-15'. */
const rowOf = (size: string): string => size.toUpperCase().replaceAll(/\s/g, '').replace(/^(ST\d{3}\/\d{2})[RD-]?(\d{2})$/, '$1-$2')

/** Highest cold pressure of a load range, Pa. */
export const rangePressurePa = (range: LoadRange): number => (pressuresPsi[range] * poundForceN) / inchM ** 2

/** Load of one ST tyre of this size and load range at its highest cold pressure, kg; undefined when the table lacks it. */
export const trailerTyreLoadKg = (size: string, range: LoadRange): number | undefined => {
  const pounds = loadsLb[rowOf(size)]?.[range]
  return pounds === undefined ? undefined : pounds * poundKg
}
