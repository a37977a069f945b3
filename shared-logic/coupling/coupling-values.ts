/** Gravity as the coupling formulas print it, m/s2. */
const formulaGravity = 9.81

/** D-value needed, N: towing vehicle and trailer by their permissible masses, kg. Source: UN Regulation 55 / Directive 94/20/EC. */
export const dValueN = (towVehicleKg: number, trailerKg: number): number => (formulaGravity * towVehicleKg * trailerKg) / (towVehicleKg + trailerKg)

/** Dc-value needed for a centre-axle trailer, N: `axlesKg` is what its axles carry, without the coupling load. Source: as above. */
export const dcValueN = (towVehicleKg: number, axlesKg: number): number => dValueN(towVehicleKg, axlesKg)

/** Heaviest trailer a D-value allows behind this vehicle, kg; undefined when the value sets no limit. Inverse of the D formula. */
export const heaviestTrailerKg = (markedDValueN: number, towVehicleKg: number): number | undefined => {
  const left = formulaGravity * towVehicleKg - markedDValueN
  return left > 0 ? (markedDValueN * towVehicleKg) / left : undefined
}

/**
 * V-value needed for a centre-axle trailer, N. `loadLengthM` x and `couplingToAxleM` l; x2/l2 counts at least 1.
 * Valid for a coupling load up to 10 % of the trailer and 1,000 kg. Source: UN Regulation 55 / Directive 94/20/EC.
 */
export const vValueN = (axlesKg: number, loadLengthM: number, couplingToAxleM: number, airSuspendedTowVehicle: boolean): number =>
  (airSuspendedTowVehicle ? 1.8 : 2.4) * Math.max(1, (loadLengthM / couplingToAxleM) ** 2) * axlesKg
