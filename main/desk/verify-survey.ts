import { setImmediate as seeToOthers } from 'node:timers/promises'
import { join } from 'node:path'
import { compareReports, compareRows, compareSurvey, withoutBlame } from '../../shared-logic/proof/compare-rows'
import { recordEndSchema, type RecordEnd } from '../../shared-logic/proof/entry'
import type { Problem, Verified } from '../../shared-logic/proof/problem'
import { RecordReader, type ReadRecord } from '../../shared-logic/proof/read-record'
import { faultsByEnds, type PrintedEnd } from '../../shared-logic/proof/told-ends'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import { lookAtFile, type LookOptions } from '../photos/file-hash'
import { lookAtOriginal, type OriginalFound } from '../photos/shelf-files'
import { listBackups } from '../store/backups'
import { sha256Of } from '../store/chained-text'
import { asRecordedReport, reportsOfOthers, type ReportToProve } from '../store/report-log'
import { surveyToProve, type SurveyToProve } from '../store/to-prove'
import type { ReadableYard } from '../store/yard'
import { hasNoCopyRecorded, lookAtCopies, type KnownCopies } from './look-at-copies'
import { reportFile } from './report-files'
import { verifyListOf, type VerifiedList } from './verify-list'

export interface VerifyOptions extends LookOptions {
  /** Told how many bytes are to be read in all, once that is known. */
  readonly onTotal?: ((byteCount: number) => void) | undefined
  /** What was found of originals already, by `keyOfOriginal`, where several surveys are looked through together. */
  readonly known?: Map<string, OriginalFound>
  readonly knownCopies?: KnownCopies
  /** The yard's list of surveys, where it was looked through already. */
  readonly list?: VerifiedList
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

/** Every original that record or rows speak of: where they differ, as recorded, since the rows may have been changed. A record that was altered is not asked. */
const originalsOf = (rows: readonly RecordedPhotograph[], record: ReadRecord, isAltered: boolean): RecordedPhotograph[] =>
  [...new Map([...rows, ...(isAltered ? [] : record.photographs.values())].map((each) => [each.sha256, each])).values()]

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
  if (end !== undefined && isRewritten(report, record) && record.hashAt(end.entryCount) !== end.lastSha256) problems.push({ code: 'report-tells-otherwise', values })
  return problems
}

/** Whether what a report says is not what the record has of it. */
const isRewritten = ({ id, documentSha256 }: ReportToProve, { reports }: ReadRecord): boolean => {
  const told = reports.get(id)
  return told !== undefined && told.facts.documentSha256 !== documentSha256
}

/** Where the record stood by reports that are what they were, or that the record has lost. A report of another survey tells nothing of this one. */
const printedEnds = (reports: readonly ReportToProve[], record: ReadRecord, ofOthers: ReadonlySet<string>): PrintedEnd[] =>
  reports.filter((report) => !isRewritten(report, record) && !ofOthers.has(report.id)).flatMap((report) => {
    const end = endOf(report)
    return end === undefined ? [] : [{ number: report.number, revision: report.revision, end }]
  })

/** Where rows and record differ. A record that is gone altogether is said once, and that of another survey tells nothing of this one. */
const compareAll = ({ photographs, orderSha256, reports, survey }: SurveyToProve, record: ReadRecord, isGone: boolean): Problem[] => {
  if (record.isOfAnotherSurvey || (isGone && photographs.length + reports.length === 0)) return []
  return [
    ...compareRows(photographs, record.photographs),
    ...(record.orderSha256 === orderSha256 ? [] : [{ code: 'order-changed', values: {} } as const]),
    ...compareReports(reports.map(asRecordedReport), record.reports),
    ...(isGone ? [] : compareSurvey(survey, record.issued)),
  ]
}

/** A survey that is gone, with what its record, or else the yard's list alone, still tells of it. */
const sayGone = ({ code, values }: Problem, { end, photographs, reports }: ReadRecord): Problem => {
  if (code !== 'survey-gone') return { code, values }
  return end === undefined ? { code: 'survey-gone-with-record', values } : { code, values: { photographs: photographs.size, reports: reports.size } }
}

/** Record, rows, list and reports against one another; and whether the record itself was altered. */
const holdTogether = (found: SurveyToProve, record: ReadRecord, list: VerifiedList, surveyId: string, ofOthers: ReadonlySet<string>): { readonly problems: Problem[]; readonly isAltered: boolean } => {
  const { photographs, reports } = found
  const ofList = list.problemsOf(surveyId)
  const isGone = ofList.some(({ code }) => code === 'survey-gone' || code === 'survey-unknown')
  const isMissing = record.problems.length === 0 && photographs.length + reports.length + (isGone ? 0 : list.endsOf(surveyId).length) > 0
  const ends = faultsByEnds(record, printedEnds(reports, record, ofOthers), list.endsOf(surveyId))
  const isAltered = ends.length > 0 || record.problems.length > 0
  const missing: Problem[] = isMissing ? [{ code: 'record-missing', values: { count: photographs.length, reports: reports.length } }] : []
  const differences = record.end === undefined ? missing : compareAll(found, record, isGone)
  return {
    problems: [...ofList.map((problem) => sayGone(problem, record)), ...ends, ...record.problems, ...(isAltered ? withoutBlame(differences) : differences)],
    isAltered,
  }
}

/** Works everything of one survey's photographs out again: the record, the rows, every original and its copies on the disk, every issued report. Rejects with the signal's reason when it is stopped. */
export const verifySurvey = async ({ read, folder }: YardToVerify, surveyId: string, options: VerifyOptions = {}): Promise<Verified> => {
  const list = options.list ?? (await verifyListOf({ read }, surveyId, options.signal))
  const found = await read((db) => surveyToProve(db, surveyId))
  const { photographs, reports } = found
  const record = await readRecord(surveyId, found, options.signal)
  const ofOthers = await read((db) => reportsOfOthers(db, surveyId, reports.map(({ id }) => id).filter((id) => !record.reports.has(id))))
  const { problems, isAltered } = holdTogether(found, record, list, surveyId, ofOthers)
  const originals = originalsOf(photographs, record, isAltered)
  const byteCount = originals.reduce((sum, each) => sum + each.byteCount, 0)
  options.onTotal?.(byteCount + reports.reduce((sum, { pdfByteCount }) => sum + pdfByteCount, 0))
  problems.push(...(await lookAtFiles(folder, originals, options)))
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

/** The same of one survey alone, and whether earlier states of the yard's file are kept. */
export const verifyOneSurvey = async (yard: YardToVerify, surveyId: string, options?: VerifyOptions): Promise<Verified> => ({
  ...(await verifySurvey(yard, surveyId, options)),
  ...(listBackups(yard.folder).length > 0 && { hasBackups: true }),
})
