import { poundKg } from '../units/unit-table'

/** From which maximum mass a trailer has to have brakes, and on whose word. */
export interface BrakeThreshold {
  readonly massKg: number
  /** Whether a trailer of exactly this mass has to have them. */
  readonly inclusive: boolean
  /** Law for a private trailer, or only a benchmark for it. */
  readonly binding: boolean
  /** Whether every wheel has to have one; otherwise two wheels are enough. */
  readonly allWheels: boolean
  /** First year of building it counts for. */
  readonly builtFrom?: number
}

const pounds = (lb: number): number => lb * poundKg

/**
 * Sources: 49 CFR 393.42(b)(3) (commercial vehicles: a benchmark for others); California Vehicle Code 26302(b), 26303 (breakaway: 26304);
 * District of Columbia Municipal Regulations 18-721; UK trade association's brake rules, as a model of European practice.
 * Other states run from about 1,000 to 10,000 lb: no confirmed table.
 */
export const brakeThresholds = {
  'federal benchmark': { massKg: pounds(3000), inclusive: false, binding: false, allWheels: true },
  California: { massKg: pounds(3000), inclusive: true, binding: true, allWheels: false, builtFrom: 1966 },
  'California, camp trailer': { massKg: pounds(1500), inclusive: true, binding: true, allWheels: false },
  'District of Columbia': { massKg: pounds(3000), inclusive: false, binding: true, allWheels: true },
  Europe: { massKg: 750, inclusive: false, binding: true, allWheels: true },
} as const satisfies Readonly<Record<string, BrakeThreshold>>

/** Places a boat trailer in the United States may be judged for. */
export const usBrakePlaces = ['federal benchmark', 'California', 'District of Columbia'] as const
export type UsBrakePlace = (typeof usBrakePlaces)[number]

/** Whether the threshold calls for brakes; 'unknown' when it turns on a year that is not known. */
export const callsForBrakes = (threshold: BrakeThreshold, massKg: number, builtYear?: number): boolean | 'unknown' => {
  const over = threshold.inclusive ? massKg >= threshold.massKg - 1e-6 : massKg > threshold.massKg + 1e-6
  if (!over || threshold.builtFrom === undefined) return over
  return builtYear === undefined ? 'unknown' : builtYear >= threshold.builtFrom
}

/** A light trailer (3,000 lb gross or less) that rests over 40 % of the towing vehicle's own axle weights on it wants brakes too. Source: 49 CFR 393.42(b)(3). */
export const restsTooHeavily = (onTowVehicleKg: number, towAxlesKg: number): boolean => onTowVehicleKg > 0.4 * towAxlesKg

/**
 * Heaviest trailer a towing vehicle may have behind it on surge brakes alone, kg; ratings of both.
 * Source: 49 CFR 393.48(d): up to 12,000 lb 1.75 times the towing vehicle's rating, above that and below 20,001 lb 1.25 times.
 */
export const surgeBrakesAllowed = (trailerKg: number, towVehicleKg: number): boolean => {
  if (trailerKg >= pounds(20_001) - 1e-6) return false
  return trailerKg <= towVehicleKg * (trailerKg > pounds(12_000) + 1e-6 ? 1.25 : 1.75) + 1e-6
}

/** Heaviest trailer on surge brakes behind this vehicle, kg. The inverse of the rule above; from its two ratios and two limits. */
export const heaviestOnSurgeKg = (towVehicleKg: number): number => {
  const light = Math.min(towVehicleKg * 1.75, pounds(12_000))
  const heavy = Math.min(towVehicleKg * 1.25, pounds(20_001))
  return heavy > pounds(12_000) ? heavy : light
}

/** Heaviest trailer on overrun brakes alone in Europe, kg: category O2. From memory (UN Regulation 13): decides no verdict. */
export const heaviestOnOverrunKg = 3500

/** First year of building from which an unbraked trailer has to have a secondary coupling. Source: UK trailer trade association's brake rules. */
export const secondaryCouplingFrom = 1997

/**
 * Pull at the coupling at which overrun brakes begin to act, N: 2 to 4 % of the trailer's weight.
 * From memory (UN Regulation 13, Annex 12): decides no verdict.
 */
export const overrunOnsetN = (trailerKg: number): { readonly fromN: number; readonly toN: number } => ({ fromN: 0.02 * trailerKg * 9.81, toN: 0.04 * trailerKg * 9.81 })
