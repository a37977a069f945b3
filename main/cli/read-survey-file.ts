import { readFile, stat } from 'node:fs/promises'
import { resolve } from 'node:path'
import { refuse } from '../../shared-logic/contract/refusal'
import { refuseFaults } from '../../shared-logic/survey/check-survey-file'
import { surveyFileSchema, type SurveyFile } from '../../shared-logic/survey/survey-file'
import type { Given } from './command'

const limitBytes = 8_000_000

const textOf = async (path: string, named: string): Promise<string> => {
  const found = await stat(path).catch(() => undefined)
  if (found?.isFile() !== true) return refuse('cli.file-not-readable', { file: named })
  if (found.size > limitBytes) return refuse('cli.file-too-large', { file: named, limit: limitBytes / 1_000_000 })
  return readFile(path, 'utf8').catch(() => refuse('cli.file-not-readable', { file: named }))
}

const parsed = (text: string, named: string): unknown => {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse('cli.file-not-json', { file: named, problem: error instanceof Error ? error.message : '' })
  }
}

/** The date where the survey is judged, ISO: a survey of tomorrow is refused. */
const localDate = (now: Date): string =>
  [now.getFullYear(), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join('-')

/** Reads and checks a survey file; refuses with the field, what is wrong and what would be right. */
export const readSurveyFile = async (named: string, { workingFolder, now }: Given): Promise<SurveyFile> => {
  const value = parsed(await textOf(resolve(workingFolder, named), named), named)
  const result = surveyFileSchema.safeParse(value)
  if (!result.success) {
    const [issue] = result.error.issues
    const field = issue?.path.join('.') ?? ''
    return refuse('survey-file.not-as-described', { file: named, field: field === '' ? '(the whole)' : field, problem: issue?.message ?? '' }, field)
  }
  refuseFaults(result.data, localDate(now()))
  return result.data
}
