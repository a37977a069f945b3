import { useQueryClient, type QueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import type { OutputOf } from '../../shared-logic/contract/contract'
import type { PhoneState } from '../../shared-logic/phone/phone-state'
import { call } from '../client/desk-client'
import { keyOf, useMutationOf, useQueryOf } from '../client/use-procedure'
import { photographWasKept } from '../survey/survey-cache'

/** How often the desk is asked while the door is open. It is not asked otherwise. */
const askEveryMs = 1_000

export interface DoorWanted {
  readonly minutes: number
  readonly isSecure: boolean
  readonly address?: string
}

/** The door for a phone as the survey's screen uses it. */
export interface PhoneDoor {
  /** Undefined while it is shut. */
  readonly state: PhoneState | undefined
  readonly open: (wanted: DoorWanted) => void
  readonly close: () => void
  readonly isOpening: boolean
  /** Why it was not opened or closed. */
  readonly problem: unknown
}

/** Photographs that came through the door appear in the survey as if added here; nothing else of it is taken over, for answers may be under way. */
const takeArrived = async (client: QueryClient, surveyId: string): Promise<void> => {
  const { photographs } = await call('surveys.get', { surveyId })
  const shown = client.getQueryData<OutputOf<'surveys.get'>>(keyOf('surveys.get', { surveyId }))
  const known = new Set(shown?.photographs.map(({ id }) => id))
  for (const photograph of photographs) if (!known.has(photograph.id)) await photographWasKept(client, surveyId, photograph)
}

export const usePhoneDoor = (surveyId: string): PhoneDoor => {
  const client = useQueryClient()
  const { data, refetch } = useQueryOf('phone.state', { surveyId })
  const opening = useMutationOf('phone.open')
  const closing = useMutationOf('phone.close')
  const state = data?.door
  const isOpen = state !== undefined
  useEffect(() => {
    if (!isOpen) return undefined
    let taken: string | undefined
    const ask = async (): Promise<void> => {
      // Not by their count: one that was taken away here may have come again.
      const last = (await refetch()).data?.door?.arrived.at(-1)
      const newest = last && `${last.photographId} ${last.at}`
      if (newest === taken) return
      await takeArrived(client, surveyId)
      taken = newest
    }
    // A desk that does not answer this time is asked again the next.
    const timer = setInterval(() => void ask().catch(() => undefined), askEveryMs)
    return () => {
      clearInterval(timer)
      // What came in the last moment before it was closed.
      void takeArrived(client, surveyId).catch(() => undefined)
    }
  }, [client, surveyId, isOpen, refetch])
  return {
    state,
    open: (wanted) => { closing.reset(); opening.mutate({ surveyId, ...wanted }) },
    close: () => { opening.reset(); closing.mutate({ surveyId }) },
    isOpening: opening.isPending,
    problem: opening.error ?? closing.error,
  }
}
