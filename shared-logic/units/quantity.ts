import { z } from 'zod'

/**
 * Every kind of measured value the program knows, with the SI unit it is kept in:
 * mass kg; length m (metres and feet when shown); smallLength m (mm, inches); thickness m (micrometres, mils);
 * area m2 (cm2, sq in); volume m3 (litres, gallons); pressure Pa (kPa or bar, psi); temperature degC (degC, degF);
 * temperatureRise K (K, degF); force N; torque N·m; voltage V; duration s (min); months (count of months);
 * distance m (km, miles); ratio 1 (percent); rate 1/min; angle rad (degrees);
 * springRate kg/m (kg/mm, lb/in): load taken up for each length pressed in.
 */
export const quantities = [
  'mass', 'length', 'smallLength', 'thickness', 'area', 'volume', 'pressure', 'temperature', 'temperatureRise',
  'force', 'torque', 'voltage', 'duration', 'months', 'distance', 'ratio', 'rate', 'years', 'angle', 'springRate',
] as const
export const quantitySchema = z.enum(quantities)
export type Quantity = z.infer<typeof quantitySchema>

export const unitSystems = ['metric', 'us'] as const
export const unitSystemSchema = z.enum(unitSystems)
export type UnitSystem = z.infer<typeof unitSystemSchema>

/** A value with its kind, in the SI unit of that kind: what a phrase carries until it is shown. */
export interface Measured {
  readonly quantity: Quantity
  readonly si: number
}
export const measured = (quantity: Quantity, si: number): Measured => ({ quantity, si })
