import { z } from 'zod'
import { canonicalJson, type Json } from './canonical-json'

/**
 * The record of a survey's photographs and reports: entries that are only ever added, each with the hash of the one
 * before. The hash of an entry is the SHA-256 of its canonical JSON in UTF-8, lower-case hex; the first takes 64 zeros for
 * the one before.
 *
 * Recorded is everything a reader of the report sees of a photograph, since each of these changes what the picture is
 * evidence of: the original and how it came in; the check and place it is said to show; caption, turn and marks; whether
 * it stands or was removed, whether it prints, and the order. What is set later is set by an entry of its own, so that
 * what was there before stays told. A layer of marks and a list of figures stand by the SHA-256 of their text.
 *
 * Screen and report show no original but the two copies made from it, so these are recorded as well. A copy made again
 * may come out otherwise, by a newer imaging library, and is then entered anew. And each report is recorded when it is
 * issued: its row, the frozen document and the PDF; with it the survey, which nothing changes until it is opened again.
 *
 * What this proves: that nothing was changed, taken out, put in or exchanged by itself, neither in the record nor in
 * what it tells of; by the yard's list of surveys (`survey-list.ts`) no survey either. What it does not: someone who
 * rewrites whole records and the list so that all of it fits again is found only by a last hash kept elsewhere, as an
 * issued report prints it. And it says nothing of what came in: only that it is still that.
 */
export type Sha256 = (text: string) => string

export const hashBeforeTheFirst = '0'.repeat(64)

const textOrNone = z.string().nullable()
const numberOrNone = z.number().nullable()

/** What is recorded of a photograph besides its original's hash and size. None is null, never left away. */
export const factsSchema = z.strictObject({
  format: z.string(),
  widthPx: z.number(),
  heightPx: z.number(),
  /** From the camera, not trusted. */
  takenAt: textOrNone,
  latitude: numberOrNone,
  longitude: numberOrNone,
  qualitySha256: textOrNone,
  lookHash: textOrNone,
  /** When the yard first took in this original, for whichever survey. UTC. */
  firstArrivedAt: z.string(),
  /** When it came into this survey. UTC. */
  arrivedAt: z.string(),
  source: z.string(),
  fileName: z.string(),
  checkId: textOrNone,
  position: textOrNone,
  caption: z.string(),
  quarterTurns: z.number(),
  /** A number only where somebody wrote one into the row that means neither. */
  isPrinted: z.union([z.boolean(), z.number()]),
  marksSha256: textOrNone,
  removedAt: textOrNone,
  /** Of the copies made from the original; none until they were made by a program that records them. */
  largePreviewSha256: textOrNone,
  smallPreviewSha256: textOrNone,
})
export type Facts = z.infer<typeof factsSchema>
export const factNames = factsSchema.keyof().options

/** Facts that records had no word of at first. Whoever sets one enters it, so it is none where the record is silent. */
export const laterFactNames = ['largePreviewSha256', 'smallPreviewSha256'] as const satisfies readonly (keyof Facts)[]

/** 'entered late': taken in before there was a record, and entered when there was one, as the yard then had it. */
export const photographActs = ['added', 'entered late', 'removed', 'restored', 'assigned', 'marked', 'turned', 'captioned', 'chosen to print', 'left out of print', 'copies made'] as const
export type PhotographAct = (typeof photographActs)[number]

const photographEntry = {
  what: z.enum(photographActs),
  photographId: z.string(),
  sha256: z.string(),
  byteCount: z.number(),
  /** What the act set; all of it for one that came in. */
  to: factsSchema.partial(),
}
const openingEntry = { what: z.literal('opened'), record: z.literal('bunkwright photographs'), version: z.literal(1), surveyId: z.string() }
/** What is recorded of an issued report. */
export const reportFactsSchema = z.strictObject({
  number: z.string(),
  revision: z.number(),
  issuedAt: z.string(),
  date: z.string(),
  verdict: z.string(),
  /** Of the frozen document's JSON, to the byte. */
  documentSha256: z.string(),
  pdfSha256: z.string(),
  pdfByteCount: z.number(),
})
export type ReportFacts = z.infer<typeof reportFactsSchema>

