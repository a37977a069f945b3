import { z } from 'zod'
import { boatSchema } from './boat'
import { trailerSchema } from './trailer'

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
  remarks: text(4_000).optional(),
})
export type Owner = z.infer<typeof ownerSchema>
export type Rig = z.infer<typeof rigSchema>
