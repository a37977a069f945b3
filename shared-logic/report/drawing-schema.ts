import { z } from 'zod'
import type { Drawing } from '../drawings/drawing'

const roleSchema = z.enum(['ink', 'hairline', 'faint', 'hull', 'metal', 'rubber', 'oil', 'strap', 'paper', 'select', 'pass', 'advisory', 'fail', 'not seen', 'mark', 'casing'])

const painted = {
  stroke: roleSchema.optional(),
  fill: roleSchema.optional(),
  weight: z.number().optional(),
  dashed: z.literal(true).optional(),
}

const shapeSchema = z.discriminatedUnion('kind', [
  z.object({ ...painted, kind: z.literal('path'), d: z.string() }),
  z.object({ ...painted, kind: z.literal('circle'), x: z.number(), y: z.number(), r: z.number() }),
  z.object({
    ...painted, kind: z.literal('text'), x: z.number(), y: z.number(), text: z.string(), size: z.number(),
    anchor: z.enum(['start', 'middle', 'end']).optional(), bold: z.literal(true).optional(),
  }),
])

/** A drawing as it is kept inside a report: the shapes themselves, so that it looks the same when the drawing code has changed. */
export const drawingSchema: z.ZodType<Drawing> = z.object({
  viewBox: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  shapes: z.array(shapeSchema),
  places: z.array(z.object({ id: z.string(), x: z.number(), y: z.number() })),
  toScale: z.boolean(),
})