/** What is recorded of a survey when its report is issued, by hashes: what heads it, its rig as of that day, what was answered. */
export const surveyFactsSchema = z.strictObject({ headSha256: z.string(), rigSha256: z.string(), answersSha256: z.string() })
export type SurveyFacts = z.infer<typeof surveyFactsSchema>
export const surveyFactNames = surveyFactsSchema.keyof().options

/** 'entered late': issued before reports were recorded, and entered when they were, as the yard then had it. */
const reportEntry = { what: z.enum(['report issued', 'report entered late']), reportId: z.string(), report: reportFactsSchema, /** None for one entered late of a survey that was opened again since. */ survey: surveyFactsSchema.optional() }
const reopeningEntry = { what: z.literal('survey opened again') }
const orderEntry = { what: z.enum(['put in order', 'order entered late']), /** See `orderHash`. */ orderSha256: z.string() }

/** What every entry of a chain carries: the hash of the one before, its own place, and when it was written, UTC. */
export const link = { previous: z.string(), place: z.number(), at: z.string() }

export const entrySchema = z.discriminatedUnion('what', [
  z.strictObject({ ...openingEntry, ...link }),
  z.strictObject({ ...photographEntry, ...link }),
  z.strictObject({ ...orderEntry, ...link }),
  z.strictObject({ ...reportEntry, ...link }),
  z.strictObject({ ...reopeningEntry, ...link }),
])
export type Entry = z.infer<typeof entrySchema>

/** An act before it has its place in the record. */
export type Act =
  | z.infer<z.ZodObject<typeof photographEntry>> | z.infer<z.ZodObject<typeof orderEntry>>
  | z.infer<z.ZodObject<typeof reportEntry>> | z.infer<z.ZodObject<typeof reopeningEntry>>

/** An entry as it is kept: its canonical text and the hash of that. */
export interface WrittenEntry {
  /** From 1. */
  readonly place: number
  readonly text: string
  readonly sha256: string
}

/** Where a record stands: how many entries, and the hash of the last. Printed in reports. */
export const recordEndSchema = z.object({ entryCount: z.int().positive(), lastSha256: z.string().regex(/^[0-9a-f]{64}$/) })
export type RecordEnd = z.infer<typeof recordEndSchema>

/** The next entry after `end`; the first where there is none. `at` is a UTC instant. */
export const writeEntry = (end: RecordEnd | undefined, content: Readonly<Record<string, Json>>, at: string, sha256: Sha256): WrittenEntry => {
  const place = (end?.entryCount ?? 0) + 1
  const text = canonicalJson({ ...content, previous: end?.lastSha256 ?? hashBeforeTheFirst, place, at })
  return { place, text, sha256: sha256(text) }
}

/** The first entry binds the record to its survey. */
export const openingOf = (surveyId: string) => ({ what: 'opened', record: 'bunkwright photographs', version: 1, surveyId }) as const

type Content = Readonly<Record<string, Json>>

/** Entries in turn after `end`; a chain that has none yet begins with its opening. */
export const writeChain = (opening: Content, end: RecordEnd | undefined, contents: readonly Content[], at: string, sha256: Sha256): WrittenEntry[] => {
  const written: WrittenEntry[] = []
  let last = end
  for (const content of end === undefined ? [opening, ...contents] : contents) {
    const entry = writeEntry(last, content, at, sha256)
    written.push(entry)
    last = { entryCount: entry.place, lastSha256: entry.sha256 }
  }
  return written
}

/** Entries for these acts of a survey's record. */
export const writeEntries = (surveyId: string, end: RecordEnd | undefined, acts: readonly Act[], at: string, sha256: Sha256): WrittenEntry[] =>
  writeChain(openingOf(surveyId), end, acts, at, sha256)

/** The order a survey's photographs were put into, as a hash: ids and places of all that have one, by id. */
export const orderHash = (places: readonly { readonly photographId: string; readonly place: number }[], sha256: Sha256): string =>
  sha256(canonicalJson(places.map(({ photographId, place }) => [photographId, place] as const).toSorted(([a], [b]) => (a < b ? -1 : 1))))
