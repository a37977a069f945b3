import type { Settings } from '../survey/settings'
import type { Survey } from '../survey/records'
import type { Words } from '../words/en'
import type { ReportDocument } from './document'

/** All a report is made from. `issuedAt` is a UTC instant, ISO with Z. */
export interface ReportInput {
  readonly survey: Survey
  readonly settings: Settings
  /** 'BW-2026-0007'; the same for every revision. */
  readonly number: string
  /** 1 for the first issue. */
  readonly revision: number
  readonly issuedAt: string
  readonly programVersion: string
  readonly words: Words
}

/** Words a survey into a report. Pure: the same input gives the same document. */
export const composeReport = (input: ReportInput): ReportDocument => {
  throw new Error(`report of ${input.survey.id} cannot be composed yet`)
}
