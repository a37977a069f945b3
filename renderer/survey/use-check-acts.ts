import { useState } from 'react'
import type { Answer } from '../../shared-logic/survey/answer'
import type { CheckAct } from './check-acts'
import type { Draft } from './use-draft'
import { placeOf, type Walk } from './use-walk'

interface CheckActing {
  readonly acts: readonly CheckAct[]
  readonly act: (act: CheckAct) => void
  /** The dialog that is open. */
  readonly asking: 'not seen' | 'not applicable' | 'overrule' | undefined
  readonly close: () => void
  /** Fields opened by hand, the last one freshest. */
  readonly opened: ReadonlySet<CheckAct>
  readonly fresh: CheckAct | undefined
  readonly setAside: (as: 'not seen' | 'not applicable', reason: string) => void
  readonly overrule: (overrule: Answer['overrule']) => void
}

/** What is offered besides answering, and what each does. An overrule is offered only over a judged verdict. */
export const useCheckActs = (walk: Walk, draft: Draft): CheckActing => {
  const { current, written } = walk
  const [asking, setAsking] = useState<CheckActing['asking']>()
  const [opened, setOpened] = useState<ReadonlySet<CheckAct>>(new Set())
  const [fresh, setFresh] = useState<CheckAct>()
  const isAnswered = current.answer !== undefined || walk.change?.state === 'failed'
  const isMeasured = current.check.fields.some((field) => field.kind === 'reading')
  const canOverrule = written.aside === undefined && (draft.assessed.judged !== undefined || written.overrule !== undefined)
  const acts: CheckAct[] = [
    ...(written.note === undefined && !opened.has('note') ? (['note'] as const) : []),
    ...(isMeasured && written.instrument === undefined && !opened.has('instrument') ? (['instrument'] as const) : []),
    'not seen',
    'not applicable',
    ...(canOverrule ? (['overrule'] as const) : []),
    ...(isAnswered ? (['clear'] as const) : []),
  ]
  const act = (wanted: CheckAct): void => {
    if (wanted === 'not seen' || wanted === 'not applicable' || wanted === 'overrule') {
      if (wanted !== 'overrule' || canOverrule) setAsking(wanted)
      return
    }
    if (wanted === 'clear') {
      if (isAnswered) walk.putAt(placeOf(current), undefined)
      return
    }
    setOpened((before) => new Set([...before, wanted]))
    setFresh(wanted)
  }
  return {
    acts,
    act,
    asking,
    close: () => setAsking(undefined),
    opened,
    fresh,
    setAside: (as, reason) => {
      draft.keep()
      walk.revise(({ overrule: _withdrawn, ...answer }) => ({ ...answer, aside: { as, reason } }))
      setAsking(undefined)
      walk.goOn()
    },
    overrule: (overrule) => {
      draft.keep()
      walk.revise((answer) => ({ ...answer, overrule }))
      setAsking(undefined)
    },
  }
}
