import { z } from 'zod'
import { lengthSymbols } from '../units/unit-table'

/** Where in a photograph, px of the original after its orientation is honoured: x to the right, y down. */
export const pixelPointSchema = z.tuple([z.number().finite().min(-100).max(40_000), z.number().finite().min(-100).max(40_000)])
export type PixelPoint = z.infer<typeof pixelPointSchema>

const polygonSchema = z.array(pixelPointSchema).min(3, 'three points or more').max(600)
/** What a known length may be, m. */
export const knownLengthRangeM = { least: 0.001, most: 20 } as const
const knownLengthM = z.number().positive().min(knownLengthRangeM.least, 'at least 1 mm').max(knownLengthRangeM.most)

/** A known length lying in the surface. */
export const knownLengthSchema = z.object({
  kind: z.literal('length'),
  from: pixelPointSchema,
  to: pixelPointSchema,
  lengthM: knownLengthM,
  /** The unit it was read in, by its symbol, so that it is told as it was read; absent in what was kept before. */
  writtenIn: z.enum(lengthSymbols).optional(),
})

/** What gives the picture its scale: a known length lying in the surface, or a rectangle of known sides, which takes the perspective out. */
export const scaleSchema = z.discriminatedUnion('kind', [
  knownLengthSchema,
  /** Corners in turn round the rectangle; the first side, corner 1 to corner 2, is `widthM` long, the second `heightM`. */
  z.object({ kind: z.literal('rectangle'), corners: z.tuple([pixelPointSchema, pixelPointSchema, pixelPointSchema, pixelPointSchema]), widthM: knownLengthM, heightM: knownLengthM }),
])
export type Scale = z.infer<typeof scaleSchema>

/** One stroke of the brush; radius in px of the original. */
export const strokeSchema = z.object({ does: z.enum(['adds', 'erases']), radiusPx: z.number().positive().max(4_000), points: z.array(pixelPointSchema).min(1).max(600) })
export type Stroke = z.infer<typeof strokeSchema>

export const rustFinders = ['rust 1'] as const

/** How the spot was outlined: by hand as a polygon, by brush, or proposed by colour and texture and then corrected by brush. */
export const outlineSchema = z.discriminatedUnion('by', [
  z.object({ by: z.literal('polygon'), points: polygonSchema }),
  z.object({ by: z.literal('brush'), strokes: z.array(strokeSchema).min(1).max(200) }),
  /** `sensitivity` 0 finds the surest rust alone, 1 everything that may be rust. */
  z.object({ by: z.literal('finder'), finder: z.enum(rustFinders), sensitivity: z.number().min(0).max(1), strokes: z.array(strokeSchema).max(200) }),
])
export type Outline = z.infer<typeof outlineSchema>

/** What a measurement came to. Areas m2; `uncertainty…` is the half width of the interval of about 95 %. */
export const measuredAreaSchema = z.object({
  areaM2: z.number().nonnegative().max(400),
  uncertaintyM2: z.number().nonnegative().max(400),
  /** Of the outlined face, where one was outlined. */
  faceAreaM2: z.number().positive().max(400).optional(),
  share: z.number().min(0).max(1).optional(),
  /** By the tightest and the loosest sensible reading of the picture. */
  shareLow: z.number().min(0).max(1).optional(),
  shareHigh: z.number().min(0).max(1).optional(),
})
export type MeasuredArea = z.infer<typeof measuredAreaSchema>

/** One measurement on one photograph, whole: the same picture and the same parameters give the same result again. */
export const measurementSchema = z.object({
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  widthPx: z.int().positive(),
  heightPx: z.int().positive(),
  scale: scaleSchema,
  outline: outlineSchema,
  /** The component's face as it shows in the picture; the finder looks inside it alone. */
  face: polygonSchema.optional(),
  result: measuredAreaSchema,
})
export type Measurement = z.infer<typeof measurementSchema>
