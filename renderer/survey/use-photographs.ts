import { useQueryClient } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { refuse } from '../../shared-logic/contract/refusal'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import type { Photograph } from '../../shared-logic/survey/records'
import { call } from '../client/desk-client'
import type { CheckPlace } from './answer-queue'
import { IntakePace } from './intake-pace'
import { PhotographIntake, type Batch } from './photograph-intake'
import { photographsWereKept, photographWasKept, photographWasRemoved } from './survey-cache'

/** The photographs of a survey as the walk uses them. A batch goes on while the surveyor walks on. */
export interface Photographs {
  readonly batch: Batch | undefined
  /** To a check, or to none. */
  readonly add: (files: readonly File[], place?: CheckPlace) => void
  /** One picture of the window's own camera; undefined when it was let go: stopped on its way, or refused and that read. */
  readonly take: (file: File, place: CheckPlace) => Promise<Photograph | undefined>
  readonly cancel: () => void
  /** Hands over once more what was refused for the moment. */
  readonly tryAgain: () => void
  readonly dismiss: () => void
  readonly describe: (photograph: Photograph, caption: string) => void
  /** Keeps the layer of marks; rejects when it was not kept. */
  readonly mark: (photograph: Photograph, layer: MarkLayer) => Promise<void>
  readonly remove: (photograph: Photograph) => void
  /** The same, settled once it is out, or has failed as `problem` tells. */
  readonly takeBack: (photograph: Photograph) => Promise<void>
  /** The next one that comes to this one's place takes its place: this one is removed once that is in. */
  readonly takeAgain: (photograph: Photograph) => void
  /** Those waiting to be replaced, by id. */
  readonly replacing: readonly string[]
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
  const [pace] = useState(() => new IntakePace(({ photographs, news }) => {
    if (photographs.length > 0) void photographsWereKept(client, surveyId, photographs)
    if (news !== undefined) setBatch(news.batch)
  }))
  const [intake] = useState(() => new PhotographIntake(pace.tell))
  const lastTaken = useRef<Promise<unknown>>(Promise.resolve())
  const [replacing, setReplacing] = useState<readonly Photograph[]>([])
  const waiting = useRef(replacing)
  const wait = (photographs: readonly Photograph[]): void => {
    waiting.current = photographs
    setReplacing(photographs)
  }

  const attempt = (work: Promise<void>): Promise<void> => {
    setProblem(undefined)
    return work.catch(setProblem)
  }
  const takeBack = (photograph: Photograph): Promise<void> =>
    attempt(
      call('photographs.remove', { photographId: photograph.id }).then(() => {
        setRemoved(photograph)
        return photographWasRemoved(client, surveyId, photograph.id)
      }),
    )
  const replaceBy = (photograph: Photograph): void => {
    const old = waiting.current.find(({ checkId, position }) => checkId === photograph.checkId && position === photograph.position)
    if (old === undefined) return
    wait(waiting.current.filter((each) => each !== old))
    void takeBack(old)
  }
  const send = async (place: CheckPlace | undefined, source: Photograph['source'], file: File, signal: AbortSignal): Promise<Photograph> => {
    if (file.size > largestPhotographBytes) refuse('photograph.too-large', { name: nameOf(file), megabytes: largestPhotographBytes / 1_000_000 })
    const bytes = new Uint8Array(await file.arrayBuffer())
    const { photograph, alreadyThere } = await call('photographs.add', { surveyId, ...place, fileName: nameOf(file), source }, { bytes, signal })
    if (alreadyThere) refuse(place === undefined ? 'photograph.already-in' : 'photograph.already-there', { name: nameOf(file), kept: photograph.fileName })
    if (source === 'file') pace.keep(photograph)
    else await photographWasKept(client, surveyId, photograph)
    replaceBy(photograph)
    return photograph
  }
  return {
    batch,
    add: (files, place) => intake.add(files, (file, signal) => send(place, 'file', file, signal).then(() => undefined)),
    take: (file, place) =>
      new Promise((resolve) => {
        // One after the other: a series stands in the order it was taken.
        const inTurn = (each: File, signal: AbortSignal): Promise<void> => {
          const sent = lastTaken.current.then(() => send(place, 'camera', each, signal)).then(resolve)
          lastTaken.current = sent.catch(() => undefined)
          return sent
        }
        intake.add([file], inTurn, () => resolve(undefined))
      }),
    cancel: () => intake.cancel(),
    tryAgain: () => intake.tryAgain(),
    dismiss: () => intake.dismiss(),
    describe: (photograph, caption) =>
      void attempt(call('photographs.describe', { photographId: photograph.id, caption }).then((kept) => photographWasKept(client, surveyId, kept.photograph))),
    mark: async (photograph, layer) => {
      const kept = await call('photographs.mark', { photographId: photograph.id, layer })
      await photographWasKept(client, surveyId, kept.photograph)
    },
    remove: (photograph) => void takeBack(photograph),
    takeBack,
    takeAgain: (photograph) => wait([...waiting.current.filter(({ id }) => id !== photograph.id), photograph]),
    replacing: replacing.map(({ id }) => id),
    removed,
    restore: () => {
      if (removed === undefined) return
      void attempt(
        call('photographs.restore', { photographId: removed.id }).then((kept) => {
          setRemoved(undefined)
          return photographWasKept(client, surveyId, kept.photograph)
        }),
      )
    },
    problem,
  }
}
