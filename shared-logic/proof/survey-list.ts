import { z } from 'zod'
import { Chain, type Break, type FoundEntry } from './chain'
import { link, type RecordEnd, type Sha256 } from './entry'

/**
 * The yard's list of its surveys: entries chained as those of a survey's record are, one when a survey is begun, when it
 * is discarded, when its record is opened, and when a report of it is issued. By it a survey that was taken out of the
 * yard with its whole record is missed, and a record that lost its last entries is found by the end that stands here.
 */
const end = z.strictObject({ entryCount: z.int().positive(), lastSha256: z.string() })

const openingEntry = { what: z.literal('opened'), record: z.literal('bunkwright surveys'), version: z.literal(1) }
const begunEntry = { what: z.literal('survey begun'), surveyId: z.string() }
/** Begun before there was a list. */
const lateEntry = { what: z.literal('survey entered late'), surveyId: z.string(), isDiscarded: z.boolean(), /** None while it has no record. */ end: end.optional(), /** Of its reports; none before the first. */ number: z.string().optional() }
const discardedEntry = { what: z.literal('survey discarded'), surveyId: z.string() }
/** `end`: where its record stood after it. */
const recordEntry = { what: z.literal('record opened'), surveyId: z.string(), end }
const issuedEntry = { what: z.literal('report issued'), surveyId: z.string(), end, number: z.string() }

const entrySchema = z.discriminatedUnion('what', [
  z.strictObject({ ...openingEntry, ...link }),
  z.strictObject({ ...begunEntry, ...link }),
  z.strictObject({ ...lateEntry, ...link }),
  z.strictObject({ ...discardedEntry, ...link }),
  z.strictObject({ ...recordEntry, ...link }),
  z.strictObject({ ...issuedEntry, ...link }),
])
type ListEntry = z.infer<typeof entrySchema>

/** What happened to a survey, before it has its place in the list. */
export type SurveyAct =
  | z.infer<z.ZodObject<typeof begunEntry>> | z.infer<z.ZodObject<typeof discardedEntry>>
  | z.infer<z.ZodObject<typeof recordEntry>> | z.infer<z.ZodObject<typeof issuedEntry>>

export const listOpening = { what: 'opened', record: 'bunkwright surveys', version: 1 } as const

/** A survey as the list knows it. */
export interface ListedSurvey {
  /** When it was begun, or entered late. UTC. */
  readonly at: string
  readonly isDiscarded: boolean
  /** The number of its reports; undefined before the first. */
  readonly number: string | undefined
  /** Ends its record had, oldest first. */
  readonly ends: readonly RecordEnd[]
}

export interface ReadList {
  readonly surveys: ReadonlyMap<string, ListedSurvey>
  readonly end: RecordEnd | undefined
  readonly broken: Break | undefined
}

const told = (entry: Exclude<ListEntry, { what: 'opened' }>, before: ListedSurvey | undefined): ListedSurvey => ({
  at: before?.at ?? entry.at,
  isDiscarded: entry.what === 'survey discarded' || (entry.what === 'survey entered late' ? entry.isDiscarded : (before?.isDiscarded ?? false)),
  number: 'number' in entry && entry.number !== undefined ? entry.number : before?.number,
  ends: [...(before?.ends ?? []), ...('end' in entry && entry.end !== undefined ? [entry.end] : [])],
})

/** Reads the list entry by entry. Ends are taken from entries before its first break alone. */
export class SurveyListReader {
  readonly #chain: Chain<ListEntry>
  readonly #surveys = new Map<string, ListedSurvey>()

  constructor(sha256: Sha256) {
    this.#chain = new Chain(entrySchema, sha256)
  }

  /** The next entry, by its place. */
  take(found: FoundEntry): void {
    const entry = this.#chain.take(found)
    if (entry === undefined || entry.what === 'opened') return
    const before = this.#surveys.get(entry.surveyId)
    const comesIn = entry.what === 'survey begun' || entry.what === 'survey entered late'
    if (comesIn !== (before === undefined)) this.#chain.breakAt('entry-impossible', found.place)
    const after = told(entry, before)
    this.#surveys.set(entry.surveyId, this.#chain.broken === undefined ? after : { ...after, ends: before?.ends ?? [] })
  }

  /** `end` as the yard keeps it apart from the entries. */
  finish(end: RecordEnd | undefined): ReadList {
    this.#chain.finish(end)
    return { surveys: this.#surveys, end: this.#chain.last, broken: this.#chain.broken }
  }
}
