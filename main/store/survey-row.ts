import type { Selectable } from 'kysely'
import type { Summary } from '../../shared-logic/survey/assess'
import type { SurveyRow } from '../../shared-logic/survey/records'
import { talliesSchema } from '../../shared-logic/survey/tallies'
import type { SurveyTable } from './tables'

export type KeptSurvey = Selectable<SurveyTable>

/** A kept survey as lists show it. */
export const asSurveyRow = (row: KeptSurvey): SurveyRow => ({
  id: row.id,
  rigId: row.rig_id,
  rigName: row.rig_name,
  purpose: row.purpose,
  surveyDate: row.survey_date,
  status: row.status,
  summary: { verdict: row.verdict, tallies: talliesSchema.parse(JSON.parse(row.tallies_json)), asked: row.asked, open: row.open },
  reportNumber: row.report_number ?? undefined,
  revision: row.revision,
})

export const summaryColumns = (summary: Summary) =>
  ({ verdict: summary.verdict, tallies_json: JSON.stringify(summary.tallies), asked: summary.asked, open: summary.open })
