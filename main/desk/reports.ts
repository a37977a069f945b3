import { catalogueVersion } from '../../shared-logic/checks/catalogue'
import { composeReport } from '../../shared-logic/report/compose'
import type { ReportDocument } from '../../shared-logic/report/document'
import type { ParsedInputOf } from '../../shared-logic/contract/contract'
import { refuse } from '../../shared-logic/contract/refusal'
import type { RecordEnd } from '../../shared-logic/proof/entry'
import type { RecordedPhotograph } from '../../shared-logic/proof/acts'
import type { CorrosionSurvey, ReportRow, Survey } from '../../shared-logic/survey/records'
import type { Settings } from '../../shared-logic/survey/settings'
import { en } from '../../shared-logic/words/en'
import { nameHarmed } from '../../shared-logic/words/say-harmed'
import type { WrittenReport } from '../report/write-report'
import type { ReadableDb, WritableDb } from '../store/database'
import { corrosionOf } from '../store/corrosion'
import { yardRig } from '../store/rigs'
import { insertReport, lastNumber, listReports, reportsWithHarm, takeNumber } from '../store/reports'
import { photographsToRecord, recordedCopies, recordEnd } from '../store/photograph-log'
import { enterIssued } from '../store/report-log'
import { surveySearchText } from '../store/search-text'
import { readSettings } from '../store/settings'
import { changeSurvey, freezeRig } from '../store/surveys'
import { asDiskRefusal } from '../store/disk-refusals'
import { harmedOriginals, originalsNamed, withoutPicture, type OriginalsFound } from './harmed-originals'
import { localDate } from './local-date'
import type { Parts, Procedures } from './parts'
import { readPicture, type RecordedCopies } from './read-picture'
import { nameReport, unnamedReport } from './report-files'
import { wholeSurvey } from './surveys'
import { keepSummary, needSurvey, needUnderWay } from './under-way'

/** All that is decided before a report is written. */
interface Draft {
  readonly survey: Survey
  readonly changeCount: number
  readonly settings: Settings
  /** Where the record of its photographs stands. */
  readonly photographRecord: RecordEnd | undefined
  /** The copies of its photographs by that record. */
  readonly copies: RecordedCopies
  /** Every original that the report rests on. */
  readonly originals: readonly RecordedPhotograph[]
  /** Corroded spots of all the rig's surveys. */
  readonly corrosion: readonly CorrosionSurvey[]
  readonly year: number
  /** The number of the year this draft would take; undefined when the survey has its number already. */
  readonly newNumber: number | undefined
  readonly number: string
  readonly revision: number
  readonly issuedAt: string
  readonly date: string
}

const sayNumber = (year: number, number: number): string => `BW-${year}-${String(number).padStart(4, '0')}`

const draft = async (db: ReadableDb, { clock, zone }: Parts, surveyId: string): Promise<Draft> => {
  const kept = await needUnderWay(db, surveyId)
  const { settings } = await readSettings(db)
  if (settings.surveyorName === '') refuse('report.no-surveyor')
  const at = clock()
  const date = localDate(at, zone)
  const year = Number(date.slice(0, 4))
  const newNumber = kept.report_number === null ? (await lastNumber(db, year)) + 1 : undefined
  const survey = await wholeSurvey(db, kept)
  return {
    survey, changeCount: kept.change_count, settings, photographRecord: await recordEnd(db, surveyId), copies: await recordedCopies(db, surveyId), originals: originalsNamed(survey, await photographsToRecord(db, surveyId)), corrosion: await corrosionOf(db, kept.rig_id), year, newNumber,
    number: kept.report_number ?? sayNumber(year, newNumber ?? 1), revision: kept.revision + 1, issuedAt: at.toISOString(), date,
  }
}

const write = async (parts: Parts, document: ReportDocument, copies: RecordedCopies): Promise<WrittenReport> => {
  const { yard, writeReport, newId } = parts
  const part = unnamedReport(yard.folder, newId())
  const pictureOf = async (sha256: string): Promise<Uint8Array> =>
    (await readPicture(parts, sha256, 'large', copies))?.bytes ?? refuse('photograph.file-missing', { sha256: sha256.slice(0, 12) })
  try {
    const written = await writeReport(document, pictureOf, part)
    await nameReport(yard.folder, part, written.sha256)
    return written
  } catch (error) {
    throw asDiskRefusal(error, yard.folder)
  }
}

