import type { Generated } from 'kysely'
import type { Purpose } from '../../shared-logic/survey/purpose'
import type { Photograph, SurveyRow } from '../../shared-logic/survey/records'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import type { Verdict } from '../../shared-logic/survey/verdict'

/**
 * The tables as Kysely knows them; a test compares them with the file's own. Instants are UTC, ISO with Z; dates are
 * local, ISO. `…_json` columns are written and read through the shared schemas. `serial` is the row number that
 * the search index points at: named, so that VACUUM keeps it.
 */
export interface Tables {
  readonly migrations: MigrationTable
  readonly settings: SettingsTable
  readonly rigs: RigTable
  readonly surveys: SurveyTable
  readonly frozen_rigs: FrozenRigTable
  readonly answers: AnswerTable
  readonly originals: OriginalTable
  readonly photographs: PhotographTable
  readonly photograph_log: PhotographLogTable
  readonly photograph_log_ends: PhotographLogEndTable
  readonly survey_list: SurveyListTable
  readonly survey_list_end: SurveyListEndTable
  readonly report_numbers: ReportNumberTable
  readonly reports: ReportTable
  readonly rigs_search: SearchTable
  readonly surveys_search: SearchTable
}

export interface MigrationTable {
  number: number
  program_version: string
  applied_at: string
}

export interface SettingsTable {
  only: number
  settings_json: string
  saved_at: string
}

export interface RigTable {
  serial: Generated<number>
  id: string
  name: string
  /** The name folded, so that 'Élan' stands beside 'elan'. */
  sort_name: string
  search_text: string
  rig_json: string
  saved_at: string
  removed_at: string | null
}

export interface SurveyTable {
  serial: Generated<number>
  id: string
  rig_id: string
  rig_name: string
  search_text: string
  purpose: Purpose
  survey_date: string
  status: SurveyRow['status']
  rule_book: RuleBook
  catalogue_version: string
  zone: string
  place: string | null
  here_check_id: string | null
  here_position: string | null
  /** The summary, written in the same transaction as what it sums up. */
  verdict: Verdict
  tallies_json: string
  asked: number
  open: number
  report_number: string | null
  /** 0 while never issued. */
  revision: number
  /** Raised with every change, so that a report is only kept when it says what the survey says. */
  change_count: number
  started_at: string
  discarded_at: string | null
}

/** The rig of an issued survey as it was that day. */
export interface FrozenRigTable {
  survey_id: string
  rig_json: string
}

export interface AnswerTable {
  survey_id: string
  check_id: string
  position: string
  answer_json: string
  answered_at: string
}

export interface OriginalTable {
  sha256: string
  format: Photograph['format']
  byte_count: number
  width_px: number
  height_px: number
  taken_at: string | null
  latitude: number | null
  longitude: number | null
  quality_json: string | null
  look_hash: string | null
  /** Of the copies made from it for screen and report. */
  large_preview_sha256: string | null
  small_preview_sha256: string | null
  added_at: string
}

export interface PhotographTable {
  id: string
  survey_id: string
  sha256: string
  check_id: string | null
  position: string | null
  caption: string
  file_name: string
  source: Photograph['source']
  /** Clockwise, on top of the orientation the file has. */
  quarter_turns: number
  /** 0 or 1: whether it stands in the report. */
  is_printed: number
  /** Its place among the photographs once somebody has put them in order; null comes last. */
  print_order: number | null
  marks_json: string | null
  added_at: string
  removed_at: string | null
}

/** The record of a survey's photographs, added to and never changed. `entry_json` is canonical JSON, see `shared-logic/proof/entry`. */
export interface PhotographLogTable {
  survey_id: string
  /** From 1. */
  place: number
  entry_json: string
  sha256: string
}

/** Where each record ends; kept by a trigger. */
export interface PhotographLogEndTable {
  survey_id: string
  entry_count: number
  last_sha256: string
}

/** The yard's list of its surveys, added to and never changed; see `shared-logic/proof/survey-list`. */
export interface SurveyListTable {
  /** From 1. */
  place: number
  entry_json: string
  sha256: string
}

/** Where that list ends; one row, kept by a trigger. */
export interface SurveyListEndTable {
  only: number
  entry_count: number
  last_sha256: string
}

export interface ReportNumberTable {
  year: number
  last: number
}

export interface ReportTable {
  id: string
  survey_id: string
  number: string
  revision: number
  issued_at: string
  date: string
  verdict: Verdict
  document_json: string
  pdf_sha256: string
  pdf_byte_count: number
}

/** Full-text index over `search_text`, by trigrams: any three letters in a row are found. */
export interface SearchTable {
  rowid: number
  search_text: string
}
