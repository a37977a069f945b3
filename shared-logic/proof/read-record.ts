import type { RecordedPhotograph, RecordedReport } from './acts'
import { Chain, type FoundEntry } from './chain'
import { entrySchema, orderHash, type Entry, type Facts, type RecordEnd, type Sha256, type SurveyFacts } from './entry'
import type { Problem } from './problem'

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
  /** What is wrong with the record itself: at most where it breaks first, and that it is another survey's. */
  readonly problems: readonly Problem[]
  readonly isOfAnotherSurvey: boolean
  /** The first entry that cannot be relied on; undefined where all can. */
  readonly brokenFrom: number | undefined
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

/** Reads a record entry by entry, so that whoever reads a long one can see to other things between. */
export class RecordReader {
  readonly #chain: Chain<Entry>
  readonly #photographs = new Map<string, RecordedPhotograph>()
  readonly #reports = new Map<string, RecordedReport>()
  readonly #surveyId: string
  #orderSha256: string
  #isOfAnotherSurvey = false
  #late: Late | undefined
  #lateReports: Late | undefined
  #issued: IssuedSurvey | undefined

  constructor(surveyId: string, sha256: Sha256) {
    this.#surveyId = surveyId
    this.#chain = new Chain(entrySchema, sha256)
    this.#orderSha256 = orderHash([], sha256)
  }

  /** The next entry, by its place. */
  take(found: FoundEntry): void {
    const entry = this.#chain.take(found)
    if (entry !== undefined) this.#follow(entry, found.place)
  }

  /** `end` as the yard keeps it apart from the entries. */
  finish(end: RecordEnd | undefined): ReadRecord {
    const chain = this.#chain
    chain.finish(end)
    const { broken, last } = chain
    const problems: Problem[] = [
      ...(broken === undefined ? [] : [{ code: broken.code, values: broken.values }]),
      ...(this.#isOfAnotherSurvey ? [{ code: 'record-of-another-survey' as const, values: {} }] : []),
    ]
    return {
      problems, isOfAnotherSurvey: this.#isOfAnotherSurvey, brokenFrom: broken?.from, photographs: this.#photographs, reports: this.#reports, orderSha256: this.#orderSha256, end: last,
      issued: this.#issued, late: this.#late, lateReports: this.#lateReports, hashAt: (place) => chain.hashAt(place),
    }
  }

  #follow(entry: Entry, place: number): void {
    if (entry.what === 'opened') {
      if (entry.surveyId !== this.#surveyId) this.#isOfAnotherSurvey = true
    } else if ('orderSha256' in entry) this.#orderSha256 = entry.orderSha256
    else if ('reportId' in entry) this.#followReport(entry, place)
    else if (entry.what === 'survey opened again') this.#issued = undefined
    else this.#followPhotograph(entry, place)
  }

  #followPhotograph({ what, photographId, sha256, byteCount, to, at }: Extract<Entry, { photographId: string }>, place: number): void {
    const before = this.#photographs.get(photographId)
    const comesIn = what === 'added' || what === 'entered late'
    const isPossible = before === undefined ? comesIn : !comesIn && before.sha256 === sha256 && before.byteCount === byteCount
    if (!isPossible) this.#chain.breakAt('entry-impossible', place)
    this.#photographs.set(photographId, { photographId, sha256, byteCount, facts: { ...before?.facts, ...to } as Facts })
    if (what === 'entered late') this.#late = oneMore(this.#late, at)
  }

  #followReport({ what, reportId, report, survey, at }: Extract<Entry, { reportId: string }>, place: number): void {
    if (this.#reports.has(reportId)) this.#chain.breakAt('entry-impossible', place)
    this.#reports.set(reportId, { reportId, facts: report })
    this.#issued = survey && { number: report.number, revision: report.revision, survey }
    if (what === 'report entered late') this.#lateReports = oneMore(this.#lateReports, at)
  }
}
