import { z } from 'zod'
import { rigSchema } from '../rig/rig'
import { markLayerSchema } from '../marking/marks'
import { qualitySchema } from '../photographs/quality'
import { ruleBookSchema } from '../rules/rule-book'
import { answerSchema } from './answer'
import { purposeSchema } from './purpose'
import { spotSchema } from './spot'
import { talliesSchema } from './tallies'
import { verdictSchema } from './verdict'

export const idSchema = z.uuid()
/** ISO calendar date, yyyy-mm-dd. */
export const dateSchema = z.iso.date()
/** UTC instant, ISO with Z. */
export const instantSchema = z.iso.datetime()
export const sha256Schema = z.string().regex(/^[0-9a-f]{64}$/)
export const checkIdSchema = z.string().min(1).max(80)
export const positionSchema = z.string().min(1).max(80)

export const summarySchema = z.object({
  verdict: verdictSchema,
  tallies: talliesSchema,
  asked: z.int().nonnegative(),
  open: z.int().nonnegative(),
})

/** How a photograph came: as a file, from a camera held in the window, or handed over by a phone. */
export const photographSourceSchema = z.enum(['file', 'camera', 'phone'])

/** A photograph as it belongs to a survey. What the file says of time and place is from the camera, not trusted. */
export const photographSchema = z.object({
  id: idSchema,
  sha256: sha256Schema,
  checkId: checkIdSchema.optional(),
  position: positionSchema.optional(),
  caption: z.string().max(400),
  /** The file's name as it arrived, without folders. */
  fileName: z.string().max(255),
  format: z.enum(['jpeg', 'png', 'webp', 'tiff', 'avif', 'heic']),
  byteCount: z.int().positive(),
  /** After orientation is honoured. */
  widthPx: z.int().positive(),
  heightPx: z.int().positive(),
  /** From the camera: local time as written there, with offset when given. */
  takenAt: z.string().max(40).optional(),
  latitude: z.number().min(-90).max(90).optional(),
  longitude: z.number().min(-180).max(180).optional(),
  addedAt: instantSchema,
  source: photographSourceSchema,
  /** Turned by the surveyor, clockwise, on top of the orientation the file has. */
  quarterTurns: z.int().min(0).max(3),
  /** Whether it stands in the report. */
  isPrinted: z.boolean(),
  /** The layer of marks over the untouched original. */
  marks: markLayerSchema.optional(),
  /** Measured at intake; absent for photographs taken in before this was measured. */
  quality: qualitySchema.optional(),
  /** 64-bit perceptual hash, hex: near-duplicates differ in few bits. */
  lookHash: z.string().regex(/^[0-9a-f]{16}$/).optional(),
})
export type Photograph = z.infer<typeof photographSchema>

export const reportRowSchema = z.object({
  id: idSchema,
  surveyId: idSchema,
  /** 'BW-2026-0007'; the same for every revision of a survey. */
  number: z.string(),
  /** 1 for the first issue. */
  revision: z.int().positive(),
  issuedAt: instantSchema,
  date: dateSchema,
  verdict: verdictSchema,
  pdfSha256: sha256Schema,
  pdfByteCount: z.int().positive(),
  /** What it says of originals that were not as they came in when it was issued. Told where the reports of one survey are listed. */
  harmSaid: z.string().optional(),
})
export type ReportRow = z.infer<typeof reportRowSchema>

export const surveyStatusSchema = z.enum(['under way', 'issued'])

export const surveyRowSchema = z.object({
  id: idSchema,
  rigId: idSchema,
  rigName: z.string(),
  purpose: purposeSchema,
  surveyDate: dateSchema,
  status: surveyStatusSchema,
  summary: summarySchema,
  reportNumber: z.string().optional(),
  revision: z.int().nonnegative(),
})
export type SurveyRow = z.infer<typeof surveyRowSchema>

/** What one survey recorded of corroded spots: the positions looked at, with what was found there. */
export const corrosionSurveySchema = z.object({
  surveyId: idSchema,
  date: dateSchema,
  status: surveyStatusSchema,
  reportNumber: z.string().optional(),
  places: z.array(z.object({ position: positionSchema, spots: z.array(spotSchema) })),
})
export type CorrosionSurvey = z.infer<typeof corrosionSurveySchema>

export const answeredSchema = z.object({
  checkId: checkIdSchema,
  position: positionSchema,
  answer: answerSchema,
  answeredAt: instantSchema,
})

export const placeSchema = z.object({ checkId: checkIdSchema, position: positionSchema })

/** A survey whole. While under way `rig` is the yard's; once issued it is the snapshot of that day. */
export const surveySchema = surveyRowSchema.extend({
  ruleBook: ruleBookSchema,
  catalogueVersion: z.string(),
  /** IANA zone the survey is made in. */
  zone: z.string(),
  place: z.string().max(200).optional(),
  rig: rigSchema,
  /** Where the surveyor stood last. */
  here: placeSchema.optional(),
  answers: z.array(answeredSchema),
  photographs: z.array(photographSchema),
  reports: z.array(reportRowSchema),
})
export type Survey = z.infer<typeof surveySchema>

export const rigRowSchema = z.object({
  id: idSchema,
  rig: rigSchema,
  surveyCount: z.int().nonnegative(),
  /** The newest survey, under way or issued. */
  latest: surveyRowSchema.optional(),
})
export type RigRow = z.infer<typeof rigRowSchema>
