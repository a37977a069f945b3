import { inchM } from '../units/unit-table'

/** Travel of a surge actuator under braking beyond which the brakes want adjusting, m. Source: two trailer makers' surge brake manuals. */
export const longTravelM = inchM

/** Share of the full stroke that should be left once the brakes bite. Common practice, no source. */
export const leastReserve = 1 / 3

/** Share of the full stroke still left. */
export const strokeReserve = (travelM: number, fullStrokeM: number): number => (fullStrokeM - travelM) / fullStrokeM
