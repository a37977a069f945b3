import { useQueryClient } from '@tanstack/react-query'
import { useMemo, useState } from 'react'
import type { Photograph } from '../../shared-logic/survey/records'
import { call } from '../client/desk-client'
import type { CheckPlace } from '../survey/answer-queue'
import { ActQueue, type Photographs } from './act-queue'

/** What was done last, for the line that says so and offers to undo it. */
export type Done =
  | { readonly kind: 'removed'; readonly photographs: Photographs; readonly undo: () => void }
  | { readonly kind: 'moved'; readonly photographs: Photographs; readonly place: CheckPlace | undefined; readonly stayed: number; readonly undo: () => void }

export interface SheetActs {
  readonly turn: (photographs: Photographs, quarters: 1 | -1) => void
  readonly choose: (photographs: Photographs, isPrinted: boolean) => void
  readonly assign: (photographs: Photographs, place: CheckPlace | undefined) => void
  readonly order: (photographIds: readonly string[]) => void
  readonly describe: (photograph: Photograph, caption: string) => void
  readonly remove: (photographs: Photographs) => void
  readonly done: Done | undefined
  readonly forget: () => void
  /** Why the last act was refused. */
  readonly problem: unknown
}

const idsOf = (photographs: Photographs): string[] => photographs.map(({ id }) => id)

const changed = (all: Photographs, ids: readonly string[], how: (photograph: Photograph) => Photograph): Photographs => {
  const those = new Set(ids)
  return all.map((each) => (those.has(each.id) ? how(each) : each))
}

const placeIn = ({ checkId, position }: Photograph): CheckPlace | undefined => (checkId === undefined || position === undefined ? undefined : { checkId, position })
const isAt = (place: CheckPlace | undefined) => ({ checkId, position }: Photograph): boolean => checkId === place?.checkId && position === place?.position

const inOrder = (all: Photographs, ids: readonly string[]): Photographs => {
  const places = new Map(ids.map((id, index) => [id, index]))
  return all.toSorted((a, b) => (places.get(a.id) ?? ids.length) - (places.get(b.id) ?? ids.length))
}

const turnAll = (queue: ActQueue, photographs: Photographs, quarters: 1 | -1): void => {
  const turns = new Map<string, number>()
  queue.run({
    look: (all) => changed(all, idsOf(photographs), (each) => {
      const quarterTurns = (each.quarterTurns + quarters + 4) % 4
      turns.set(each.id, quarterTurns)
      return { ...each, quarterTurns }
    }),
    ask: async () => (turns.size === 0 ? [] : (await call('photographs.turnAll', { turns: [...turns].map(([photographId, quarterTurns]) => ({ photographId, quarterTurns })) })).photographs),
  })
}

/** Answers by `told` how many stayed where they were, because their twin stands there. */
const assignAll = (queue: ActQueue, photographs: Photographs, place: CheckPlace | undefined, told: (stayed: number) => void): void =>
  queue.run({
    look: (all) => changed(all, idsOf(photographs), (each) => ({ ...each, checkId: place?.checkId, position: place?.position })),
    ask: async () => {
      const answer = await call('photographs.assign', { photographIds: idsOf(photographs), ...(place && { place }) })
      told(answer.photographs.filter((each) => !isAt(place)(each)).length)
      return answer.photographs
    },
  })

/** Answers how to bring them back, each to the place in the list that it had. */
const removeAll = (queue: ActQueue, photographs: Photographs): (() => void) => {
  const ids = new Set(idsOf(photographs))
  const places: { readonly photograph: Photograph; readonly index: number }[] = []
  queue.run({
    look: (all) => {
      places.push(...all.flatMap((photograph, index) => (ids.has(photograph.id) ? [{ photograph, index }] : [])))
      return all.filter(({ id }) => !ids.has(id))
    },
    ask: async () => {
      await call('photographs.removeAll', { photographIds: [...ids] })
      return []
    },
  })
  return () =>
    queue.run({
      look: (all) => {
        const list = [...all]
        for (const { photograph, index } of places) list.splice(index, 0, photograph)
        return list
      },
      ask: async () => (await call('photographs.restoreAll', { photographIds: [...ids] })).photographs,
    })
}

/** The acts on the photographs of a survey under way. */
export const useSheetActs = (surveyId: string): SheetActs => {
  const client = useQueryClient()
  const [problem, setProblem] = useState<unknown>()
  const [done, setDone] = useState<Done>()
  const queue = useMemo(() => new ActQueue(client, surveyId, (refusal) => {
    setProblem(refusal)
    // What was refused was not done: nothing is offered to be undone.
    if (refusal !== undefined) setDone(undefined)
  }), [client, surveyId])
  const acts = useMemo(() => {
    const undone = (undo: () => void) => (): void => {
      setDone(undefined)
      undo()
    }
    return {
      turn: (photographs: Photographs, quarters: 1 | -1): void => turnAll(queue, photographs, quarters),
      choose: (photographs: Photographs, isPrinted: boolean): void =>
        queue.run({
          look: (all) => changed(all, idsOf(photographs), (each) => ({ ...each, isPrinted })),
          ask: async () => (await call('photographs.choose', { photographIds: idsOf(photographs), isPrinted })).photographs,
        }),
      assign: (chosen: Photographs, place: CheckPlace | undefined): void => {
        const photographs = chosen.filter((each) => !isAt(place)(each))
        if (photographs.length === 0) return
        const undo = undone(() => {
          const before = Map.groupBy(photographs, (each) => JSON.stringify(placeIn(each) ?? null))
          for (const some of before.values()) assignAll(queue, some, some[0] && placeIn(some[0]), () => undefined)
        })
        setDone({ kind: 'moved', photographs, place, stayed: 0, undo })
        assignAll(queue, photographs, place, (stayed) => setDone((last) => (last?.kind === 'moved' && last.undo === undo ? { ...last, stayed } : last)))
      },
      order: (ids: readonly string[]): void =>
        queue.run({ look: (all) => inOrder(all, ids), ask: async () => (await call('photographs.order', { surveyId, photographIds: [...ids] })).photographs }),
      describe: (photograph: Photograph, caption: string): void =>
        queue.run({
          look: (all) => changed(all, [photograph.id], (each) => ({ ...each, caption })),
          ask: async () => [(await call('photographs.describe', { photographId: photograph.id, caption })).photograph],
        }),
      remove: (photographs: Photographs): void => setDone({ kind: 'removed', photographs, undo: undone(removeAll(queue, photographs)) }),
    }
  }, [queue, surveyId])
  return { ...acts, done, forget: () => setDone(undefined), problem }
}
