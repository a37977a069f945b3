import { Input, TextArea, TextField as AriaTextField } from 'react-aria-components'
import { classNames } from './class-names'
import style from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'

interface TextFieldProps {
  readonly label: string
  readonly value: string
  readonly onChange: (value: string) => void
  /** Several lines. */
  readonly isLong?: boolean
  readonly name?: string
  readonly hint?: string | undefined
  readonly understood?: string | undefined
  readonly error?: string | undefined
  readonly maxLength?: number
  readonly isRequired?: boolean
  readonly autoComplete?: string
  readonly placeholder?: string | undefined
  readonly onBlur?: () => void
}

/** Words typed by hand. */
export const TextField = ({ label, value, onChange, isLong = false, name, hint, understood, error, maxLength, isRequired = false, autoComplete = 'off', placeholder, onBlur }: TextFieldProps) => (
  <AriaTextField
    className={style.field ?? ''} value={value} onChange={onChange} isInvalid={error !== undefined} isRequired={isRequired} validationBehavior="aria"
    autoComplete={autoComplete} {...(name !== undefined && { name })} {...(maxLength !== undefined && { maxLength })} {...(onBlur && { onBlur })}
  >
    <FieldLabel label={label} />
    {isLong ? <TextArea className={classNames(style.input, style.area)} rows={4} placeholder={placeholder} /> : <Input className={style.input ?? ''} placeholder={placeholder} />}
    <FieldNotes hint={hint} understood={understood} error={error} />
  </AriaTextField>
)
