/** What the published texts ask of the tow vehicle, not of the trailer: its permissible coupling load must be at least this. They disagree. */
export const vehicleTexts = ['92/21/EEC as amended', 'point 7.8.2'] as const
export type VehicleText = (typeof vehicleTexts)[number]

const shareOfTowable = 0.04
const fixedKg = 25

/**
 * Least permissible coupling load a car must have for a towable mass, kg.
 * '92/21/EEC as amended': at least 4 % and at least 25 kg (quoted second-hand). 'point 7.8.2': 4 % or 25 kg, whichever is the lesser
 * (masses and dimensions text, point 7.8.2). Which is in force is not settled, so neither decides a verdict.
 */
export const leastVehicleStaticKg = (towableKg: number, text: VehicleText): number =>
  text === 'point 7.8.2' ? Math.min(shareOfTowable * towableKg, fixedKg) : Math.max(shareOfTowable * towableKg, fixedKg)

/** A band of coupling loads for a total, kg. Shares by common practice as published in tongue-weight literature. */
export const couplingBandKg = (totalKg: number, fromShare: number, toShare: number): { readonly fromKg: number; readonly toKg: number } => ({ fromKg: totalKg * fromShare, toKg: totalKg * toShare })
