import { z } from 'zod'
import { mostTanks } from './boat'

const text = (max: number) => z.string().trim().min(1).max(max)
const massKg = z.number().positive().max(40_000)
/** Aft of the ball centre, m; a little ahead of it is possible (a spare wheel on the tongue). */
const aftOfBallM = z.number().min(-2).max(40)
const aftOfStemM = z.number().min(-1).max(30)
const heightM = z.number().min(0).max(6)

/** One thing carried: gear, batteries, people's belongings. Where it lies: aft of the ball, or aft of the stem when it is in the boat. */
export const gearSchema = z.object({
  name: text(80),
  massKg,
  aftOfBallM: aftOfBallM.optional(),
  aftOfStemM: aftOfStemM.optional(),
  heightM: heightM.optional(),
})

/** How the boat sits and what is in it. Everything may stay unknown. */
export const loadingSchema = z.object({
  /** Stem (foremost point of the hull) and transom aft of the ball centre. */
  stemAftOfBallM: aftOfBallM.optional(),
  transomAftOfBallM: aftOfBallM.optional(),
  /** The trailer's own centre of mass. */
  trailerCentreAftOfBallM: aftOfBallM.optional(),
  trailerCentreHeightM: heightM.optional(),
  /** The dry boat's centre of mass, without the engine where that is listed by itself. */
  boatCentreAftOfStemM: aftOfStemM.optional(),
  boatCentreHeightM: heightM.optional(),
  engineAftOfStemM: aftOfStemM.optional(),
  engineHeightM: heightM.optional(),
  /** In the order of the boat's tanks; what is in them as a share of the capacity, 0 to 1, or as a volume. */
  tanks: z
    .array(z.object({ fill: z.number().min(0).max(1).optional(), contentsM3: z.number().min(0).max(10).optional(), aftOfStemM: aftOfStemM.optional(), heightM: heightM.optional() }))
    .max(mostTanks)
    .optional(),
  gear: z.array(gearSchema).max(40).optional(),
})

/** Ratings ahead of and behind the ball; the smallest of each kind counts. */
export const couplingRatingsSchema = z.object({
  couplerRatingKg: massKg.optional(),
  ballRatingKg: massKg.optional(),
  hitchRatingKg: massKg.optional(),
  towVehicleRatingKg: massKg.optional(),
  /** Greatest coupling load marked on coupler, ball, hitch, and in the vehicle's handbook (S value, tongue limit). */
  couplerStaticKg: massKg.optional(),
  ballStaticKg: massKg.optional(),
  hitchStaticKg: massKg.optional(),
  towVehicleStaticKg: massKg.optional(),
  /** Smallest D-value marked on ball, bar and coupling head. */
  dValueN: z.number().positive().max(500_000).optional(),
  chainBreakingForceN: z.number().positive().max(1_000_000).optional(),
  chainCount: z.int().min(1).max(4).optional(),
  /** Smallest V-value marked on the coupling, N; only centre-axle trailers behind lorries have one. */
  vValueN: z.number().positive().max(500_000).optional(),
  /** The towing vehicle's own permissible mass (GVWR), and what its axles weigh together without the trailer. */
  towVehicleMaximumKg: massKg.optional(),
  towVehicleAxlesKg: massKg.optional(),
  towVehicleHasAirSuspension: z.boolean().optional(),
})

/** Whether an equaliser shares the load among the axles, or each has its own arms or springs. */
export const loadSharings = ['equalised', 'independent'] as const

/** Geometry the balance and the load transfer need beside the plan's own. */
export const stanceSchema = z.object({
  axleSpacingM: z.number().min(0.4).max(3).optional(),
  trackM: z.number().min(0.6).max(3).optional(),
  /** The ball above the ground as towed, and the height at which the trailer stands level. */
  ballHeightM: z.number().min(0.1).max(1.5).optional(),
  levelBallHeightM: z.number().min(0.1).max(1.5).optional(),
  wheelCentreHeightM: z.number().min(0.1).max(0.8).optional(),
  loadSharing: z.enum(loadSharings).optional(),
  /** Independent arms or springs: load one axle takes up for each metre it is pressed in. */
  axleRateKgPerM: z.number().min(500).max(500_000).optional(),
  /** Mass of axles, wheels and brakes that moves along when the axle is moved. */
  axleGroupKg: massKg.optional(),
})

export type CouplingRatings = z.infer<typeof couplingRatingsSchema>
