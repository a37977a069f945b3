import { useState } from 'react'
import { Input, TextField } from 'react-aria-components'
import { formatAsWritten, formatQuantity, parseQuantity, type ParsedQuantity } from '../../shared-logic/units/convert'
import type { Quantity, UnitSystem } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import type { Words } from '../../shared-logic/words/en'
import style from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'
import { intoSight } from './into-sight'
import { useUnits } from './use-settings'
import { useWords } from './use-words'

interface QuantityFieldProps {
  readonly label: string
  readonly quantity: Quantity
  /** SI; undefined while nothing is known. */
  readonly value: number | undefined
  /** Told the SI value on each keystroke; undefined with a sentence when what stands there cannot be read. `unit` is the one it is written in. */
  readonly onChange: (si: number | undefined, problem?: string, unit?: string) => void
  /** The unit a known value was written in: shown in that one. */
  readonly writtenIn?: string | undefined
  readonly name?: string
  readonly hint?: string | undefined
  /** A refusal from outside; the field's own comes first. */
  readonly error?: string | undefined
  readonly isRequired?: boolean
  readonly placeholder?: string | undefined
  readonly onSubmit?: () => void
  /** Takes the focus when it appears, and comes into sight. */
  readonly isFocused?: boolean
}

const problemOf = (words: Words, parsed: ParsedQuantity, units: UnitSystem): string | undefined => {
  if (parsed.ok || parsed.problem.code === 'quantity.empty') return undefined
  const { code, ...values } = parsed.problem
  return say(words.refusals[code] ?? code, values, units)
}

/** Text that follows the value from outside, and leaves alone what is being typed. */
const useTyped = (quantity: Quantity, value: number | undefined, units: UnitSystem, writtenIn: string | undefined) => {
  const shown = value === undefined ? '' : writtenIn === undefined ? formatQuantity(quantity, value, units) : formatAsWritten(quantity, value, writtenIn, units)
  const [typed, setTyped] = useState({ text: shown, value, units })
  // Other units show a known value anew; what could not be read stays as it was typed.
  const isOurs = Object.is(typed.value, value) && (typed.units === units || value === undefined)
  return { text: isOurs ? typed.text : shown, type: (text: string, si: number | undefined) => setTyped({ text, value: si, units }) }
}

/** A measured value as people write it: '3/8 in', '1.6 mm', '4500 lb'. Says what it understood, in the reader's units. */
export const QuantityField = ({ label, quantity, value, onChange, writtenIn, name, hint, error, isRequired = false, placeholder, onSubmit, isFocused = false }: QuantityFieldProps) => {
  const words = useWords()
  const units = useUnits()
  const { text, type } = useTyped(quantity, value, units, writtenIn)
  const [isLeft, setLeft] = useState(false)
  const parsed = parseQuantity(text, quantity, units)
  const problem = problemOf(words, parsed, units)
  const understood = parsed.ok && formatQuantity(quantity, parsed.si, units) !== text.trim() ? `= ${formatQuantity(quantity, parsed.si, units)}` : undefined
  const change = (written: string): void => {
    const read = parseQuantity(written, quantity, units)
    type(written, read.ok ? read.si : undefined)
    setLeft(false)
    onChange(read.ok ? read.si : undefined, problemOf(words, read, units), read.ok ? read.unit : undefined)
  }
  const shownError = (isLeft ? problem : undefined) ?? error
  return (
    <TextField
      className={style.field ?? ''} value={text} onChange={change} onBlur={() => setLeft(true)} isInvalid={shownError !== undefined} isRequired={isRequired}
      validationBehavior="aria" autoComplete="off" {...(name !== undefined && { name })} {...(isFocused && { autoFocus: true })}
      onKeyDown={(event) => { if (event.key === 'Enter') { setLeft(true); if (problem === undefined) onSubmit?.() } }}
    >
      <FieldLabel label={label} />
      <Input className={style.input ?? ''} inputMode="text" placeholder={placeholder} {...(isFocused && { ref: intoSight })} />
      <FieldNotes hint={hint} understood={understood} error={shownError} />
    </TextField>
  )
}
