import type { RigRow, SurveyRow } from '../../shared-logic/survey/records'
import { en } from '../../shared-logic/words/en'
import { columns, fill } from './columns'
import type { Command } from './command'
import { everyRig, everySurvey } from './everything'
import { readYard } from './read-yard'

const words = en.commandLine

const rigCells = ({ id, rig, latest }: RigRow): string[] => [id, rig.name, latest ? `${latest.surveyDate}  ${en.verdicts[latest.summary.verdict]}` : words.notSurveyed]

/** One survey on one line. */
export const surveyCells = ({ id, surveyDate, rigName, purpose, status, summary, reportNumber }: SurveyRow): string[] => [
  id,
  surveyDate,
  rigName,
  en.purposes[purpose],
  status === 'issued' ? (reportNumber ?? words.statuses.issued) : fill(words.open, { open: summary.open, asked: summary.asked }),
  en.verdicts[summary.verdict],
]

/** A heading with its rows set in below it. */
export const section = (heading: string, none: string, rows: readonly string[][]): string[] => [
  heading,
  ...(rows.length === 0 ? [`  ${none}`] : columns(rows).map((line) => `  ${line}`)),
]

/** `list`: rigs by name, surveys newest first. */
export const list: Command = {
  words: [0, 0],
  options: ['folder'],
  run: (given) =>
    readYard(given, async (desk) => {
      const rigs = await everyRig(desk)
      const surveys = await everySurvey(desk)
      return {
        lines: [...section(words.rigsHeading, words.noRigs, rigs.map(rigCells)), '', ...section(words.surveysHeading, words.noSurveys, surveys.map(surveyCells))],
        json: { rigs, surveys },
      }
    }),
}