/** Freezes the survey and records its report. undefined when the survey has changed since the draft. */
const record = async (db: WritableDb, { newId, clock }: Parts, made: Draft, document: ReportDocument, pdf: WrittenReport): Promise<ReportRow | undefined> => {
  const { survey, number, revision, year, newNumber } = made
  const kept = await needUnderWay(db, survey.id)
  if (kept.change_count !== made.changeCount) return undefined
  if (newNumber !== undefined) {
    if ((await lastNumber(db, year)) !== newNumber - 1) return undefined
    await takeNumber(db, year, newNumber)
  }
  await freezeRig(db, survey.id, survey.rig)
  const search = surveySearchText(survey.rig, { place: survey.place, reportNumber: number, surveyDate: survey.surveyDate })
  await changeSurvey(db, survey.id, { status: 'issued', report_number: number, revision, search_text: search })
  const report = await insertReport(db, {
    id: newId(), survey_id: survey.id, number, revision, issued_at: made.issuedAt, date: made.date, verdict: survey.summary.verdict,
    document_json: JSON.stringify(document), pdf_sha256: pdf.sha256, pdf_byte_count: pdf.byteCount,
  })
  await enterIssued(db, report.id, clock().toISOString())
  return report
}

const attempts = 3

/** A newer catalogue than the one the survey was last summed up by judges it anew before it is issued. */
const judgeAnew = async (db: WritableDb, surveyId: string): Promise<void> => {
  const kept = await needUnderWay(db, surveyId)
  if (kept.catalogue_version !== catalogueVersion) await keepSummary(db, kept, await yardRig(db, kept.rig_id))
}

/**
 * Reads every original first: the report vouches for what was found, and where that is harm the surveyor has been told.
 * Writes the PDF before it is recorded: a crash between leaves a file nobody was told of, never a number without its report.
 */
const issue = async (parts: Parts, { surveyId, withPlaces, isHarmKnown }: ParsedInputOf<'reports.issue'>): Promise<ReportRow> => {
  const found: OriginalsFound = new Map()
  await parts.yard.write((db) => judgeAnew(db, surveyId))
  for (let attempt = 0; attempt < attempts; attempt += 1) {
    const made = await parts.yard.read((db) => draft(db, parts, surveyId))
    const { survey, settings, photographRecord, corrosion, number, revision, issuedAt } = made
    const harmed = await harmedOriginals(parts.yard.folder, made.originals, found)
    const unpictured = await withoutPicture(parts, survey, harmed, made.copies)
    if (harmed.length > 0 && !isHarmKnown) return refuse('report.originals-harmed', { harmed: nameHarmed(en, harmed, unpictured) })
    const document = composeReport({ survey, settings, number, revision, issuedAt, programVersion: parts.version, words: en, withPlaces, photographRecord, corrosion, harmed: new Map(harmed.map(({ sha256, harm }) => [sha256, harm])), withoutPicture: unpictured })
    const pdf = await write(parts, document, made.copies)
    const report = await parts.yard.write((db) => record(db, parts, made, document, pdf))
    if (report) return report
  }
  return refuse('report.survey-changed')
}

export const reportProcedures = (parts: Parts): Procedures<'reports'> => ({
  'reports.issue': async (input) => {
    const report = await issue(parts, input)
    // The survey is over: no phone hands anything in any more.
    await parts.phoneDoor?.close(input.surveyId)
    return { report }
  },
  'reports.list': ({ surveyId, ...page }) =>
    parts.yard.read(async (db) => {
      if (surveyId === undefined) return { reports: await listReports(db, page) }
      const { id } = await needSurvey(db, surveyId)
      return { reports: (await reportsWithHarm(db, id)).slice(page.offset, page.offset + page.limit) }
    }),
})
