import { z } from 'zod'
import { measurementSchema } from '../measuring/measurement'

export const spotMaterials = ['galvanized steel', 'painted over zinc', 'zinc-plated steel', 'painted steel', 'bare steel', 'aluminium'] as const
export const spotKinds = ['red rust', 'white product', 'pitting', 'blister', 'scale', 'galvanic', 'crevice', 'weld', 'hole'] as const
export const spotComponents = [
  'tongue', 'rail', 'cross-member', 'winch post', 'coupler', 'axle', 'spring or arm', 'hanger', 'bunk bracket', 'roller bracket', 'mudguard', 'lamp bracket', 'fastener', 'wheel', 'other',
] as const
/** Metals a spot's member may touch, nobler or baser. */
export const touchingMetals = ['stainless steel', 'carbon steel', 'galvanized steel', 'zinc plated', 'aluminium', 'brass or bronze', 'copper', 'lead', 'nickel alloy', 'magnesium'] as const

const aftOfBallM = z.number().min(-2).max(40)

/** Where the spot was put on the drawing: from above, or from the side. */
const spotPlaceSchema = z.discriminatedUnion('view', [
  z.object({ view: z.literal('plan'), aftOfBallM, toRightM: z.number().min(-5).max(5) }),
  z.object({ view: z.literal('side'), aftOfBallM, heightM: z.number().min(0).max(6) }),
])

/**
 * One corroded place. Areas m2, depths and thicknesses m; `faceAreaM2` is the area of the face the spot lies on.
 * What was not measured is absent. `trail` is the same on every survey that follows the same spot; the first record's own id else.
 */
export const spotSchema = z.object({
  id: z.string().min(1).max(40),
  trail: z.string().min(1).max(40).optional(),
  /** 'repaired': found sound where it was corroded before. */
  state: z.enum(['present', 'repaired']).optional(),
  place: z.string().trim().min(1).max(120),
  at: spotPlaceSchema.optional(),
  component: z.enum(spotComponents).optional(),
  material: z.enum(spotMaterials),
  kind: z.enum(spotKinds),
  areaM2: z.number().positive().max(20).optional(),
  /** Half width of the interval of about 95 %; there when the area was measured on a photograph. */
  areaUncertaintyM2: z.number().nonnegative().max(20).optional(),
  faceAreaM2: z.number().positive().max(50).optional(),
  /** Corroded share of the face where areas are not known but the share was measured, 0 to 1. */
  share: z.number().min(0).max(1).optional(),
  pitDepthM: z.number().nonnegative().max(0.05).optional(),
  /** Wall as made. */
  wallM: z.number().positive().max(0.05).optional(),
  /** Least wall left, measured over an area (general thinning), not in a pit. */
  remainingM: z.number().nonnegative().max(0.05).optional(),
  pitCount: z.int().positive().max(10_000).optional(),
  /** Zinc and paint by gauge, m; every reading by itself. */
  coatingReadingsM: z.array(z.number().nonnegative().max(0.005)).max(30).optional(),
  /** Within 25 mm of a weld; within 30 cm of coupler, winch post, axle, spring or brake mounting. */
  besideWeld: z.boolean().optional(),
  nearMounting: z.boolean().optional(),
  /** The other metal at a galvanic spot, and whether that other part is the smaller one. */
  touches: z.enum(touchingMetals).optional(),
  touchingIsSmaller: z.boolean().optional(),
  measurement: measurementSchema.optional(),
})
export type Spot = z.infer<typeof spotSchema>

/** What ties the records of one spot together over the surveys. */
export const trailOf = ({ id, trail }: Pick<Spot, 'id' | 'trail'>): string => trail ?? id
