import { z } from 'zod'
import { drawingSchema } from './drawing-schema'
import { measurementSchema } from '../measuring/measurement'
import { unitSystemSchema } from '../units/quantity'
import { figureSchema, lineSchema, tableSchema } from './sums-document'

const text = z.string()
const number = z.int().positive()

/** A photograph a spot was measured on, with what is burnt into the printed copy. The original is not touched. */
const measuredPictureSchema = z.object({
  spot: number,
  caption: text,
  alternative: text,
  measurement: measurementSchema,
  units: unitSystemSchema,
  /** Clockwise, as the photograph was turned; reports from before stand unturned and unmarked. */
  quarterTurns: z.int().min(0).max(3).default(0),
  /** The photograph's own marks, in px of the turned original; absent where there are none. */
  marks: drawingSchema.optional(),
})
export type MeasuredPicture = z.infer<typeof measuredPictureSchema>

/** One spot in full: what was found, grade and remedy, and by whose word. */
const spotPartSchema = z.object({ number, heading: text, lines: z.array(lineSchema), sources: z.array(text), cautions: z.array(text), picture: measuredPictureSchema.optional(), /** Curves over the surveys; absent where no two measured it, and in reports from before there were any. */ curves: z.array(figureSchema).optional() })
export type SpotPart = z.infer<typeof spotPartSchema>

/** Corroded spots as they are printed. Reports from before there was such a part, and of rigs where none was found, have none. */
export const corrosionPartSchema = z.object({
  title: text,
  introduction: text,
  figure: figureSchema,
  table: tableSchema,
  spots: z.array(spotPartSchema),
  /** How areas were measured, and how sure that is. */
  method: z.array(text),
  labels: z.object({ method: text, sources: text, caution: text }),
})
export type CorrosionPart = z.infer<typeof corrosionPartSchema>
