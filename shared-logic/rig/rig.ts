import { z } from 'zod'
import { boatSchema } from './boat'
import { couplingRatingsSchema, loadingSchema, stanceSchema } from './loading'
import { tieDownSchema } from './tie-down'
import { trailerSchema } from './trailer'
import { brakeTestSchema, weighingSchema } from './weighings'

const text = (max: number) => z.string().trim().min(1).max(max)

/** Owner or client: who the rig belongs to and where they can be reached. */
export const ownerSchema = z.object({
  name: text(120).optional(),
  address: text(400).optional(),
  contact: text(200).optional(),
})

/** A trailer with the boat it carries: what the yard keeps and a survey takes its snapshot of. */
export const rigSchema = z.object({
  name: text(80),
  owner: ownerSchema.optional(),
  trailer: trailerSchema,
  boat: boatSchema.optional(),
  /** What the sums need beside the register; a rig may have none of it. */
  loading: loadingSchema.optional(),
  couplingRatings: couplingRatingsSchema.optional(),
  stance: stanceSchema.optional(),
  tieDown: tieDownSchema.optional(),
  weighings: z.array(weighingSchema).max(40).optional(),
  brakeTest: brakeTestSchema.optional(),
  remarks: text(4_000).optional(),
})
export type Rig = z.infer<typeof rigSchema>

/** Parts of a rig that the sums are worked from and the register's form does not ask. */
export const sumsFields = ['loading', 'couplingRatings', 'stance', 'tieDown', 'weighings', 'brakeTest'] as const satisfies readonly (keyof Rig)[]
