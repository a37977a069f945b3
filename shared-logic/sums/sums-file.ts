import { z } from 'zod'
import { rigSchema } from '../rig/rig'
import { ruleBookSchema } from '../rules/rule-book'
import { unitSystemSchema } from '../units/quantity'
import { withTexts } from '../units/written-file'
import { sumsSettingsSchema } from './settings'

/** A rig for the sums as one JSON file, once its quantities are read; a field that is not known is left away. */
export const sumsFileSchema = z.strictObject({
  rig: rigSchema.describe('Trailer, boat and what the sums need beside: loading, couplingRatings, stance, tieDown, weighings, brakeTest.'),
  ruleBook: ruleBookSchema.default('us'),
  units: unitSystemSchema.optional().describe('Units of the answer; by the rule book when left away.'),
  settings: sumsSettingsSchema.prefault({}).describe('Reserve wanted and balance bands, as shares.'),
})
export type SumsFile = z.infer<typeof sumsFileSchema>

/** JSON Schema (draft 2020-12) of the file as a person may write it: measured fields take a number in SI units or a text with its unit. */
export const sumsFileJsonSchema = (): unknown => withTexts(z.toJSONSchema(sumsFileSchema, { io: 'input' }))
