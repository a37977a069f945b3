import { z } from 'zod'

/** What was measured of a picture at intake. Pure figures; whether they matter is judged against what its check needs. */
export const qualitySchema = z.object({
  /** Width of the sharpest edges, px of the picture at most 1600 px long: 1 to 4 in focus, more when blurred. Absent where it holds too few edges to judge by. */
  edgeWidthPx: z.number().nonnegative().optional(),
  /** Shares of its pixels that are burnt out and that are black, 0 to 1. */
  burntShare: z.number().min(0).max(1),
  blackShare: z.number().min(0).max(1),
  /** Light of the middle one of its pixels, 0 to 1 of full white. */
  medianLuminance: z.number().min(0).max(1),
})
export type Quality = z.infer<typeof qualitySchema>
