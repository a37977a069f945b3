import type { QueryClient } from '@tanstack/react-query'
import type { OutputOf } from '../../shared-logic/contract/contract'
import type { Answer } from '../../shared-logic/survey/answer'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { keyOf } from '../client/use-procedure'
import type { CheckPlace } from './answer-queue'

/** Changes the window's copy of a survey after the desk has kept a change; nothing is fetched again for it. */
const revise = (client: QueryClient, surveyId: string, change: (survey: Survey) => Survey): void => {
  client.setQueryData<OutputOf<'surveys.get'>>(keyOf('surveys.get', { surveyId }), (survey) => survey && change(survey))
}

/** As the window's copy has it this moment, which may be later than it was drawn. */
export const photographNow = (client: QueryClient, surveyId: string, photographId: string): Photograph | undefined =>
  client.getQueryData<OutputOf<'surveys.get'>>(keyOf('surveys.get', { surveyId }))?.photographs.find(({ id }) => id === photographId)

/** Lists elsewhere show tallies: they are asked anew when next looked at. */
const listsAreStale = async (client: QueryClient): Promise<void> => {
  await Promise.all(['surveys.list', 'rigs.list', 'rigs.get'].map((name) => client.invalidateQueries({ queryKey: [name.split('.')[0], name], refetchType: 'none' })))
}

const isAt = (place: CheckPlace) => (each: { readonly checkId?: string | undefined; readonly position?: string | undefined }): boolean =>
  each.checkId === place.checkId && each.position === place.position

export const answerWasKept = async (client: QueryClient, surveyId: string, place: CheckPlace, answer: Answer | undefined, summary: Survey['summary']): Promise<void> => {
  // A fetch under way may carry the survey as it was before.
  await client.cancelQueries({ queryKey: keyOf('surveys.get', { surveyId }) })
  revise(client, surveyId, (survey) => {
    const others = survey.answers.filter((each) => !isAt(place)(each))
    // The desk has the true instant; it comes with the next fetch.
    const kept = answer === undefined ? [] : [{ ...place, answer, answeredAt: new Date().toISOString() }]
    return { ...survey, summary, answers: [...others, ...kept] }
  })
  await listsAreStale(client)
}

/** Those known already take the place they have; new ones come last. */
export const photographsWereKept = async (client: QueryClient, surveyId: string, photographs: readonly Photograph[]): Promise<void> => {
  await client.cancelQueries({ queryKey: keyOf('surveys.get', { surveyId }) })
  revise(client, surveyId, (survey) => {
    const kept = new Map(photographs.map((each) => [each.id, each]))
    const before = survey.photographs.map((each) => kept.get(each.id) ?? each)
    for (const { id } of before) kept.delete(id)
    return { ...survey, photographs: [...before, ...kept.values()] }
  })
}

export const photographWasKept = (client: QueryClient, surveyId: string, photograph: Photograph): Promise<void> => photographsWereKept(client, surveyId, [photograph])

export const photographWasRemoved = async (client: QueryClient, surveyId: string, photographId: string): Promise<void> => {
  await client.cancelQueries({ queryKey: keyOf('surveys.get', { surveyId }) })
  revise(client, surveyId, (survey) => ({ ...survey, photographs: survey.photographs.filter((each) => each.id !== photographId) }))
}

export const photographsAt = (survey: Survey, place: CheckPlace): Photograph[] => survey.photographs.filter(isAt(place))
