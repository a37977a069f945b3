import { Button, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components'
import type { ChoiceOption } from './choice-field'
import { classNames } from './class-names'
import fieldStyle from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'
import style from './select-field.module.css'

interface SelectFieldProps<Value extends string> {
  readonly label: string
  readonly options: readonly ChoiceOption<Value>[]
  readonly value: Value | undefined
  readonly onChange: (value: Value) => void
  readonly placeholder?: string
  readonly hint?: string | undefined
  readonly error?: string | undefined
  readonly name?: string
}

/** One answer of many, from a list that opens. */
export const SelectField = <Value extends string>({ label, options, value, onChange, placeholder, hint, error, name }: SelectFieldProps<Value>) => (
  <Select
    className={fieldStyle.field ?? ''} value={value ?? null} isInvalid={error !== undefined} validationBehavior="aria" {...(name !== undefined && { name })}
    {...(placeholder !== undefined && { placeholder })}
    onChange={(chosen) => { const option = options.find((candidate) => candidate.value === chosen); if (option) onChange(option.value) }}
  >
    <FieldLabel label={label} />
    <Button className={classNames(fieldStyle.input, style.button)}>
      <SelectValue className={style.value ?? ''} />
      <svg width="12" height="8" viewBox="0 0 12 8" aria-hidden="true"><path d="M1 1L6 6L11 1" fill="none" stroke="currentColor" strokeWidth="1.5" /></svg>
    </Button>
    <FieldNotes hint={hint} error={error} />
    <Popover className={style.popover ?? ''}>
      <ListBox className={style.list ?? ''}>
        {options.map((option) => (
          <ListBoxItem key={option.value} id={option.value} textValue={option.label} className={classNames(style.option, option.isQuiet === true && style.quiet)}>{option.label}</ListBoxItem>
        ))}
      </ListBox>
    </Popover>
  </Select>
)
