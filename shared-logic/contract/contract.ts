import { z } from 'zod'
import { markLayerSchema } from '../marking/marks'
import { phoneStateSchema } from '../phone/phone-state'
import { verifiedSchema } from '../proof/problem'
import { rigSchema } from '../rig/rig'
import { ruleBookSchema } from '../rules/rule-book'
import { answerSchema } from '../survey/answer'
import { purposeSchema } from '../survey/purpose'
import {
  checkIdSchema, corrosionSurveySchema, dateSchema, idSchema, photographSchema, photographSourceSchema, placeSchema, positionSchema, reportRowSchema, rigRowSchema, sha256Schema, summarySchema, surveyRowSchema, surveySchema,
} from '../survey/records'
import { settingsSchema } from '../survey/settings'

interface Procedure<Input extends z.ZodType, Output extends z.ZodType> {
  readonly input: Input
  readonly output: Output
  readonly writes: boolean
  /** The request carries one file's bytes beside its input. */
  readonly carriesBytes: boolean
}

const reads = <I extends z.ZodType, O extends z.ZodType>(input: I, output: O): Procedure<I, O> => ({ input, output, writes: false, carriesBytes: false })
const writes = <I extends z.ZodType, O extends z.ZodType>(input: I, output: O): Procedure<I, O> => ({ input, output, writes: true, carriesBytes: false })
const receives = <I extends z.ZodType, O extends z.ZodType>(input: I, output: O): Procedure<I, O> => ({ input, output, writes: true, carriesBytes: true })

const nothing = z.object({})
const search = z.string().trim().max(200).optional()
const page = { offset: z.int().nonnegative().default(0), limit: z.int().min(1).max(200).default(50) }
const photographRef = z.object({ photographId: idSchema })
const onePhotograph = z.object({ photograph: photographSchema })
/** As many as a survey may hold. */
const mostPhotographs = 2000
const photographIds = z.array(idSchema).min(1).max(mostPhotographs)
const quarterTurnsSchema = z.int().min(0).max(3)
const manyPhotographs = z.object({ photographs: z.array(photographSchema) })
const surveyRef = z.object({ surveyId: idSchema })

