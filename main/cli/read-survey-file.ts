import type { z } from 'zod'
import { checkOf } from '../../shared-logic/checks/catalogue'
import { Refusal, refuse } from '../../shared-logic/contract/refusal'
import { refuseFaults } from '../../shared-logic/survey/check-survey-file'
import { settingsOfFile } from '../../shared-logic/survey/file-to-survey'
import { surveyFileSchema, type SurveyFile } from '../../shared-logic/survey/survey-file'
import { refuseProblems } from '../desk/answer-problems'
import { refusalOfIssues } from '../desk/input-refusal'
import { localDate } from '../desk/local-date'
import type { Given } from './command'
import { readJsonFile } from './read-json-file'

/** A field that is misspelt would otherwise be left away without a word. */
const refuseUnknownField = ([issue]: readonly z.core.$ZodIssue[]): void => {
  if (issue?.code !== 'unrecognized_keys') return
  const field = [...issue.path.map(String), issue.keys[0] ?? ''].join('.')
  refuse('survey-file.unknown-field', { field }, field)
}

/** Refuses a value that its check's field cannot hold, naming the answer it stands in. */
const refuseValues = (file: SurveyFile): void =>
  file.answers.forEach((answer, index) => {
    const check = checkOf(answer.check)
    if (!check) return
    try {
      refuseProblems(check, answer.values, file.surveyDate, settingsOfFile(file).units)
    } catch (fault) {
      if (!(fault instanceof Refusal)) throw fault
      const field = `answers.${index} (${answer.check}, ${answer.position}), ${fault.data.field?.slice(check.id.length + 1) ?? ''}`
      throw new Refusal({ ...fault.data, field: `answers.${index}`, values: { ...fault.data.values, field } }, { cause: fault })
    }
  })

/** Reads and checks a survey file; refuses with the field, what is wrong and what would be right. */
export const readSurveyFile = async (named: string, given: Given): Promise<SurveyFile> => {
  const value = await readJsonFile(named, given)
  const result = surveyFileSchema.safeParse(value, { reportInput: true })
  if (!result.success) {
    refuseUnknownField(result.error.issues)
    const { code, values, field } = refusalOfIssues(result.error.issues)
    return refuse(code, { ...values, field: field ?? named }, field)
  }
  refuseFaults(result.data, localDate(given.now(), Intl.DateTimeFormat().resolvedOptions().timeZone))
  refuseValues(result.data)
  return result.data
}
