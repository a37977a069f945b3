import { useQueryClient } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { refuse } from '../../shared-logic/contract/refusal'
import type { Photograph } from '../../shared-logic/survey/records'
import { call } from '../client/desk-client'
import type { CheckPlace } from './answer-queue'
import { takeIn, type Batch } from './photograph-intake'
import { photographWasKept, photographWasRemoved } from './survey-cache'

/** The photographs of a survey as the walk uses them. A batch goes on while the surveyor walks on. */
export interface Photographs {
  readonly batch: Batch | undefined
  readonly add: (files: readonly File[], place: CheckPlace) => void
  readonly cancel: () => void
  readonly dismiss: () => void
  readonly describe: (photograph: Photograph, caption: string) => void
  readonly remove: (photograph: Photograph) => void
  /** Just removed: can be had back. */
  readonly removed: Photograph | undefined
  readonly restore: () => void
  /** Why the last act on a photograph failed. */
  readonly problem: unknown
}

/** Desks keep at most 255 characters of a file's name; its end tells more than its beginning. */
const nameOf = (file: File): string => (file.name === '' ? 'pasted picture' : file.name).slice(-255)

export const usePhotographs = (surveyId: string): Photographs => {
  const client = useQueryClient()
  const [batch, setBatch] = useState<Batch>()
  const [removed, setRemoved] = useState<Photograph>()
  const [problem, setProblem] = useState<unknown>()
  const stop = useRef<AbortController>(undefined)
  const behind = useRef<Promise<unknown>>(Promise.resolve())

  const sendTo = (place: CheckPlace) => async (file: File, signal: AbortSignal): Promise<void> => {
    const bytes = new Uint8Array(await file.arrayBuffer())
    const { photograph, alreadyThere } = await call('photographs.add', { surveyId, ...place, fileName: nameOf(file) }, { bytes, signal })
    if (alreadyThere) refuse('photograph.already-there', { name: nameOf(file), kept: photograph.fileName })
    await photographWasKept(client, surveyId, photograph)
  }
  const add = (files: readonly File[], place: CheckPlace): void => {
    if (files.length === 0) return
    const run = async (): Promise<void> => {
      stop.current = new AbortController()
      await takeIn({ files, send: sendTo(place), signal: stop.current.signal, report: setBatch })
    }
    behind.current = behind.current.then(run)
  }
  const attempt = (work: Promise<void>): void => {
    setProblem(undefined)
    work.catch(setProblem)
  }
  return {
    batch,
    add,
    cancel: () => stop.current?.abort(),
    dismiss: () => setBatch(undefined),
    describe: (photograph, caption) =>
      attempt(call('photographs.describe', { photographId: photograph.id, caption }).then((kept) => photographWasKept(client, surveyId, kept.photograph))),
    remove: (photograph) =>
      attempt(
        call('photographs.remove', { photographId: photograph.id }).then(() => {
          setRemoved(photograph)
          return photographWasRemoved(client, surveyId, photograph.id)
        }),
      ),
    removed,
    restore: () => {
      if (removed === undefined) return
      attempt(
        call('photographs.restore', { photographId: removed.id }).then((kept) => {
          setRemoved(undefined)
          return photographWasKept(client, surveyId, kept.photograph)
        }),
      )
    },
    problem,
  }
}
