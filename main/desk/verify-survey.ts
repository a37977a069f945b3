import { setImmediate as seeToOthers } from 'node:timers/promises'
import { join } from 'node:path'
import { compareReports, compareRows, compareSurvey } from '../../shared-logic/proof/compare-rows'
import { recordEndSchema, type RecordEnd } from '../../shared-logic/proof/entry'
import type { Problem, Verified } from '../../shared-logic/proof/problem'
import { RecordReader, type ReadRecord } from '../../shared-logic/proof/read-record'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import { lookAtFile, type LookOptions } from '../photos/file-hash'
import { lookAtOriginal, type OriginalFound } from '../photos/shelf-files'
import { sha256Of } from '../store/photograph-log'
import { asRecordedReport, type ReportToProve } from '../store/report-log'
import { surveyToProve, type SurveyToProve } from '../store/to-prove'
import type { ReadableYard } from '../store/yard'
import { hasNoCopyRecorded, lookAtCopies, type KnownCopies } from './look-at-copies'
import { reportFile } from './report-files'

export interface VerifyOptions extends LookOptions {
  /** Told how many bytes are to be read in all, once that is known. */
  readonly onTotal?: ((byteCount: number) => void) | undefined
  /** What was found of originals already, by `keyOfOriginal`, where several surveys are looked through together. */
  readonly known?: Map<string, OriginalFound>
  readonly knownCopies?: KnownCopies
}

export type YardToVerify = Pick<ReadableYard, 'read' | 'folder'>

/** So many entries are read in a few milliseconds; then whoever waits has their turn. */
const entriesAtOnce = 100

const readRecord = async (surveyId: string, { entries, end }: SurveyToProve, signal: AbortSignal | undefined): Promise<ReadRecord> => {
  const reader = new RecordReader(surveyId, sha256Of)
  for (const [index, entry] of entries.entries()) {
    if (index % entriesAtOnce === entriesAtOnce - 1) await seeToOthers(undefined, { signal })
    reader.take(entry)
  }
  return reader.finish(end)
}

/** Every original that record or rows speak of: where they differ, as recorded, since the rows may have been changed. */
const originalsOf = (rows: readonly RecordedPhotograph[], record: ReadRecord): RecordedPhotograph[] =>
  [...new Map([...rows, ...record.photographs.values()].map((each) => [each.sha256, each])).values()]

const problemOfFile = ({ facts, sha256, byteCount }: RecordedPhotograph, found: OriginalFound): Problem[] => {
  const values = { name: facts.fileName ?? '', sha256 }
  switch (found.is) {
    case 'as recorded': return []
    case 'missing': return [{ code: 'file-missing', values }]
    case 'set aside': return [{ code: 'file-set-aside', values }]
    case 'resized': return [{ code: 'file-resized', values: { ...values, recorded: byteCount, now: found.byteCount } }]
    case 'changed': return [{ code: 'file-changed', values: { ...values, now: found.sha256 } }]
    case 'unreadable': return [{ code: 'file-unreadable', values: { ...values, reason: found.reason } }]
  }
}

/** Begins with the hash; what is recorded of an original differently was not looked at yet. */
const keyOfOriginal = ({ sha256, byteCount, facts }: RecordedPhotograph): string => `${sha256} ${byteCount} ${facts.format}`

/** Every original, and beside it the copies made from it. */
const lookAtFiles = async (folder: string, originals: readonly RecordedPhotograph[], { known = new Map<string, OriginalFound>(), knownCopies = new Map(), ...options }: VerifyOptions): Promise<Problem[]> => {
  const problems: Problem[] = []
  const shelfFolder = join(folder, 'photographs')
  for (const original of originals) {
    const { sha256, byteCount, facts } = original
    const found = known.get(keyOfOriginal(original)) ?? (await lookAtOriginal(shelfFolder, { sha256, byteCount, format: facts.format }, options))
    known.set(keyOfOriginal(original), found)
    problems.push(...problemOfFile(original, found), ...(await lookAtCopies(shelfFolder, original, found, knownCopies, options)))
  }
  return problems
}

const endOf = ({ photographRecord }: ReportToProve): RecordEnd | undefined => (photographRecord === null ? undefined : recordEndSchema.safeParse(JSON.parse(photographRecord)).data)

const lookAtReport = async (folder: string, report: ReportToProve, record: ReadRecord, options: LookOptions): Promise<Problem[]> => {
  const { number, revision, pdfSha256, pdfByteCount, isReadable, photographRecord } = report
  const values = { number, revision }
  const problems: Problem[] = []
  const found = await lookAtFile(reportFile(folder, pdfSha256), { sha256: pdfSha256, byteCount: pdfByteCount }, options)
  if (found.is === 'missing') problems.push({ code: 'report-missing', values })
  else if (found.is !== 'as recorded') problems.push({ code: 'report-changed', values })
  const end = endOf(report)
  if (!isReadable || (end === undefined) !== (photographRecord === null)) problems.push({ code: 'report-unreadable', values })
  if (end !== undefined && record.hashAt(end.entryCount) !== end.lastSha256)
    problems.push({ code: 'report-tells-otherwise', values: { ...values, count: end.entryCount, sha256: end.lastSha256 } })
  return problems
}

/** Where rows and record differ. A record that is gone altogether is said once. */
const compareAll = ({ photographs, orderSha256, reports, survey }: SurveyToProve, record: ReadRecord): Problem[] => {
  if (record.end === undefined) return photographs.length + reports.length === 0 ? [] : [{ code: 'record-missing', values: { count: photographs.length, reports: reports.length } }]
  return [
    ...compareRows(photographs, record.photographs),
    ...(record.orderSha256 === orderSha256 ? [] : [{ code: 'order-changed', values: {} } as const]),
    ...compareReports(reports.map(asRecordedReport), record.reports),
    ...compareSurvey(survey, record.issued),
  ]
}

/** Works everything of one survey's photographs out again: the record, the rows, every original and its copies on the disk, every issued report. Rejects with the signal's reason when it is stopped. */
export const verifySurvey = async ({ read, folder }: YardToVerify, surveyId: string, options: VerifyOptions = {}): Promise<Verified> => {
  const found = await read((db) => surveyToProve(db, surveyId))
  const { photographs, reports } = found
  const record = await readRecord(surveyId, found, options.signal)
  const originals = originalsOf(photographs, record)
  const byteCount = originals.reduce((sum, each) => sum + each.byteCount, 0)
  options.onTotal?.(byteCount + reports.reduce((sum, { pdfByteCount }) => sum + pdfByteCount, 0))
  const problems: Problem[] = [...record.problems, ...compareAll(found, record), ...(await lookAtFiles(folder, originals, options))]
  for (const report of reports) problems.push(...(await lookAtReport(folder, report, record, options)))
  const withoutCopies = originals.filter(hasNoCopyRecorded).length
  const removedCount = photographs.filter(({ facts }) => facts.removedAt !== null).length
  return {
    photographCount: photographs.length - removedCount, removedCount, byteCount, problems,
    ...(record.late && { late: record.late }),
    ...(record.lateReports && { lateReports: record.lateReports }),
    ...(withoutCopies > 0 && { withoutCopies }),
    ...(record.end && { end: record.end }),
    reports: reports.map((report) => {
      const end = endOf(report)
      return { number: report.number, revision: report.revision, ...(end && { end }) }
    }),
  }
}
