import { z } from 'zod'

const text = (max: number) => z.string().trim().min(1).max(max)
const aftOfBallM = z.number().min(-2).max(40)
const heightM = z.number().min(0).max(6)

export const lashingRoutes = ['direct', 'over the top', 'back to the same side'] as const
export const strapPlaces = ['winch', 'bow tie', 'transom', 'amidships'] as const
export const supportSurfaces = ['carpet', 'plastic', 'wet'] as const

const forceN = z.number().positive().max(500_000)
const strapPointSchema = z.object({ aftOfBallM, toRightM: z.number().min(-3).max(3), heightM })
const rightAngleRad = Math.PI / 2

/** How a strap leads from boat to trailer where its ends were not measured, rad: below the horizontal, and off the long axis in plan. */
const strapAnglesSchema = z.object({
  downRad: z.number().min(-rightAngleRad, 'at most 90 degrees').max(rightAngleRad, 'at most 90 degrees'),
  offRad: z.number().min(0, 'between 0 and 90 degrees').max(rightAngleRad, 'between 0 and 90 degrees'),
  leads: z.enum(['forward', 'aft']),
  side: z.enum(['left', 'right']),
})

/**
 * One strap: where it holds the boat, where the trailer; aft of the ball, to the right of the middle, above the ground.
 * Over the top the points are those of one side, and the other side is its mirror image. Points count before angles.
 */
export const strapSchema = z
  .object({
    position: text(80),
    place: z.enum(strapPlaces),
    route: z.enum(lashingRoutes),
    /** Working load limit (WLL) or lashing capacity (LC) on the label, N. */
    ratedN: forceN.optional(),
    /** The same of its hooks and tensioner, and of the weaker of its two anchors; the weakest part counts. */
    fittingRatedN: forceN.optional(),
    anchorRatedN: forceN.optional(),
    /** Breaking strength marked on the label, N. */
    breakingN: forceN.optional(),
    /** Standard tension force (STF) on the label, N; needed over the top. */
    tensionN: z.number().positive().max(50_000).optional(),
    boat: strapPointSchema.optional(),
    trailer: strapPointSchema.optional(),
    angles: strapAnglesSchema.optional(),
  })
  .refine(({ boat, trailer }) => !boat || !trailer || boat.aftOfBallM !== trailer.aftOfBallM || boat.toRightM !== trailer.toRightM || boat.heightM !== trailer.heightM, {
    message: 'two ends that lie apart',
    path: ['trailer'],
  })

export const tieDownSchema = z.object({
  straps: z.array(strapSchema).max(20),
  /** Static friction between hull and supports as measured; unknown uses the careful figure of the table and says so. */
  friction: z.number().min(0).max(1).optional(),
  /** What the hull lies on where it lies on bunks. */
  supportSurface: z.enum(supportSurfaces).optional(),
  /** Whether the bow stop blocks the boat against moving forward, and what it and its post bear, N. */
  bowStopBlocks: z.boolean().optional(),
  bowStopRatedN: forceN.optional(),
  /** Whether the winch strap is to count among the tiedowns; by itself it does not, for winch and strap are for loading. */
  winchStrapCounts: z.boolean().optional(),
})

export type Strap = z.infer<typeof strapSchema>
export type TieDown = z.infer<typeof tieDownSchema>
