import type { Answer } from '../../shared-logic/survey/answer'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Survey } from '../../shared-logic/survey/records'

/** The answer the desk keeps at a place; undefined where there is none. */
export const answerIn = (survey: Survey, key: string): Answer | undefined => survey.answers.find((each) => placeKey(each.checkId, each.position) === key)?.answer
