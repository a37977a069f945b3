import { z } from 'zod'
import { ruleBookSchema } from '../rules/rule-book'
import { sumsSettingsSchema } from '../sums/settings'
import { unitSystemSchema } from '../units/quantity'

export const paperSchema = z.enum(['A4', 'Letter'])
export type Paper = z.infer<typeof paperSchema>
export const themeSchema = z.enum(['as the system', 'day', 'night'])

/** Kept in the yard. The surveyor's name is asked for once, when a report first needs it. */
export const settingsSchema = z.object({
  surveyorName: z.string().trim().max(120).default(''),
  surveyorAddress: z.string().trim().max(400).default(''),
  surveyorContact: z.string().trim().max(200).default(''),
  ruleBook: ruleBookSchema.default('us'),
  units: unitSystemSchema.default('us'),
  paper: paperSchema.default('Letter'),
  theme: themeSchema.default('as the system'),
  /** Label of the camera that took the last picture. Its id would differ at every start. */
  camera: z.string().max(200).default(''),
  sums: sumsSettingsSchema.prefault({}),
})
export type Settings = z.infer<typeof settingsSchema>
export const defaultSettings: Settings = settingsSchema.parse({})
