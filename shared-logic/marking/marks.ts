import { z } from 'zod'
import { knownLengthSchema, pixelPointSchema } from '../measuring/measurement'

/** Two points: from and to, or opposite corners. */
const span = { from: pixelPointSchema, to: pixelPointSchema }

/** One mark laid over a photograph. Every point is in px of the upright original. */
export const markSchema = z.discriminatedUnion('kind', [
  /** Its head is at `to`. */
  z.object({ kind: z.literal('arrow'), ...span }),
  /** An ellipse in the box of its two corners. */
  z.object({ kind: z.literal('circle'), ...span }),
  z.object({ kind: z.literal('box'), ...span }),
  z.object({ kind: z.literal('freehand'), points: z.array(pixelPointSchema).min(2).max(2000) }),
  /** `at` is the middle of what is written. */
  z.object({ kind: z.literal('text'), at: pixelPointSchema, text: z.string().trim().min(1).max(120) }),
  /** A line with its length; worked out from the layer's scale, not told while there is none. */
  z.object({ kind: z.literal('length'), ...span }),
])
export type Mark = z.infer<typeof markSchema>

/** The layer over one photograph. The original is never touched. */
export const markLayerSchema = z.object({
  /** Of the upright original the points refer to. */
  widthPx: z.int().positive(),
  heightPx: z.int().positive(),
  /** A known length in the picture, by which 'length' marks are measured. */
  scale: knownLengthSchema.optional(),
  marks: z.array(markSchema).max(200),
})
export type MarkLayer = z.infer<typeof markLayerSchema>
