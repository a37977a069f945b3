import { useCallback, useState } from 'react'
import { Refusal } from '../../shared-logic/contract/refusal'
import type { Rig } from '../../shared-logic/rig/rig'
import { useMutationOf } from '../client/use-procedure'
import { sentenceOf } from '../client/sentence-of'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { draftOf, emptyDraft, withKept, type Draft } from './draft'
import { readDraft, type Problems } from './draft-problems'
import type { ChangeField } from './rig-field'

const without = (problems: Problems, path: string): Problems =>
  Object.fromEntries(Object.entries(problems).filter(([name]) => name !== path && !name.startsWith(`${path}.`)))

/** What is typed, what is wrong with it, and how it is saved. Nothing typed is lost by a refusal. */
export const useRigDraft = (kept: Rig | undefined, rigId: string | undefined) => {
  const words = useWords()
  const units = useUnits()
  const [draft, setDraft] = useState<Draft>(() => (kept ? draftOf(kept) : emptyDraft))
  const [isDirty, setDirty] = useState(false)
  const [unread, setUnread] = useState<Problems>({})
  const [problems, setProblems] = useState<Problems>({})
  /** Raised at each refused attempt, so that the summary takes the focus again. */
  const [attempt, setAttempt] = useState(0)
  const saving = useMutationOf('rigs.save')

  const change = useCallback<ChangeField>((path, value, problem) => {
    setDraft((before) => ({ ...before, [path]: value }))
    setUnread((before) => (problem === undefined ? without(before, path) : { ...before, [path]: problem }))
    setProblems((before) => without(before, path))
    setDirty(true)
  }, [])

  const refuseWith = (found: Problems): void => {
    setProblems(found)
    setAttempt((count) => count + 1)
  }

  /** Answers the rig's id once it is in the yard; undefined when it was refused. */
  const save = async (): Promise<string | undefined> => {
    const read = readDraft(draft, unread, words, units)
    if (!read.ok) {
      refuseWith(read.problems)
      return undefined
    }
    try {
      const row = await saving.mutateAsync({ rig: withKept(read.rig, kept, draft), ...(rigId !== undefined && { rigId }) })
      return row.id
    } catch (error) {
      refuseWith({ [(error instanceof Refusal ? error.data.field?.replace(/^rig\./, '') : undefined) ?? '']: sentenceOf(words, error) })
      return undefined
    }
  }

  return { draft, isDirty, problems, attempt, change, save, isSaving: saving.isPending }
}
