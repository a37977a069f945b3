import { randomUUID } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { composeReport } from '../../shared-logic/report/compose'
import type { ReportDocument } from '../../shared-logic/report/document'
import { settingsOfFile, surveyOfFile } from '../../shared-logic/survey/file-to-survey'
import type { SurveyFile } from '../../shared-logic/survey/survey-file'
import { en } from '../../shared-logic/words/en'
import { openShelf, type Shelf } from '../photos/shelf'
import { programVersion } from '../program-version'
import { writeReport } from '../report/write-report'
import type { Given } from './command'
import { takePhotographs } from './file-photographs'
import { readSurveyFile } from './read-survey-file'

const compose = async (surveyFile: string, file: SurveyFile, shelf: Shelf, now: Date): Promise<ReportDocument> => {
  const at = now.toISOString()
  const photographs = await takePhotographs(surveyFile, file.photographs, shelf, { newId: randomUUID, at })
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions()
  const survey = surveyOfFile(file, { surveyId: randomUUID(), rigId: randomUUID(), zone: timeZone, at, photographs })
  const number = file.reportNumber ?? en.commandLine.numberless
  return composeReport({ survey, settings: settingsOfFile(file), number, revision: 1, issuedAt: at, programVersion, words: en })
}

/** Writes the report of a survey file. Its previews are made in a folder of the system's that is cleared away again. */
export const writeReportOfFile = async (given: Given, output: string): Promise<ReportDocument> => {
  const named = given.words[0] ?? ''
  const file = await readSurveyFile(named, given)
  const folder = await mkdtemp(join(tmpdir(), 'bunkwright-report-'))
  try {
    const shelf = openShelf(folder, given.now)
    const document = await compose(resolve(given.workingFolder, named), file, shelf, given.now())
    const pictureOf = async (sha256: string): Promise<Uint8Array> => {
      const picture = await shelf.read(sha256, 'large')
      if (!picture) throw new Error(`no preview of ${sha256}`)
      return picture.bytes
    }
    await writeReport(document, pictureOf, output)
    return document
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
