import { z } from 'zod'

const text = (max: number) => z.string().trim().min(1).max(max)

export const engineForms = ['outboard', 'sterndrive', 'inboard', 'none'] as const
export const hullMaterials = ['glass fibre', 'aluminium', 'wood', 'inflatable', 'polyethylene'] as const
export const tankContents = ['petrol', 'diesel', 'fresh water', 'waste water', 'live well', 'ballast'] as const

/** Tanks told apart by contents; more than this is a mistake. */
export const mostTanks = 12

export const tankSchema = z.object({
  contents: z.enum(tankContents),
  capacityM3: z.number().positive().max(10),
})

/** The boat carried. Masses kg, lengths m, volumes m3; anything unknown is absent. */
export const boatSchema = z.object({
  name: text(80).optional(),
  maker: text(80).optional(),
  model: text(80).optional(),
  builtYear: z.int().min(1900).max(2100).optional(),
  hullIdentificationNumber: text(40).optional(),
  hull: z.enum(hullMaterials).optional(),
  lengthM: z.number().positive().max(30).optional(),
  beamM: z.number().positive().max(10).optional(),
  /** Without fuel, water, gear and people; with the engine when `engineMassKg` is absent. */
  dryMassKg: z.number().positive().max(30_000).optional(),
  engine: z.enum(engineForms).optional(),
  engineMassKg: z.number().positive().max(3_000).optional(),
  tanks: z.array(tankSchema).max(mostTanks).optional(),
})
export type Boat = z.infer<typeof boatSchema>
export type Tank = z.infer<typeof tankSchema>
