import { z } from 'zod'
import { recordEndSchema } from '../proof/entry'
import { harmSchema } from '../proof/originals'
import { ruleBookSchema } from '../rules/rule-book'
import { dateSchema, idSchema, instantSchema, sha256Schema } from '../survey/records'
import { paperSchema } from '../survey/settings'
import { stationSchema } from '../survey/station'
import { talliesSchema } from '../survey/tallies'
import { byWhens, verdictSchema } from '../survey/verdict'
import { corrosionPartSchema } from './corrosion-document'
import { drawingSchema } from './drawing-schema'
import { reportLabelsSchema } from './labels'
import { sumsPartSchema } from './sums-document'

const text = z.string()
const number = z.int().positive()

/** A fact as it is printed: 'not known' stands in `value` where nobody knows, and `known` says so. */
export const factSchema = z.object({ label: text, value: text, known: z.boolean() })
export type Fact = z.infer<typeof factSchema>

const wordedVerdictSchema = z.object({ verdict: verdictSchema, word: text })
const readingSchema = z.object({ label: text, value: text })

/** One advisory or fail. `number` is the one on the drawing, in the tables and beside the photographs. */
export const findingSchema = z.object({
  number,
  checkId: text,
  position: text,
  station: stationSchema,
  stationName: text,
  /** 'left front'; empty where the check is asked once for the rig. */
  place: text,
  title: text,
  /** Title and place in one: 'Oil level, left front', 'Right stop lamp'. */
  name: text,
  ...wordedVerdictSchema.shape,
  /** What the rules made of the answer, and why the surveyor decided otherwise. */
  overruled: z.object({ judged: wordedVerdictSchema.optional(), reason: text }).optional(),
  because: text.optional(),
  readings: z.array(readingSchema),
  criterion: text,
  sources: z.array(text),
  consequence: text,
  remedy: text.optional(),
  by: z.enum(byWhens),
  byWords: text,
  note: text.optional(),
  instrument: text.optional(),
  /** Numbers of the photograph register. */
  photographs: z.array(number),
  /** Said where the check wants a photograph of a finding and there is none. */
  withoutPhotograph: text.optional(),
  /** That photographs of it are kept with the survey which are not printed. */
  photographsKept: text.optional(),
})
export type ReportFinding = z.infer<typeof findingSchema>

/** One line of the table of checks. */
export const checkLineSchema = z.object({
  checkId: text,
  position: text,
  title: text,
  place: text,
  ...wordedVerdictSchema.shape,
  /** What was recorded and what it came to, or why it was set aside. */
  remark: text,
  /** The surveyor's note, where it is not printed with a finding. */
  note: text.optional(),
  finding: number.optional(),
  photographs: z.array(number),
})
export type CheckLine = z.infer<typeof checkLineSchema>

export const stationPartSchema = z.object({
  station: stationSchema,
  name: text,
  ...wordedVerdictSchema.shape,
  tallies: talliesSchema,
  checks: z.array(checkLineSchema),
})
export type StationPart = z.infer<typeof stationPartSchema>

export const notSeenSchema = z.object({ stationName: text, title: text, place: text, reason: text })
export type NotSeenLine = z.infer<typeof notSeenSchema>

/** A photograph of the register. The picture itself is fetched by its hash when the report is written. */
export const photographLineSchema = z.object({
  number,
  sha256: sha256Schema,
  caption: text,
  fileName: text,
  /** Time as the camera wrote it; not trusted, and printed as 'from the camera'. */
  fromTheCamera: text.optional(),
  /** Of a picture the program took itself: '25 November 2026, 14:05, by this program’s clock'. */
  byOwnClock: text.optional(),
  /** Where the camera says it was taken: '38.70710° N, 9.13550° W'. Stands in reports that are wanted with places, else never. */
  placeFromTheCamera: text.optional(),
  /** What it shows: 'Oil level, left front', or empty when it belongs to no check. */
  subject: text,
  /** Subject and caption in one: 'Oil level, left front: milky. Seen from below.' Empty where there is neither. */
  shows: text,
  /** For those who do not see it. */
  alternative: text,
  /** Clockwise; the picture is printed so turned. */
  quarterTurns: z.int().min(0).max(3).default(0),
  /** What is laid over the picture, in px of the turned original, lengths written out; absent where nothing is marked. */
  marks: drawingSchema.optional(),
  /** Where lengths stand on it: where they hold, and what the figure after ± covers. */
  lengthsHold: text.optional(),
  /** Its original was not found as it came in when the report was issued: in a word and in a sentence. */
  original: z.object({ harm: harmSchema, word: text, sentence: text }).optional(),
  findings: z.array(number),
})
export type PhotographLine = z.infer<typeof photographLineSchema>

