import { catalogue, checkOf } from '../checks/catalogue'
import { refuse } from '../contract/refusal'
import { answerableChecks } from './assess'
import { placeKey } from './keys'
import type { SurveyFile } from './survey-file'

type Asked = ReadonlyMap<string, readonly string[]>

/** The checks that may be answered on this rig, each with its positions. */
const askedOf = (file: SurveyFile): Asked => {
  const asked = new Map<string, string[]>()
  for (const { check, position } of answerableChecks(catalogue, file)) asked.set(check.id, [...(asked.get(check.id) ?? []), position])
  return asked
}

const refusePlace = (asked: Asked, checkId: string, position: string, field: string): void => {
  if (!checkOf(checkId)) refuse('survey-file.unknown-check', { check: checkId }, field)
  const positions = asked.get(checkId)
  if (!positions) return refuse('survey-file.not-asked', { check: checkId }, field)
  if (!positions.includes(position)) refuse('survey-file.no-such-position', { check: checkId, position, positions: positions.join(', ') }, field)
}

const refuseAnswers = (file: SurveyFile, asked: Asked): void => {
  const seen = new Set<string>()
  file.answers.forEach((answer, index) => {
    const field = `answers.${index}`
    refusePlace(asked, answer.check, answer.position, field)
    const key = placeKey(answer.check, answer.position)
    if (seen.has(key)) refuse('survey-file.answered-twice', { check: answer.check, position: answer.position }, field)
    seen.add(key)
  })
}

/**
 * Refuses what the schema cannot see: a date still to come, a check or position that this rig is not asked, an answer
 * given twice. Values are looked at apart. `today` is the local date, ISO.
 */
export const refuseFaults = (file: SurveyFile, today: string): void => {
  if (file.surveyDate > today) refuse('survey-file.in-the-future', { date: file.surveyDate, today }, 'surveyDate')
  const asked = askedOf(file)
  refuseAnswers(file, asked)
  file.photographs.forEach(({ check, position }, index) => {
    if (check !== undefined) refusePlace(asked, check, position ?? 'rig', `photographs.${index}`)
  })
}
