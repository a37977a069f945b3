import { Input, TextArea, TextField as AriaTextField } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { classNames } from './class-names'
import style from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'
import { intoSight } from './into-sight'
import { useWords } from './use-words'

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
  /** What is longer stays to be seen and is told to be too long; whoever takes it in refuses it. */
  readonly maxLength?: number
  readonly isRequired?: boolean
  readonly autoComplete?: string
  readonly placeholder?: string | undefined
  readonly onBlur?: () => void
  /** Takes the focus when it appears, and comes into sight. */
  readonly isFocused?: boolean
  /** Escape is struck in it; nobody around it hears of that then. */
  readonly onEscape?: () => void
}

/** Words typed by hand. */
export const TextField = ({ label, value, onChange, isLong = false, name, hint, understood, error, maxLength, isRequired = false, autoComplete = 'off', placeholder, onBlur, isFocused = false, onEscape }: TextFieldProps) => {
  const { refusals } = useWords()
  const tooLong = maxLength !== undefined && value.trim().length > maxLength ? say(refusals['field.too-long'] ?? '', { field: label, limit: maxLength }, 'metric') : undefined
  const wrong = tooLong ?? error
  return (
    <AriaTextField
      className={style.field ?? ''} value={value} onChange={onChange} isInvalid={wrong !== undefined} isRequired={isRequired} validationBehavior="aria"
      autoComplete={autoComplete} {...(name !== undefined && { name })} {...(onBlur && { onBlur })} {...(isFocused && { autoFocus: true })}
      {...(onEscape && { onKeyDown: (event) => { if (event.key === 'Escape') onEscape(); else event.continuePropagation() } })}
    >
      <FieldLabel label={label} />
      {isLong ? <TextArea className={classNames(style.input, style.area)} rows={4} placeholder={placeholder} /> : <Input className={style.input ?? ''} placeholder={placeholder} {...(isFocused && { ref: intoSight })} />}
      <FieldNotes hint={hint} understood={understood} error={wrong} />
    </AriaTextField>
  )
}
