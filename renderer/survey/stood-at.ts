import type { QueryClient } from '@tanstack/react-query'
import { placeKey } from '../../shared-logic/survey/keys'
import { call } from '../client/desk-client'
import type { CheckPlace } from './answer-queue'

/** Calls go one after the other: two under way at once may reach the desk in either order, and the last step counts. */
let turn: Promise<unknown> = Promise.resolve()

const keyOfPlace = (surveyId: string): readonly string[] => ['stood at', surveyId]

/**
 * The check the survey was left at in this window; undefined when it has not been open in it. The window's copy of the
 * survey may be older than the last step on the walk, and a fetch under way older still; this never is.
 */
export const stoodAt = (client: QueryClient, surveyId: string): string | undefined => client.getQueryData<string>(keyOfPlace(surveyId))

/** Remembers where the surveyor stands and tells the desk, which knows it the next time the program starts. Rejects when the desk was not reached. */
export const standAt = (client: QueryClient, surveyId: string, here: CheckPlace): Promise<unknown> => {
  client.setQueryDefaults(['stood at'], { gcTime: Infinity })
  client.setQueryData(keyOfPlace(surveyId), placeKey(here.checkId, here.position))
  const tell = (): Promise<unknown> => call('surveys.standAt', { surveyId, here })
  turn = turn.then(tell, tell)
  return turn
}
