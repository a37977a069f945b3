import type { Trailer } from '../../rig/trailer'

/** What the axles may carry together, kg; undefined while rating or number is unknown. */
export const axlesMayCarryKg = ({ axleRatingKg, axleCount }: Trailer): number | undefined => (axleRatingKg === undefined || axleCount === undefined ? undefined : axleRatingKg * axleCount)
