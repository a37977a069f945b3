import { z } from 'zod'

/** Why the survey is made. */
export const purposes = ['purchase', 'hire out', 'hire in', 'sale', 'yearly', 'before tow'] as const
export const purposeSchema = z.enum(purposes)
export type Purpose = z.infer<typeof purposeSchema>
