import { z } from 'zod'
import { spotSchema, type Spot } from './spot'
import { verdictSchema } from './verdict'

/** What one field of a check was answered with: a choice or text, a number in SI, a flag, or corroded spots. */
export const fieldValueSchema = z.union([z.string().max(400), z.number(), z.boolean(), z.array(spotSchema).max(60)])
export type FieldValue = z.infer<typeof fieldValueSchema>

export const fieldValuesSchema = z.record(z.string().max(40), fieldValueSchema)
export type FieldValues = Readonly<Record<string, FieldValue | undefined>>

/** The corroded spots a field was answered with; undefined where it holds something else, or nothing yet. */
export const spotsIn = (value: FieldValue | undefined): readonly Spot[] | undefined => (Array.isArray(value) ? value : undefined)

export const noteLimit = 20_000
export const reasonLimit = 1_000
const reason = z.string().trim().min(1, 'a reason').max(reasonLimit)

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
