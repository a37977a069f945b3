import type { Quantity, UnitSystem } from './quantity'

/** From so large a figure on, in the shown unit, so many significant digits. */
interface Step {
  readonly from: number
  readonly digits: number
}

const threeDigits: readonly Step[] = [{ from: 0, digits: 3 }]
const shares: readonly Step[] = [{ from: 0, digits: 2 }, { from: 10, digits: 3 }]

/**
 * How a figure that was worked out, or entered in another unit, is rounded: to the digits its reading can have had, so
 * that 50 mm is 1.97 in and 1,588 kg is 3,500 lb. Under an inch a gauge in millimetres gives two digits.
 * Common practice, no source; NIST SP 811, appendix B.7, rounds converted values in the same way (from memory).
 * What has no row here is rounded by the decimals of its unit alone.
 */
const rounding: Readonly<Record<UnitSystem, Partial<Readonly<Record<Quantity, readonly Step[]>>>>> = {
  metric: { ratio: shares },
  us: {
    mass: threeDigits, force: threeDigits, length: threeDigits, distance: threeDigits, area: threeDigits, volume: threeDigits, torque: threeDigits,
    smallLength: [{ from: 0, digits: 2 }, { from: 1, digits: 3 }],
    ratio: shares,
  },
}

/** What an error of reckoning in floating point may come to; no reading is so fine. */
const tolerance = 1e-9

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= tolerance * Math.max(1, Math.abs(value))

/** A figure of so few decimals was entered in this unit, or stands so in a rule: it comes back as it was. */
const isAsEntered = (value: number, decimals: number): boolean => isWhole(value * 10 ** decimals)

/** Rounds to so many decimals; a negative number of them rounds to tens and hundreds. */
const toDecimals = (value: number, decimals: number): number =>
  decimals >= 0 ? Number(value.toFixed(decimals)) : Math.round(value / 10 ** -decimals) * 10 ** -decimals

/** `value` in the shown unit, as it is to be read: unchanged where it was entered so, else rounded by its quantity. `decimals`: the finest the unit is shown with. */
export const roundForReading = (value: number, quantity: Quantity, system: UnitSystem, decimals: number): number => {
  const size = Math.abs(value)
  const step = rounding[system][quantity]?.findLast(({ from }) => size >= from)
  if (step === undefined || size === 0 || isAsEntered(value, decimals)) return toDecimals(value, decimals)
  return toDecimals(value, Math.min(decimals, step.digits - 1 - Math.floor(Math.log10(size))))
}

const tapeMarks = 32

/** '3/8', '2-5/16': an inch that stands on a mark of the tape and that two decimals cannot carry; undefined for any other. */
export const tapeFraction = (inches: number): string | undefined => {
  if (!isWhole(inches * tapeMarks) || isAsEntered(inches, 2)) return undefined
  const marks = Math.round(Math.abs(inches) * tapeMarks)
  let [numerator, denominator] = [marks % tapeMarks, tapeMarks]
  // A whole inch but for an error of reckoning: no fraction, and nothing to halve.
  if (numerator === 0) return undefined
  while (numerator % 2 === 0) [numerator, denominator] = [numerator / 2, denominator / 2]
  const whole = Math.floor(marks / tapeMarks)
  return `${inches < 0 ? '−' : ''}${whole > 0 ? `${whole}-` : ''}${numerator}/${denominator}`
}
