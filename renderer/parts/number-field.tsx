import { Button, Group, Input, NumberField as AriaNumberField } from 'react-aria-components'
import style from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'
import { useWords } from './use-words'

interface NumberFieldProps {
  readonly label: string
  readonly value: number | undefined
  readonly onChange: (value: number | undefined) => void
  readonly min?: number
  readonly max?: number
  readonly name?: string
  readonly hint?: string | undefined
  readonly error?: string | undefined
  /** Buttons to count up and down; not for years and load indices. */
  readonly hasSteps?: boolean
  readonly placeholder?: string | undefined
}

/** A whole number without a unit. */
export const NumberField = ({ label, value, onChange, min, max, name, hint, error, hasSteps = false, placeholder }: NumberFieldProps) => {
  const { less, more } = useWords().screens.shell
  return (
    <AriaNumberField
      className={style.field ?? ''} value={value ?? Number.NaN} onChange={(next) => onChange(Number.isNaN(next) ? undefined : next)} isInvalid={error !== undefined}
      validationBehavior="aria" formatOptions={{ useGrouping: false, maximumFractionDigits: 0 }}
      {...(min !== undefined && { minValue: min })} {...(max !== undefined && { maxValue: max })} {...(name !== undefined && { name })}
    >
      <FieldLabel label={label} />
      <Group className={style.group ?? ''}>
        {hasSteps && <Button slot="decrement" className={style.step ?? ''} aria-label={less}>−</Button>}
        <Input className={style.input ?? ''} autoComplete="off" placeholder={placeholder} />
        {hasSteps && <Button slot="increment" className={style.step ?? ''} aria-label={more}>+</Button>}
      </Group>
      <FieldNotes hint={hint} error={error} />
    </AriaNumberField>
  )
}
