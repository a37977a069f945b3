import { z } from 'zod'
import { verdictSchema } from './verdict'

/** One corroded place. Areas m2, depths m; `faceAreaM2` is the area of the face the spot lies on. */
export const spotSchema = z.object({
  id: z.string().min(1).max(40),
  place: z.string().trim().min(1).max(120),
  material: z.enum(['galvanized steel', 'painted steel', 'bare steel', 'aluminium']),
  kind: z.enum(['red rust', 'white product', 'pitting', 'blister', 'scale', 'galvanic', 'crevice', 'hole']),
  areaM2: z.number().positive().max(20).optional(),
  faceAreaM2: z.number().positive().max(50).optional(),
  pitDepthM: z.number().nonnegative().max(0.05).optional(),
  wallM: z.number().positive().max(0.05).optional(),
})
export type Spot = z.infer<typeof spotSchema>

/** What one field of a check was answered with: a choice or text, a number in SI, a flag, or corroded spots. */
export const fieldValueSchema = z.union([z.string().max(400), z.number(), z.boolean(), z.array(spotSchema).max(60)])
export type FieldValue = z.infer<typeof fieldValueSchema>

export const fieldValuesSchema = z.record(z.string().max(40), fieldValueSchema)
export type FieldValues = Readonly<Record<string, FieldValue | undefined>>

export const noteLimit = 20_000
const reason = z.string().trim().min(1, 'a reason').max(1_000)

/** What the surveyor recorded for one check at one position. */
export const answerSchema = z.object({
  values: fieldValuesSchema.default({}),
  /** Set aside instead of answered, always with the reason. */
  aside: z.object({ as: z.enum(['not seen', 'not applicable']), reason }).optional(),
  /** The surveyor's own verdict over the judged one, always with the reason; both stand in the report. */
  overrule: z.object({ verdict: verdictSchema, reason }).optional(),
  instrument: z.string().trim().max(120).optional(),
  note: z.string().max(noteLimit, `a note of ${noteLimit} characters at most`).optional(),
})
export type Answer = z.infer<typeof answerSchema>
