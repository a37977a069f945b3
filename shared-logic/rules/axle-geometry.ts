import { inchM } from '../units/unit-table'

/** A trailer may track this far to either side of the towing vehicle's path, m: 3 in. Source: 49 CFR 393.70(a). */
export const mostTrackingM = 3 * inchM

/** Half of it is worth a look. Common practice, no source. */
export const noticeableTrackingM = 1.5 * inchM

/** Coupling to axle end, left against right, m: 1/8 in. Common practice, no source. */
export const squareWithinM = inchM / 8

/** Frame height, left against right, on level ground, m: 1 in. Common practice, no source. */
export const levelWithinM = inchM
