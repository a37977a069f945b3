import { z } from 'zod'

/** What is wrong with an original that is held to the hash it came in with. */
export const harmSchema = z.enum(['missing', 'changed', 'unreadable'])
export const harms = harmSchema.options
export type Harm = z.infer<typeof harmSchema>

/** An original that is not as it came in. */
export interface HarmedOriginal {
  readonly sha256: string
  readonly fileName: string
  readonly harm: Harm
}
