import { z } from 'zod'

const date = z.iso.date()
const massKg = z.number().positive().max(40_000)
/** A scale may show nothing. */
const shownKg = z.number().min(0).max(40_000)
const forceN = z.number().min(0).max(200_000)

/** One axle on scales: both sides by themselves, or the axle as a whole. */
const axleOnScalesSchema = z.object({ leftKg: shownKg.optional(), rightKg: shownKg.optional(), massKg: shownKg.optional() })

/** One weighing, dated, by one of five methods; what each tells follows from statics. Masses kg as the scales showed, lengths m, angle rad. */
export const weighingSchema = z.discriminatedUnion('method', [
  /** Uncoupled and level: a scale under jockey wheel or stand, and one under the wheels of each side. */
  z.object({ method: z.literal('pads'), date, standKg: shownKg, standAftOfBallM: z.number().min(-1).max(10), leftKg: shownKg, rightKg: shownKg }),
  /** Public weighbridge: the tow vehicle alone, its axles with the trailer coupled, the trailer's axles alone. */
  z.object({ method: z.literal('weighbridge'), date, towAloneKg: massKg, towCoupledKg: massKg, trailerAxlesKg: shownKg }),
  /** Scale under the coupling itself, and what all axles show together. */
  z.object({ method: z.literal('tongue and axles'), date, couplingKg: shownKg, axlesKg: shownKg }),
  /** Each axle by itself, front to rear, coupled, the ball at the height written down. */
  z.object({ method: z.literal('each axle'), date, axles: z.array(axleOnScalesSchema).min(1).max(3), couplingKg: shownKg.optional(), ballHeightM: z.number().min(0.1).max(1.5).optional() }),
  /** The coupling weighed level and with the nose raised, wheels on the ground: gives the height of the centre of mass. */
  z.object({
    method: z.literal('nose raised'), date, totalKg: massKg, couplingLevelKg: shownKg, couplingRaisedKg: shownKg,
    couplingHeightM: z.number().min(0.1).max(2), raisedRad: z.number().min(0).max(Math.PI / 2, 'at most 90 degrees'),
  }),
])

/** Brake forces at the wheels from a roller or plate test, front axle first, and the actuator's travel. */
export const brakeTestSchema = z.object({
  date,
  axles: z.array(z.object({ leftN: forceN.optional(), rightN: forceN.optional() })).max(3).optional(),
  /** Mass of the trailer as tested; without it the sums' own total counts. */
  massKg: massKg.optional(),
  actuatorTravelM: z.number().min(0).max(0.3).optional(),
  actuatorStrokeM: z.number().positive().max(0.3).optional(),
})

export type Weighing = z.infer<typeof weighingSchema>
export type WeighingMethod = Weighing['method']
