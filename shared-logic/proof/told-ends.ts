import type { RecordEnd } from './entry'
import type { Problem } from './problem'
import type { ReadRecord } from './read-record'

/** Where a record stood by a report that was issued. */
export interface PrintedEnd {
  readonly number: string
  readonly revision: number
  readonly end: RecordEnd
}

type Fit = 'fits' | 'shorter' | 'other'

/** How a record fits an end it once had. Behind its own break nothing more is to be found. */
const fitOf = ({ end: last, brokenFrom, hashAt }: ReadRecord, end: RecordEnd): Fit => {
  if ((last?.entryCount ?? 0) < end.entryCount) return 'shorter'
  if (hashAt(end.entryCount) === end.lastSha256 || (brokenFrom !== undefined && brokenFrom <= end.entryCount)) return 'fits'
  return 'other'
}

/** What a record has lost, or says otherwise, by ends told outside of it: by reports, else by the yard's list of surveys. `listed`: oldest first. */
export const faultsByEnds = (record: ReadRecord, printed: readonly PrintedEnd[], listed: readonly RecordEnd[]): Problem[] => {
  if (record.end === undefined) return []
  const kept = record.end.entryCount
  const longestFirst = printed.toSorted((a, b) => b.end.entryCount - a.end.entryCount)
  const shorter = longestFirst.find(({ end }) => fitOf(record, end) === 'shorter')
  const byReports: Problem[] = [
    ...(shorter ? [{ code: 'record-shorter-than-report' as const, values: { number: shorter.number, revision: shorter.revision, count: shorter.end.entryCount, kept } }] : []),
    ...longestFirst.filter(({ end }) => fitOf(record, end) === 'other')
      .map(({ number, revision, end }): Problem => ({ code: 'record-other-than-report', values: { number, revision, count: end.entryCount, sha256: end.lastSha256, now: record.hashAt(end.entryCount) ?? '' } })),
  ]
  if (byReports.length > 0) return byReports
  const newestFirst = listed.toReversed()
  const lost = newestFirst.find((end) => fitOf(record, end) === 'shorter')
  if (lost !== undefined) return [{ code: 'record-shorter-than-list', values: { count: lost.entryCount, kept } }]
  const other = newestFirst.find((end) => fitOf(record, end) === 'other')
  return other === undefined ? [] : [{ code: 'record-other-than-list', values: { count: other.entryCount } }]
}
