import { useQueryClient, type QueryClient } from '@tanstack/react-query'
import { useEffect, useMemo, useSyncExternalStore } from 'react'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import type { Photograph } from '../../shared-logic/survey/records'
import type { CheckPlace } from './answer-queue'
import type { Batch } from './photograph-intake'
import { SurveyPhotographs } from './survey-photographs'

/** The photographs of a survey as its screens use them. A batch goes on while the surveyor walks on. */
export interface Photographs {
  readonly batch: Batch | undefined
  /** To a check, or to none. */
  readonly add: (files: readonly File[], place?: CheckPlace) => void
  /** One picture of the window's own camera; undefined when it was let go: stopped on its way, or refused and that read. */
  readonly take: (file: File, place?: CheckPlace) => Promise<Photograph | undefined>
  readonly cancel: () => void
  /** Hands over once more what was refused for the moment. */
  readonly tryAgain: () => void
  readonly dismiss: () => void
  readonly describe: (photograph: Photograph, caption: string) => void
  /** By a quarter: 1 to the right, -1 to the left. */
  readonly turn: (photograph: Photograph, quarters: 1 | -1) => void
  /** Keeps the layer of marks; rejects when it was not kept. */
  readonly mark: (photograph: Photograph, layer: MarkLayer) => Promise<void>
  readonly remove: (photograph: Photograph) => void
  /** The same, settled once it is out, or has failed as `problem` tells. */
  readonly takeBack: (photograph: Photograph) => Promise<void>
  /** The next one that comes to this one's place takes its place: this one is removed once that is in. */
  readonly takeAgain: (photograph: Photograph) => void
  /** Those waiting to be replaced, by id. */
  readonly replacing: readonly string[]
  /** Just removed, the latest last: can be had back. */
  readonly removed: readonly Photograph[]
  /** Has the latest of them back. */
  readonly restore: () => void
  readonly restoreAll: () => void
  /** Puts that offer away. */
  readonly forgetRemoved: () => void
  /** Why the last act on a photograph failed. */
  readonly problem: unknown
  /** Of these, by id, it is said no more what may be wrong with them. Undefined until `lookAt` is told what stands. */
  readonly read: ReadonlySet<string> | undefined
  readonly lookAt: (standing: readonly Photograph[]) => void
  readonly note: (read: readonly Photograph[]) => void
}

/** They outlive the screen, so that what is on its way is told of wherever the surveyor goes on. */
const kept = new WeakMap<QueryClient, Map<string, SurveyPhotographs>>()

const photographsOf = (client: QueryClient, surveyId: string): SurveyPhotographs => {
  const own = kept.get(client) ?? new Map<string, SurveyPhotographs>()
  kept.set(client, own)
  const photographs = own.get(surveyId) ?? new SurveyPhotographs(client, surveyId)
  own.set(surveyId, photographs)
  return photographs
}

export const usePhotographs = (surveyId: string): Photographs => {
  const own = photographsOf(useQueryClient(), surveyId)
  const { batch, replacing, removed, problem, read } = useSyncExternalStore(own.subscribe, own.now)
  useEffect(() => own.leave, [own])
  return useMemo(
    () => ({
      batch, removed, problem, read, lookAt: own.lookAt, note: own.note, replacing: replacing.map(({ id }) => id), add: own.add, take: own.take, cancel: own.cancel, tryAgain: own.tryAgain, dismiss: own.dismiss, describe: own.describe,
      turn: own.turn, mark: own.mark, remove: (photograph) => void own.takeBack(photograph), takeBack: own.takeBack, takeAgain: own.takeAgain, restore: own.restore, restoreAll: own.restoreAll, forgetRemoved: own.forgetRemoved,
    }),
    [own, batch, replacing, removed, problem, read],
  )
}
