import { writeFile } from 'node:fs/promises'
import { refuse } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { fill } from './columns'
import type { Answer, Command, Given } from './command'
import { findNamed } from './find-named'
import { outputFor, writing } from './output-file'
import { readYard } from './read-yard'
import { writeReportOfFile } from './report-of-file'

const wrote = (file: string, json: Record<string, unknown>): Answer => ({ lines: [fill(en.commandLine.wrote, { file })], json: { file, ...json } })

const fromFile = async (given: Given, named: string): Promise<Answer> => {
  const file = outputFor(given, named.replace(/(?:\.json)?$/i, '.pdf'))
  const { verdict, tallies, number } = await writing(file, () => writeReportOfFile(given, file))
  return wrote(file, { number, verdict: verdict.verdict, tallies })
}

const fromYard = (given: Given, named: string): Promise<Answer> =>
  readYard(given, async (desk, opened) => {
    const found = await findNamed(desk, named, ['survey'])
    if (found.kind !== 'survey') return refuse('cli.nothing-of-that-name', { name: named })
    const { survey } = found
    const [newest] = (await desk['reports.list']({ surveyId: survey.id, offset: 0, limit: 1 })).reports
    if (!newest) return refuse('cli.not-issued', { rig: survey.rigName, date: survey.surveyDate })
    const pdf = await opened.reportPdf(newest.id)
    if (!pdf) return refuse('cli.nothing-of-that-name', { name: named })
    const file = outputFor(given, pdf.fileName)
    await writing(file, () => writeFile(file, pdf.bytes, { flag: 'wx' }))
    return wrote(file, { number: newest.number, revision: newest.revision, verdict: newest.verdict })
  })

/** `report`: of a survey file when its name ends in .json, of the yard's survey otherwise. */
export const report: Command = {
  words: [1, 1],
  options: ['folder', 'output'],
  run: (given) => {
    const named = given.words[0] ?? ''
    return named.toLowerCase().endsWith('.json') ? fromFile(given, named) : fromYard(given, named)
  },
}
