import { canonicalJson, type Json } from './canonical-json'
import { entrySchema, hashBeforeTheFirst, orderHash, type Entry, type Facts, type RecordEnd, type Sha256, type SurveyFacts } from './entry'
import type { RecordedPhotograph, RecordedReport } from './acts'
import type { Problem, ProblemCode } from './problem'

/** An entry as it was found. Its text is undefined where its bytes are none. */
export interface FoundEntry {
  readonly place: number
  readonly text: string | undefined
  readonly sha256: string
}

/** A survey as it stood when its last report was issued. */
export interface IssuedSurvey {
  readonly number: string
  readonly revision: number
  readonly survey: SurveyFacts
}

interface Late {
  readonly count: number
  readonly at: string
}

const oneMore = (late: Late | undefined, at: string): Late => ({ count: (late?.count ?? 0) + 1, at: late?.at ?? at })

/** What a record says, read from first to last. */
export interface ReadRecord {
  readonly problems: readonly Problem[]
  /** As the entries leave them, by id. */
  readonly photographs: ReadonlyMap<string, RecordedPhotograph>
  /** As they were issued, by id. */
  readonly reports: ReadonlyMap<string, RecordedReport>
  /** Undefined before the first report and once the survey was opened again. */
  readonly issued: IssuedSurvey | undefined
  readonly orderSha256: string
  readonly end: RecordEnd | undefined
  readonly late: Late | undefined
  readonly lateReports: Late | undefined
  /** The hash each place holds. */
  readonly hashAt: (place: number) => string | undefined
}

const parsed = (text: string): Entry | undefined => {
  try {
    const value = JSON.parse(text) as Json
    return canonicalJson(value) === text ? entrySchema.safeParse(value).data : undefined
  } catch {
    return undefined
  }
}

/** Reads a record entry by entry, so that whoever reads a long one can see to other things between. */
export class RecordReader {
  readonly #problems: Problem[] = []
  readonly #photographs = new Map<string, RecordedPhotograph>()
  readonly #reports = new Map<string, RecordedReport>()
  readonly #hashes = new Map<number, string>()
  readonly #surveyId: string
  readonly #sha256: Sha256
  #orderSha256: string
  #last: RecordEnd | undefined
  #late: Late | undefined
  #lateReports: Late | undefined
  #issued: IssuedSurvey | undefined

  constructor(surveyId: string, sha256: Sha256) {
    this.#surveyId = surveyId
    this.#sha256 = sha256
    this.#orderSha256 = orderHash([], sha256)
  }

  /** The next entry, by its place. */
  take(found: FoundEntry): void {
    const entry = found.text === undefined ? undefined : parsed(found.text)
    const problem = this.#faultOf(found, entry)
    if (problem !== undefined) this.#say(problem, { place: problem === 'entry-missing' ? this.#due : found.place })
    if (entry !== undefined) this.#follow(entry, found.place)
    this.#last = { entryCount: found.place, lastSha256: found.sha256 }
    this.#hashes.set(found.place, found.sha256)
  }

  /** `end` as the yard keeps it apart from the entries. */
  finish(end: RecordEnd | undefined): ReadRecord {
    const last = this.#last
    if (end === undefined && last !== undefined) this.#say('record-end-missing')
    if (end !== undefined) {
      const count = last?.entryCount ?? 0
      if (count < end.entryCount) this.#say('record-cut-off', { kept: count, count: end.entryCount })
      else if (count > end.entryCount || last?.lastSha256 !== end.lastSha256) this.#say('record-runs-on', { kept: count, count: end.entryCount })
    }
    const hashes = this.#hashes
    return {
      problems: this.#problems, photographs: this.#photographs, reports: this.#reports, orderSha256: this.#orderSha256, end: last,
      issued: this.#issued, late: this.#late, lateReports: this.#lateReports, hashAt: (place) => hashes.get(place),
    }
  }

  get #due(): number {
    return (this.#last?.entryCount ?? 0) + 1
  }

  #say(code: ProblemCode, values: Problem['values'] = {}): void {
    this.#problems.push({ code, values })
  }

  /** The first thing that is wrong with an entry in itself and towards the one before. */
  #faultOf({ place, text, sha256 }: FoundEntry, entry: Entry | undefined): ProblemCode | undefined {
    if (place < this.#due) return 'entry-twice'
    if (place > this.#due) return 'entry-missing'
    if (text === undefined || this.#sha256(text) !== sha256) return 'entry-changed'
    if (entry === undefined) return 'entry-unreadable'
    if (entry.place !== place || entry.previous !== (this.#last?.lastSha256 ?? hashBeforeTheFirst)) return 'entry-out-of-turn'
    if ((entry.what === 'opened') !== (place === 1)) return 'entry-impossible'
    return undefined
  }

  #follow(entry: Entry, place: number): void {
    if (entry.what === 'opened') {
      if (entry.surveyId !== this.#surveyId) this.#say('record-of-another-survey')
    } else if ('orderSha256' in entry) this.#orderSha256 = entry.orderSha256
    else if ('reportId' in entry) this.#followReport(entry, place)
    else if (entry.what === 'survey opened again') this.#issued = undefined
    else this.#followPhotograph(entry, place)
  }

  #followPhotograph({ what, photographId, sha256, byteCount, to, at }: Extract<Entry, { photographId: string }>, place: number): void {
    const before = this.#photographs.get(photographId)
    const comesIn = what === 'added' || what === 'entered late'
    const isPossible = before === undefined ? comesIn : !comesIn && before.sha256 === sha256 && before.byteCount === byteCount
    if (!isPossible) this.#say('entry-impossible', { place })
    this.#photographs.set(photographId, { photographId, sha256, byteCount, facts: { ...before?.facts, ...to } as Facts })
    if (what === 'entered late') this.#late = oneMore(this.#late, at)
  }

  #followReport({ what, reportId, report, survey, at }: Extract<Entry, { reportId: string }>, place: number): void {
    if (this.#reports.has(reportId)) this.#say('entry-impossible', { place })
    this.#reports.set(reportId, { reportId, facts: report })
    this.#issued = survey && { number: report.number, revision: report.revision, survey }
    if (what === 'report entered late') this.#lateReports = oneMore(this.#lateReports, at)
  }
}