export const cautionSchema = z.object({ id: text, text, strong: z.boolean() })
export type PrintedCaution = z.infer<typeof cautionSchema>

/** Findings on the plan: several at one spot share one mark. Coordinates are the drawing's. */
export const planMarkSchema = z.object({ x: z.number(), y: z.number(), numbers: z.array(number), verdict: verdictSchema })
export type PlanMark = z.infer<typeof planMarkSchema>

/**
 * An issued report, whole and frozen: plain JSON, every sentence already worded and every quantity already shown in
 * the reader's units, so that it reads the same in ten years whatever has become of catalogue, words and drawings.
 * Photographs stand by their hash.
 */
export const reportDocumentSchema = z.object({
  format: z.literal('bunkwright report'),
  formatVersion: z.literal(1),
  /** BCP 47. */
  language: text,
  paper: paperSchema,
  number: text,
  revision: number,
  surveyId: idSchema,
  surveyDate: dateSchema,
  issuedAt: instantSchema,
  programVersion: text,
  catalogueVersion: text,
  ruleBook: ruleBookSchema,
  labels: reportLabelsSchema,
  /** 'Condition report BW-2026-0007: Tern on its trailer'. */
  title: text,
  rigName: text,
  /** What was surveyed, in a line for the trailer and one for the boat: make, year, numbers, rating. */
  rigLines: z.array(text),
  /** 'BW-2026-0007, revision 2': for the footer. */
  reference: text,
  surveyDateWords: text,
  issuedWords: text,
  surveyor: z.object({ name: text, address: text, contact: text }),
  /** When, where, by whom, for whom, what for, by which rules. */
  survey: z.array(factSchema),
  ruleBookMeaning: text,
  verdict: wordedVerdictSchema.extend({ /** 'Pass of what was seen; 3 not seen'. */ sentence: text, /** What that rests on. */ detail: text }),
  tallies: talliesSchema,
  /** 'Pass', 'Advisory' … as headed in the tables. */
  verdictWords: z.object({ pass: text, advisory: text, fail: text, 'not seen': text, 'not applicable': text }),
  /** The gravest; the same remedy at several places is one thing. */
  threeThings: z.array(z.object({ findings: z.array(number), ...wordedVerdictSchema.shape, what: text, where: text, byWords: text })),
  /** Every fail beyond those three, in short: none is hidden behind the first page. */
  furtherFails: z.array(z.object({ findings: z.array(number), ...wordedVerdictSchema.shape, where: text, byWords: text })),
  /** What each 'by when' of the findings means, most pressing first; those that occur. */
  byWhenKey: z.array(z.object({ word: text, meaning: text })),
  /** How many findings want a photograph and have none, said in a sentence. */
  photographsWanted: text.optional(),
  plan: z.object({ drawing: drawingSchema, marks: z.array(planMarkSchema), caption: text, alternative: text }),
  rig: z.array(z.object({ heading: text, facts: z.array(factSchema) })),
  remarks: text.optional(),
  findings: z.array(findingSchema),
  stations: z.array(stationPartSchema),
  notSeen: z.array(notSeenSchema),
  corrosion: corrosionPartSchema.optional(),
  sums: sumsPartSchema.optional(),
  photographs: z.array(photographLineSchema),
  /** How many photographs are kept with the survey and not printed, said in a sentence. */
  photographsKept: text.optional(),
  /** Which originals were not found as they came in when the report was issued, said in sentences; absent where all were, and where none was looked at. */
  originalsHarmed: text.optional(),
  /** That there are such, in a sentence for the first page. */
  harmInShort: text.optional(),
  /** Where the survey's record of photographs stood; who keeps the report can have the record held to it. Absent in reports older than the record. */
  photographRecord: recordEndSchema.extend({ sentence: text }).optional(),
  cautions: z.array(cautionSchema),
  /** Paragraphs. */
  method: z.array(text),
  /** Every rule, standard or practice a criterion of this survey rests on. */
  sources: z.array(text),
  declaration: text,
})
export type ReportDocument = z.infer<typeof reportDocumentSchema>
