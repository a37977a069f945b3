import { z } from 'zod'

/** What was measured of a picture at intake. Pure figures; whether they matter is judged against what its check needs. */
export const qualitySchema = z.object({
  /** Width of the sharpest edges, px of the 1600 px picture: about 1 to 2 in focus, more when blurred. Absent where the picture holds no edge to judge by. */
  edgeWidthPx: z.number().nonnegative().optional(),
  /** Share of pixels that are burnt out or drowned in black, 0 to 1. */
  burntShare: z.number().min(0).max(1),
  blackShare: z.number().min(0).max(1),
  /** Median luminance, 0 to 1 of full white. */
  medianLuminance: z.number().min(0).max(1),
})
export type Quality = z.infer<typeof qualitySchema>
