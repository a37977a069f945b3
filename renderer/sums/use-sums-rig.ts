import { useCallback, useMemo, useRef, useState } from 'react'
import type { Rig } from '../../shared-logic/rig/rig'
import { useMutationOf } from '../client/use-procedure'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { rigForSums, takeChange, type ChangedField, type HeldFields, type RigState } from './change-rig'

/** Told of each change of a field; `problem` is why what stands there cannot be read. */
export type ChangeSumsField = (field: ChangedField, value: unknown, problem?: string) => void

/** What the fields need; the same object until what is kept or held changes, so that a drag draws none of them anew. */
export interface SheetFields {
  /** What is kept: fields show this. */
  readonly kept: Rig
  readonly held: HeldFields
  readonly change: ChangeSumsField
  /** The whole rig as it should be, kept at once: a move carried out, a row added or removed. What is held below `drops` is let go. */
  readonly put: (rig: Rig, drops?: string) => void
  /** The latest day a test or weighing can have. */
  readonly today: string
}

export interface SumsRig {
  /** What the sums are worked from at this moment, a drag under way included. */
  readonly rig: Rig
  readonly isDragging: boolean
  readonly fields: SheetFields
  /** While something is dragged: seen, and not kept until `put`. */
  readonly preview: (rig: Rig) => void
  readonly undo: (() => void) | undefined
  readonly keeping: { readonly isSaving: boolean; readonly isSaved: boolean; readonly error: unknown; readonly tryAgain: () => void }
}

/** The rig on the sheet: changes are kept one after the other in the order they were made; a refused one stays in its field. */
export const useSumsRig = (first: Rig, rigId: string, today: string): SumsRig => {
  const words = useWords()
  const units = useUnits()
  const [state, setState] = useState<RigState>({ rig: first, held: new Map() })
  const [dragged, setDragged] = useState<Rig>()
  const [earlier, setEarlier] = useState<readonly Rig[]>([])
  const latest = useRef(state)
  const saving = useMutationOf('rigs.save', { inTurn: true })
  const { mutate } = saving

  const take = useCallback((next: RigState): void => {
    const before = latest.current
    latest.current = next
    setState(next)
    if (next.rig === before.rig) return
    setEarlier((rigs) => [...rigs.slice(-49), before.rig])
    mutate({ rigId, rig: next.rig })
  }, [mutate, rigId])

  const change = useCallback<ChangeSumsField>((field, value, problem) => {
    const { rig, held } = latest.current
    if (problem === undefined) take(takeChange({ rig, held }, { field, value, problem: '' }, { words, units, today }))
    else take({ rig, held: new Map([...held, [field.path, { field, value, problem, isUnread: true as const }]]) })
  }, [take, words, units, today])

  const put = useCallback((rig: Rig, drops?: string): void => {
    const { held } = latest.current
    setDragged(undefined)
    take({ rig, held: drops === undefined ? held : new Map([...held].filter(([path]) => !path.startsWith(`${drops}.`))) })
  }, [take])

  const undo = (): void => {
    const rig = earlier.at(-1)
    if (!rig) return
    take({ rig, held: new Map() })
    setEarlier(earlier.slice(0, -1))
  }

  const rig = useMemo(() => dragged ?? rigForSums(state), [dragged, state])
  const fields = useMemo(() => ({ kept: state.rig, held: state.held, change, put, today }), [state, change, put, today])
  return {
    rig, isDragging: dragged !== undefined, fields, preview: setDragged, undo: earlier.length > 0 ? undo : undefined,
    keeping: { isSaving: saving.isPending, isSaved: saving.isSuccess, error: saving.error, tryAgain: () => mutate({ rigId, rig: latest.current.rig }) },
  }
}
