import type { ReactNode } from 'react'
import { RadioButton, RadioField, RadioGroup } from 'react-aria-components'
import style from './choice-field.module.css'
import { classNames } from './class-names'
import { FieldLabel, FieldNotes } from './field-frame'

export interface ChoiceOption<Value extends string> {
  readonly value: Value
  readonly label: string
  /** Stands before the label: a verdict's shape. */
  readonly mark?: ReactNode
  /** The answer that nothing is known. */
  readonly isQuiet?: boolean
}

interface ChoiceFieldProps<Value extends string> {
  readonly label: string
  readonly options: readonly ChoiceOption<Value>[]
  readonly value: Value | undefined
  readonly onChange: (value: Value) => void
  /** One under the other, for long answers. */
  readonly isStacked?: boolean
  /** Shows 1, 2, 3 … where number keys answer. */
  readonly isNumbered?: boolean
  readonly isDisabled?: boolean
  readonly hint?: string | undefined
  readonly error?: string | undefined
  readonly name?: string
}

/** One answer of few, each large enough for a wet glove. Arrow keys walk, as in any radio group. */
export const ChoiceField = <Value extends string>({ label, options, value, onChange, isStacked = false, isNumbered = false, isDisabled = false, hint, error, name }: ChoiceFieldProps<Value>) => (
  <RadioGroup
    className={style.group ?? ''} value={value ?? null} isInvalid={error !== undefined} isDisabled={isDisabled} validationBehavior="aria" {...(name !== undefined && { name })}
    onChange={(chosen) => { const option = options.find((candidate) => candidate.value === chosen); if (option) onChange(option.value) }}
  >
    <FieldLabel label={label} />
    <div className={classNames(style.options, isStacked && style.stacked)}>
      {options.map((option, index) => (
        <RadioField key={option.value} value={option.value} className={style.field ?? ''}>
          <RadioButton className={classNames(style.option, option.isQuiet === true && style.quiet)}>
            {isNumbered ? <span className={style.key} aria-hidden="true">{index + 1}</span> : <span className={style.dot} aria-hidden="true" />}
            {option.mark}
            <span>{option.label}</span>
          </RadioButton>
        </RadioField>
      ))}
    </div>
    <FieldNotes hint={hint} error={error} />
  </RadioGroup>
)
