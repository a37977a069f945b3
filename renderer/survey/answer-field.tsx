import type { ReactNode } from 'react'
import type { Field } from '../../shared-logic/checks/check'
import { spotsIn, type FieldValue } from '../../shared-logic/survey/answer'
import { assertNever } from '../../shared-logic/assert-never'
import { DateField } from '../parts/date-field'
import { NumberField } from '../parts/number-field'
import { TextField } from '../parts/text-field'
import { AnswerChoice } from './answer-choice'
import { AnswerReading } from './answer-reading'
import { SpotsEditor } from './spots-editor'
import type { FieldSaid } from './field-words'

interface AnswerFieldProps {
  readonly field: Field
  readonly said: FieldSaid
  readonly value: FieldValue | undefined
  readonly isLabelHidden: boolean
  readonly isNumbered: boolean
  readonly surveyDate: string
  readonly onType: (value: FieldValue | undefined, isReadable?: boolean) => void
  readonly onPick: (value: FieldValue | undefined) => void
  readonly onLeave: () => void
  readonly onEnter: () => void
}

const stringIn = (value: FieldValue | undefined): string | undefined => (typeof value === 'string' ? value : undefined)
const numberIn = (value: FieldValue | undefined): number | undefined => (typeof value === 'number' ? value : undefined)

/** One thing a check records, by its kind. */
export const AnswerField = ({ field, said, value, isLabelHidden, isNumbered, surveyDate, onType, onPick, onLeave, onEnter }: AnswerFieldProps) => {
  const { label, hint, error } = said
  switch (field.kind) {
    case 'choice':
      return <AnswerChoice label={label} isLabelHidden={isLabelHidden} options={said.options} value={stringIn(value)} onPick={onPick} isNumbered={isNumbered} />
    case 'reading':
      return <AnswerReading field={field} label={label} hint={hint} error={error} value={numberIn(value)} onType={onType} onEnter={onEnter} />
    case 'count':
      return <EnterGoesOn onEnter={onEnter}><NumberField label={label} hint={hint} error={error} value={numberIn(value)} onChange={onType} min={field.min} max={field.max} hasSteps /></EnterGoesOn>
    case 'text':
      return (
        <EnterGoesOn onEnter={onEnter}>
          <TextField label={label} hint={hint} error={error} value={stringIn(value) ?? ''} maxLength={field.maxLength} onChange={(text) => onType(text.trim() === '' ? undefined : text)} onBlur={onLeave} />
        </EnterGoesOn>
      )
    case 'date':
      return <DateField label={label} hint={hint} error={error} value={stringIn(value)} max={surveyDate} onChange={onType} />
    case 'spots':
      return <SpotsEditor label={label} error={error} spots={spotsIn(value)} onChange={(spots) => onPick(spots && [...spots])} />
    default:
      return assertNever(field)
  }
}

/** Enter in a field that takes one line keeps it and goes on, as everywhere on the walk. */
const EnterGoesOn = ({ onEnter, children }: { readonly onEnter: () => void; readonly children: ReactNode }) => (
  <form onSubmit={(event) => { event.preventDefault(); onEnter() }}>{children}</form>
)
