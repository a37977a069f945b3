import { z } from 'zod'

/** Where the surveyor stands, in walking order. */
export const stations = [
  'papers',
  'coupler',
  'winch',
  'frame',
  'bunks',
  'axles',
  'hubs',
  'wheels',
  'brakes',
  'lights',
  'tie-down',
  'after-use',
] as const
export const stationSchema = z.enum(stations)
export type StationId = z.infer<typeof stationSchema>
