/** Differences below a millionth are noise of unit conversion (3/8 in is not exactly 0.009525 m in floating point). */
const noise = 1e-6

/** Whether a value lies above a limit; a value at the limit does not. */
export const isOver = (value: number, limit: number): boolean => value - limit > Math.abs(limit) * noise

/** Whether a value lies below a limit; a value at the limit does not. */
export const isUnder = (value: number, limit: number): boolean => limit - value > Math.abs(limit) * noise
