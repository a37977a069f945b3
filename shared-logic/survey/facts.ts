import type { SurveyFacts } from './assess'
import { placeKey } from './keys'
import type { Survey } from './records'

/** What judging needs of a survey as it is kept. */
export const factsOf = (survey: Pick<Survey, 'rig' | 'ruleBook' | 'purpose' | 'surveyDate' | 'answers'>): SurveyFacts => ({
  rig: survey.rig,
  ruleBook: survey.ruleBook,
  purpose: survey.purpose,
  surveyDate: survey.surveyDate,
  answers: new Map(survey.answers.map((each) => [placeKey(each.checkId, each.position), each.answer])),
})
