import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { askedValues, isAsked } from '../../shared-logic/checks/asked-fields'
import { problemsOf, type FieldProblem } from '../../shared-logic/checks/parse-values'
import type { Answer, FieldValue, FieldValues } from '../../shared-logic/survey/answer'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Walk } from './use-walk'

/** Long enough not to save half a number, short enough to lose nothing worth having. */
const pauseMs = 450

/** The answer of the open check while it is written: what is typed is judged at once and kept after a moment's pause. */
export interface Draft {
  readonly values: FieldValues
  readonly assessed: Assessed
  /** Problems of what is typed, told once the typing pauses. */
  readonly problems: readonly FieldProblem[]
  /** Typed: kept after a pause. */
  readonly type: (field: string, value: FieldValue | undefined, isReadable?: boolean) => void
  /** Picked: kept at once. */
  readonly pick: (field: string, value: FieldValue | undefined) => Assessed
  /** Keeps now what still waits; undefined when it cannot be kept as it stands. */
  readonly keep: () => Assessed | undefined
  /** Every field asked is filled, the optional ones too: nothing more to record here. */
  readonly isComplete: (values: FieldValues) => boolean
}

const without = (values: FieldValues): Answer['values'] =>
  Object.fromEntries(Object.entries(values).flatMap(([field, value]) => (value === undefined ? [] : [[field, value]])))

interface Written {
  readonly values: FieldValues
  readonly isReadable: boolean
}

export const useDraft = (walk: Walk): Draft => {
  const { check } = walk.current
  const { surveyDate } = walk.survey
  const [draft, setDraft] = useState<Written>()
  const [isPaused, setPaused] = useState(true)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const pending = useRef<Written>(undefined)
  const values = draft?.values ?? walk.written.values
  const problems = useMemo(() => problemsOf(check, askedValues(check, values), surveyDate), [check, values, surveyDate])
  const answer: Answer = { ...walk.written, values: without(values), ...(draft && { aside: undefined }) }
  const assessed = problems.length > 0 ? walk.judge({ ...answer, values: {} }) : walk.judge(answer)

  /** Only what is still asked is kept, so that a closed gate leaves nothing behind. */
  const save = (next: FieldValues): Assessed => {
    const kept = without(askedValues(check, next))
    walk.revise(({ aside: _answeredNow, ...rest }) => ({ ...rest, values: kept }))
    const { aside: _aside, ...rest } = walk.written
    return walk.judge({ ...rest, values: kept })
  }
  const keep = (): Assessed | undefined => {
    clearTimeout(timer.current)
    setPaused(true)
    const waiting = pending.current
    if (waiting === undefined) return assessed
    if (!waiting.isReadable || problemsOf(check, askedValues(check, waiting.values), surveyDate).length > 0) return undefined
    pending.current = undefined
    setDraft(undefined)
    return save(waiting.values)
  }
  const latest = useRef(keep)
  useEffect(() => {
    latest.current = keep
  })
  // Leaving the check keeps what is readable of it.
  useEffect(() => () => void latest.current(), [])

  const put = useCallback((next: Written): void => {
    pending.current = next
    setDraft(next)
    setPaused(false)
    clearTimeout(timer.current)
    timer.current = setTimeout(() => latest.current(), pauseMs)
  }, [])

  return {
    values,
    assessed,
    problems: isPaused ? problems : [],
    type: (field, value, isReadable = true) => put({ values: { ...(pending.current?.values ?? values), [field]: value }, isReadable }),
    pick: (field, value) => {
      const next = { ...(pending.current?.values ?? values), [field]: value }
      clearTimeout(timer.current)
      pending.current = undefined
      setDraft(undefined)
      return save(next)
    },
    keep,
    isComplete: (written) => check.fields.every((field) => !isAsked(field, written) || written[field.id] !== undefined),
  }
}
