import { isAsked } from '../../shared-logic/checks/asked-fields'
import type { Field } from '../../shared-logic/checks/check'
import type { FieldValue } from '../../shared-logic/survey/answer'
import type { Draft } from './use-draft'
import type { Walk } from './use-walk'

export interface Answering {
  /** The choice that number keys answer: the first asked one without an answer, else the first. */
  readonly numbered: Extract<Field, { kind: 'choice' }> | undefined
  readonly pick: (field: Field, value: FieldValue | undefined) => void
  readonly answerByNumber: (number: number) => void
  /** Keeps what is typed and goes on; stays where it cannot be kept. */
  readonly goOn: () => void
}

/** Answering the open check. A clean pass moves on by itself; a finding stays, for its photograph and note. */
export const useAnswering = (walk: Walk, draft: Draft): Answering => {
  const { values } = draft
  const choices = walk.current.check.fields.filter((field) => field.kind === 'choice').filter((field) => isAsked(field, values))
  const numbered = choices.find((field) => values[field.id] === undefined) ?? choices[0]
  const pick = (field: Field, value: FieldValue | undefined): void => {
    const after = draft.pick(field.id, value)
    const isClean = after.verdict === 'pass' || after.verdict === 'not applicable'
    if (field.kind === 'choice' && !after.open && isClean && draft.isComplete({ ...values, [field.id]: value })) walk.goOn()
  }
  return {
    numbered,
    pick,
    answerByNumber: (number) => {
      const option = numbered?.options[number - 1]
      if (numbered !== undefined && option !== undefined) pick(numbered, option)
    },
    goOn: () => {
      if (draft.keep() !== undefined) walk.goOn()
    },
  }
}
