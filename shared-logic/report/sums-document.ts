import { z } from 'zod'
import { verdictSchema } from '../survey/verdict'
import { drawingSchema } from './drawing-schema'

const text = z.string()

/** How far a load reaches towards its rating, as shares of the rating: `used` over 1 is too much; from `wanted` on the reserve is broken into. */
const barSchema = z.object({ used: z.number().min(0), wanted: z.number().min(0).max(1) })

const cellSchema = z.object({ text, verdict: verdictSchema.optional(), bar: barSchema.optional(), strong: z.literal(true).optional() })
export type SumsCell = z.infer<typeof cellSchema>

export const tableSchema = z.object({
  heading: text.optional(),
  /** Shares of the table's width add up to 1. */
  columns: z.array(z.object({ heading: text, share: z.number().positive().max(1), align: z.literal('right').optional() })),
  rows: z.array(z.array(cellSchema)),
})
export type SumsTable = z.infer<typeof tableSchema>

export const figureSchema = z.object({ drawing: drawingSchema, caption: text, /** For those who do not see it. */ alternative: text })
export type SumsFigure = z.infer<typeof figureSchema>

/** A sentence of the sums, with its verdict and the verdict's word where it has one. */
export const lineSchema = z.object({ text, verdict: verdictSchema.optional(), word: text.optional(), /** Names what the lines below it are of. */ heading: z.literal(true).optional() })
export type SumsPrintedLine = z.infer<typeof lineSchema>

export const sumsSheetIds = ['load', 'balance', 'tyres', 'coupling', 'brakes', 'tie-down'] as const

/** One sheet of the sums as it is printed: drawings, tables, what follows, what it was worked from, how, and by whose word. */
export const sumsSheetSchema = z.object({
  id: z.enum(sumsSheetIds),
  title: text,
  figures: z.array(figureSchema),
  tables: z.array(tableSchema),
  lines: z.array(lineSchema),
  inputs: z.array(z.object({ label: text, value: text })),
  formulas: z.array(text),
  sources: z.array(text),
  cautions: z.array(text),
})
export type SumsSheet = z.infer<typeof sumsSheetSchema>

/** The sums of the rig on the day of issue. Reports from before there were sums have none. */
export const sumsPartSchema = z.object({
  title: text,
  introduction: text,
  labels: z.object({ inputs: text, formula: text, sources: text, caution: text }),
  sheets: z.array(sumsSheetSchema),
})
export type SumsPart = z.infer<typeof sumsPartSchema>
