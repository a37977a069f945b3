import { useQueryClient, type QueryClient } from '@tanstack/react-query'
import { useCallback, useMemo, useSyncExternalStore } from 'react'
import type { Answer } from '../../shared-logic/survey/answer'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Survey } from '../../shared-logic/survey/records'
import { call } from '../client/desk-client'
import { AnswerQueue, type Changes, type CheckPlace, type SendChange } from './answer-queue'
import { answerWasKept } from './survey-cache'

/** Queues outlive the screen, so that a change refused by the desk is still there when the surveyor comes back. */
const queues = new WeakMap<QueryClient, Map<string, AnswerQueue>>()

const sendTo = (client: QueryClient, surveyId: string): SendChange => async (place, answer) => {
  const { summary } = answer === undefined ? await call('surveys.clear', { surveyId, ...place }) : await call('surveys.answer', { surveyId, ...place, answer })
  await answerWasKept(client, surveyId, place, answer, summary)
}

const queueOf = (client: QueryClient, surveyId: string): AnswerQueue => {
  const own = queues.get(client) ?? new Map<string, AnswerQueue>()
  queues.set(client, own)
  const queue = own.get(surveyId) ?? new AnswerQueue(sendTo(client, surveyId))
  own.set(surveyId, queue)
  return queue
}

interface Answers {
  /** What counts now: the desk's answers with those given here laid over them; refused ones are taken back. */
  readonly counted: ReadonlyMap<string, Answer>
  readonly changes: Changes
  /** What stands in the form at a place: also a refused change, so that nothing typed is lost. */
  readonly written: (key: string) => Answer | undefined
  readonly put: (place: CheckPlace, answer: Answer | undefined) => void
  /** Changes the answer as it stands this moment, not as it stood when the screen was drawn. */
  readonly change: (place: CheckPlace, how: (answer: Answer) => Answer) => void
  readonly tryAgain: (key: string) => void
  readonly giveUp: (key: string) => void
}

export const useAnswers = (survey: Survey): Answers => {
  const client = useQueryClient()
  const queue = queueOf(client, survey.id)
  const changes = useSyncExternalStore(queue.subscribe, queue.changes)
  const kept = useMemo(() => new Map(survey.answers.map((each) => [placeKey(each.checkId, each.position), each.answer])), [survey.answers])

  const counted = useMemo(() => {
    const map = new Map(kept)
    for (const [key, { state, answer }] of changes) {
      if (state === 'failed') continue
      if (answer === undefined) map.delete(key)
      else map.set(key, answer)
    }
    return map
  }, [kept, changes])

  const written = useCallback(
    (key: string): Answer | undefined => {
      const change = queue.changes().get(key)
      return change === undefined ? kept.get(key) : change.answer
    },
    [queue, kept],
  )
  const change = useCallback(
    (place: CheckPlace, how: (answer: Answer) => Answer) => queue.put(place, how(written(placeKey(place.checkId, place.position)) ?? { values: {} })),
    [queue, written],
  )
  return useMemo(
    () => ({ counted, changes, written, change, put: (place, answer) => queue.put(place, answer), tryAgain: (key) => queue.tryAgain(key), giveUp: (key) => queue.giveUp(key) }),
    [counted, changes, written, change, queue],
  )
}
