import { z } from 'zod'
import { markLayerSchema } from '../marking/marks'
import { rigSchema } from '../rig/rig'
import { ruleBookSchema } from '../rules/rule-book'
import { unitSystemSchema } from '../units/quantity'
import { answerSchema } from './answer'
import { purposeSchema } from './purpose'
import { checkIdSchema, dateSchema, positionSchema } from './records'
import { paperSchema } from './settings'

const surveyorSchema = z.strictObject({
  name: z.string().trim().max(120).describe('Who surveyed; stands at the signature.'),
  address: z.string().trim().max(400).optional(),
  contact: z.string().trim().max(200).optional(),
})

const fileAnswerSchema = z.strictObject({
  check: checkIdSchema.describe('The check’s id, as the catalogue prints it.'),
  position: positionSchema.default('rig').describe('Where it was asked; “rig” for a check that is asked once.'),
  ...answerSchema.shape,
})

const filePhotographSchema = z.strictObject({
  path: z.string().min(1).max(1_000).describe('Relative to the survey file, and within its folder.'),
  check: checkIdSchema.optional(),
  position: positionSchema.optional(),
  caption: z.string().max(400).default(''),
  quarterTurns: z.int().min(0).max(3).default(0).describe('How often it is turned by a quarter, clockwise, when it is printed.'),
  marks: markLayerSchema.optional().describe('What is drawn over it when it is printed; points in px of the picture as it stands upright, before it is turned.'),
})

/**
 * A survey as one JSON file: what a script hands over to have it judged or reported without a yard.
 * Readings are in SI units, as everywhere behind the screens; a field that is not known is left away.
 */
export const surveyFileSchema = z.strictObject({
  rig: rigSchema.describe('Trailer and boat. Masses kg, lengths m, pressures Pa; what is not known is left away.'),
  purpose: purposeSchema,
  surveyDate: dateSchema.describe('The surveyor’s local date, yyyy-mm-dd.'),
  surveyor: surveyorSchema.optional(),
  ruleBook: ruleBookSchema.default('us'),
  units: unitSystemSchema.optional().describe('Units of the report; by the rule book when left away.'),
  paper: paperSchema.optional().describe('Paper of the report; by the rule book when left away.'),
  place: z.string().trim().max(200).optional(),
  reportNumber: z.string().trim().min(1).max(40).optional().describe('The number printed on the report; without it the report says that it has none.'),
  answers: z.array(fileAnswerSchema).max(2_000).default([]),
  photographs: z.array(filePhotographSchema).max(500).default([]),
})
export type SurveyFile = z.infer<typeof surveyFileSchema>
export type FileAnswer = SurveyFile['answers'][number]
export type FilePhotograph = SurveyFile['photographs'][number]