/** The one list of what the window may ask. Both doors loop over it; types come from it. */
export const contract = {
  'yard.about': reads(nothing, z.object({ version: z.string(), catalogueVersion: z.string(), folder: z.string(), today: dateSchema, zone: z.string(), rigCount: z.int(), surveyCount: z.int() })),
  'yard.openExample': writes(nothing, z.object({ rigCount: z.int() })),
  'settings.get': reads(nothing, z.object({ settings: settingsSchema, saved: z.boolean() })),
  'settings.save': writes(z.object({ settings: settingsSchema }), z.object({ settings: settingsSchema })),
  'rigs.list': reads(z.object({ search, ...page }), z.object({ rigs: z.array(rigRowSchema), total: z.int() })),
  'rigs.get': reads(z.object({ rigId: idSchema }), rigRowSchema),
  'rigs.save': writes(z.object({ rigId: idSchema.optional(), rig: rigSchema }), rigRowSchema),
  'rigs.remove': writes(z.object({ rigId: idSchema }), nothing),
  'surveys.list': reads(z.object({ rigId: idSchema.optional(), search, ...page }), z.object({ surveys: z.array(surveyRowSchema), total: z.int() })),
  'surveys.start': writes(z.object({ rigId: idSchema, purpose: purposeSchema, surveyDate: dateSchema, ruleBook: ruleBookSchema, place: z.string().trim().max(200).optional() }), surveySchema),
  'surveys.get': reads(surveyRef, surveySchema),
  'surveys.answer': writes(z.object({ surveyId: idSchema, checkId: checkIdSchema, position: positionSchema, answer: answerSchema }), z.object({ summary: summarySchema })),
  'surveys.clear': writes(z.object({ surveyId: idSchema, checkId: checkIdSchema, position: positionSchema }), z.object({ summary: summarySchema })),
  'surveys.standAt': writes(z.object({ surveyId: idSchema, here: placeSchema }), nothing),
  'surveys.discard': writes(surveyRef, nothing),
  /** Opens an issued survey again; the next issue is a new revision and the old report stays as it is. */
  'surveys.reopen': writes(surveyRef, surveySchema),
  /** Corroded spots over all surveys of a rig, oldest first. */
  'corrosion.history': reads(z.object({ rigId: idSchema }), z.object({ rig: rigSchema, surveys: z.array(corrosionSurveySchema) })),
  'photographs.add': receives(z.object({ surveyId: idSchema, checkId: checkIdSchema.optional(), position: positionSchema.optional(), fileName: z.string().min(1).max(255), caption: z.string().max(400).optional(), source: photographSourceSchema.default('file') }), z.object({ photograph: photographSchema, alreadyThere: z.boolean() })),
  'photographs.describe': writes(z.object({ photographId: idSchema, caption: z.string().max(400) }), z.object({ photograph: photographSchema })),
  /** Recorded photographs whose original was not in the yard's folder when the yard was opened. */
  'photographs.missing': reads(nothing, z.object({ missing: z.array(sha256Schema) })),
  'photographs.remove': writes(z.object({ photographId: idSchema }), nothing),
  'photographs.restore': writes(photographRef, onePhotograph),
  /** Keeps the layer of marks over the untouched original; an empty one takes it away. */
  'photographs.mark': writes(photographRef.extend({ layer: markLayerSchema }), onePhotograph),
  'photographs.turn': writes(photographRef.extend({ quarterTurns: quarterTurnsSchema }), onePhotograph),
  /** Many in one act: all of them or, where one cannot be, none. */
  'photographs.turnAll': writes(z.object({ turns: z.array(photographRef.extend({ quarterTurns: quarterTurnsSchema })).min(1).max(mostPhotographs) }), manyPhotographs),
  'photographs.removeAll': writes(z.object({ photographIds }), nothing),
  'photographs.restoreAll': writes(z.object({ photographIds }), manyPhotographs),
  /** To a check of their survey, or to none. One that stands there already stays as it is. */
  'photographs.assign': writes(z.object({ photographIds, place: placeSchema.optional() }), manyPhotographs),
  /** Whether they stand in the report. */
  'photographs.choose': writes(z.object({ photographIds, isPrinted: z.boolean() }), manyPhotographs),
  /** The photographs of the survey in the order wanted; one that is not named comes last. */
  'photographs.order': writes(surveyRef.extend({ photographIds }), manyPhotographs),
  /** Opens a door on the local network for one phone and this survey, for a set time. */
  'phone.open': writes(surveyRef.extend({ minutes: z.int().min(5).max(240).default(60), isSecure: z.boolean().default(false), address: z.string().max(64).optional() }), phoneStateSchema),
  'phone.state': reads(surveyRef, z.object({ door: phoneStateSchema.optional() })),
  'phone.close': writes(surveyRef, nothing),
  /** Works the record of a survey's photographs out again and reads every original and report of it: seconds where there are many. */
  'proof.verify': reads(surveyRef, verifiedSchema),
  /** Ends the verifying of a survey; who asked for it is refused with 'proof.stopped'. */
  'proof.stop': reads(surveyRef, nothing),
  /**
   * `withPlaces` prints where each photograph was taken, by its camera; left out unless it is wanted. Every original is read anew first:
   * where one is not as it came in, it is refused with 'report.originals-harmed' unless that `isHarmKnown`; the report then says which.
   */
  'reports.issue': writes(surveyRef.extend({ withPlaces: z.boolean().default(false), isHarmKnown: z.boolean().default(false) }), z.object({ report: reportRowSchema })),
  'reports.list': reads(z.object({ surveyId: idSchema.optional(), ...page }), z.object({ reports: z.array(reportRowSchema) })),
} as const

export type Contract = typeof contract
export type ProcedureName = keyof Contract
export const procedureNames = Object.keys(contract) as ProcedureName[]
/** What the caller hands over, before defaults are filled in. */
export type InputOf<Name extends ProcedureName> = z.input<Contract[Name]['input']>
export type ParsedInputOf<Name extends ProcedureName> = z.output<Contract[Name]['input']>
export type OutputOf<Name extends ProcedureName> = z.output<Contract[Name]['output']>

/** The desk: every procedure once. `bytes` is there for those that carry a file. */
export type Desk = {
  readonly [Name in ProcedureName]: (input: ParsedInputOf<Name>, bytes?: Uint8Array) => Promise<OutputOf<Name>>
}

/** Addresses relative to the window's own page; both doors serve them, and nothing but recorded files. */
export const photographAddress = (sha256: string, size: 'small' | 'large' | 'original'): string => `photographs/${sha256}/${size}`
export const reportAddress = (reportId: string): string => `reports/${reportId}.pdf`
