import { z } from 'zod'

const text = (max: number) => z.string().trim().min(1).max(max)
const massKg = z.number().positive().max(40_000)
const metres = z.number().positive().max(40)

export const frameMaterials = ['galvanized steel', 'painted steel', 'aluminium'] as const
export const suspensions = ['leaf springs', 'torsion arms', 'coil springs', 'none'] as const
export const hubLubrications = ['oil bath', 'grease'] as const
export const trailerBrakes = ['none', 'surge', 'electric', 'electric over hydraulic'] as const
export const brakeForms = ['disc', 'drum'] as const
export const couplerClasses = ['class 1', 'class 2', 'class 3', 'class 4', 'ISO 50 mm', 'pintle', 'other'] as const
export const hullSupports = ['bunks', 'rollers', 'bunks and rollers'] as const
export const winchForms = ['hand, strap', 'hand, cable', 'electric, strap', 'electric, cable', 'none'] as const
export const lampForms = ['LED', 'bulbs'] as const
export const wirePlugs = ['4 flat', '5 flat', '7 blade', '7 round', '13 round'] as const
/** Where it lives and what it is dipped in; decides how fast zinc goes. */
export const exposures = ['inland', 'inland, fresh water', 'coast', 'salt water, rinsed', 'salt water, not rinsed'] as const
export const markets = ['north america', 'europe', 'elsewhere'] as const

/** A tyre as marked on its sidewall. Load index is the first (single fitting) number. */
export const tyreSchema = z.object({
  size: text(40).optional(),
  loadIndex: z.int().min(50, 'a load index between 50 and 130').max(130, 'a load index between 50 and 130').optional(),
  speedSymbol: z.string().trim().toUpperCase().regex(/^[A-Z]$/, 'one letter, such as N').optional(),
  loadRange: z.enum(['B', 'C', 'D', 'E', 'F']).optional(),
  /** Cold pressure on the placard or sidewall. */
  placardPressurePa: z.number().min(50_000).max(1_000_000).optional(),
})

/**
 * The trailer as plate, papers and eye tell it. Every field may stay unknown (absent): what depends on it is then
 * 'not seen' or said to wait for it, never guessed. Masses kg, lengths m, pressures Pa.
 */
export const trailerSchema = z.object({
  maker: text(80).optional(),
  model: text(80).optional(),
  builtYear: z.int().min(1950).max(2100).optional(),
  identificationNumber: text(40).optional(),
  market: z.enum(markets).optional(),
  registration: text(40).optional(),
  frame: z.enum(frameMaterials).optional(),
  /** Unladen mass. */
  massKg: massKg.optional(),
  /** The rating plate's maximum mass of trailer and load (GVWR, maximum permissible mass). */
  maximumMassKg: massKg.optional(),
  /** Rating of each axle, one figure for all. */
  axleRatingKg: massKg.optional(),
  lengthM: metres.optional(),
  widthM: metres.optional(),
  /** Ball centre to the axle, or to the middle of the axle group. */
  ballToAxleM: metres.optional(),
  axleCount: z.int().min(1, 'one, two or three axles').max(3, 'one, two or three axles').optional(),
  suspension: z.enum(suspensions).optional(),
  hubLubrication: z.enum(hubLubrications).optional(),
  brakes: z.enum(trailerBrakes).optional(),
  brakeForm: z.enum(brakeForms).optional(),
  brakedAxleCount: z.int().min(1).max(3).optional(),
  coupler: z.enum(couplerClasses).optional(),
  ballDiameterM: z.number().min(0.03).max(0.12).optional(),
  tyre: tyreSchema.optional(),
  spareWheel: z.boolean().optional(),
  supports: z.enum(hullSupports).optional(),
  winch: z.enum(winchForms).optional(),
  lamps: z.enum(lampForms).optional(),
  plug: z.enum(wirePlugs).optional(),
  jack: z.boolean().optional(),
  exposure: z.enum(exposures).optional(),
  /** Asked while no boat is described: whether one lies on the trailer at all. */
  carriesBoat: z.boolean().optional(),
})
export type Trailer = z.infer<typeof trailerSchema>
