import { z } from 'zod'
import { markLayerSchema } from '../../shared-logic/marking/marks'
import listed from '../../assets/example/pictures.json'

/** A drawn picture, where it belongs, and the truth it was drawn from. Lengths m, areas m2. */
const pictureSchema = z.object({
  file: z.string().regex(/^[a-z-]+\.jpg$/),
  caption: z.string(),
  checkId: z.string(),
  position: z.string(),
  takenAt: z.string(),
  /** Of the survey two years before. */
  survey: z.literal('before').optional(),
  /** What the surveyor drew over it. */
  marks: markLayerSchema.optional(),
  truth: z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])),
})
type Picture = z.infer<typeof pictureSchema>

/** Every picture of the example, as `assets/example/render` drew them. */
const all: readonly Picture[] = z.array(pictureSchema).parse(listed)

/** Those of the tandem's survey, and of the one before it. */
export const pictures = all.filter(({ survey }) => survey === undefined)
export const picturesBefore = all.filter(({ survey }) => survey === 'before')
