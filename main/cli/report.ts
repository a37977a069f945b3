import { existsSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { en } from '../../shared-logic/words/en'
import { asDiskRefusal } from '../store/disk-refusals'
import { fill } from './columns'
import type { Answer, Command, Given } from './command'
import { findNamed } from './find-named'
import { readYard } from './read-yard'
import { writeReportOfFile } from './report-of-file'

const wrote = (file: string, json: Record<string, unknown>): Answer => ({ lines: [fill(en.commandLine.wrote, { file })], json: { file, ...json } })

/** What is written never takes the place of another file. */
const outputFor = (given: Given, fallback: string): string => {
  const file = resolve(given.workingFolder, given.output ?? fallback)
  if (existsSync(file)) refuse('cli.file-exists', { file })
  if (!existsSync(dirname(file))) refuse('cli.file-not-writable', { file })
  return file
}

const writing = async <Result>(file: string, write: () => Promise<Result>): Promise<Result> => {
  try {
    return await write()
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    if (code === 'ENOENT' || code === 'EACCES' || code === 'EROFS' || code === 'EPERM' || code === 'ENOTDIR' || code === 'EISDIR') return refuse('cli.file-not-writable', { file })
    throw asDiskRefusal(error, file)
  }
}

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
