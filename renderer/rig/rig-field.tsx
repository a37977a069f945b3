import { memo } from 'react'
import { assertNever } from '../../shared-logic/assert-never'
import type { Words } from '../../shared-logic/words/en'
import { ChoiceField, type ChoiceOption } from '../parts/choice-field'
import { NumberField } from '../parts/number-field'
import { QuantityField } from '../parts/quantity-field'
import { SelectField } from '../parts/select-field'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import type { DraftValue } from './draft'
import type { RigField as Field } from './fields'
import { sayHullNumber, sayIdentificationNumber } from './number-sentences'
import { TanksField } from './tanks-field'

/** Told of each change; `problem` is why what stands there cannot be read. */
export type ChangeField = (path: string, value: DraftValue | undefined, problem?: string) => void

interface RigFieldProps {
  readonly field: Field
  readonly value: DraftValue | undefined
  readonly onChange: ChangeField
  readonly error?: string | undefined
  /** Sentences by path below this field: the tanks. */
  readonly inner?: Readonly<Record<string, string>> | undefined
}

/** No answer has this name. */
const unknown = 'not known'

const optionsOf = (words: Words, path: string, options: readonly string[]): ChoiceOption<string>[] => [
  ...options.map((value) => ({ value, label: words.fieldOptions[path]?.[value] ?? value })),
  { value: unknown, label: words.screens.rig.notKnown, isQuiet: true },
]

const asText = (value: DraftValue | undefined): string => (typeof value === 'string' ? value : '')
const asNumber = (value: DraftValue | undefined): number | undefined => (typeof value === 'number' ? value : undefined)

const WordsField = ({ field, value, onChange, error }: RigFieldProps & { readonly field: Extract<Field, { maxLength: number }> }) => {
  const words = useWords()
  const { path, maxLength } = field
  const isRequired = field.kind === 'text' && field.isRequired === true
  const says = field.kind === 'identification' ? sayIdentificationNumber(words, asText(value)) : field.kind === 'hull identification' ? sayHullNumber(words, asText(value)) : undefined
  return (
    <TextField
      label={words.fields[path] ?? path} name={path} value={asText(value)} maxLength={maxLength} isLong={field.kind === 'text' && field.isLong === true} isRequired={isRequired}
      placeholder={isRequired ? undefined : words.screens.rig.notKnown} hint={words.screens.rig.hints[path]} understood={says} error={error}
      onChange={(typed) => onChange(path, typed === '' ? undefined : typed)}
    />
  )
}

const OptionField = ({ field, value, onChange, error }: RigFieldProps & { readonly field: Extract<Field, { options: readonly string[] }> }) => {
  const words = useWords()
  const { path } = field
  const isNumber = field.kind === 'choice' && field.isNumber === true
  const Choose = field.kind === 'list' ? SelectField : ChoiceField
  return (
    <Choose
      label={words.fields[path] ?? path} name={path} options={optionsOf(words, path, field.options)} value={typeof value === 'string' || typeof value === 'number' ? String(value) : unknown}
      hint={words.screens.rig.hints[path]} error={error}
      onChange={(chosen) => onChange(path, chosen === unknown ? undefined : isNumber ? Number(chosen) : chosen)}
    />
  )
}

const FlagField = ({ field: { path }, value, onChange, error }: RigFieldProps) => {
  const words = useWords()
  return (
    <ChoiceField
      label={words.fields[path] ?? path} name={path} options={optionsOf(words, path, ['yes', 'no'])} value={value === undefined ? unknown : value === true ? 'yes' : 'no'} error={error}
      onChange={(chosen) => onChange(path, chosen === unknown ? undefined : chosen === 'yes')}
    />
  )
}

const FigureField = ({ field, value, onChange, error }: RigFieldProps & { readonly field: Extract<Field, { kind: 'quantity' | 'number' }> }) => {
  const words = useWords()
  const { path } = field
  const shared = { label: words.fields[path] ?? path, name: path, value: asNumber(value), placeholder: words.screens.rig.notKnown, hint: words.screens.rig.hints[path], error }
  return field.kind === 'number'
    ? <NumberField {...shared} onChange={(typed) => onChange(path, typed)} />
    : <QuantityField {...shared} quantity={field.quantity} onChange={(si, problem) => onChange(path, si, problem)} />
}

const FieldOfKind = (props: RigFieldProps) => {
  const { field, value, onChange, inner } = props
  switch (field.kind) {
    case 'text':
    case 'identification':
    case 'hull identification':
      return <WordsField {...props} field={field} />
    case 'quantity':
    case 'number':
      return <FigureField {...props} field={field} />
    case 'choice':
    case 'list':
      return <OptionField {...props} field={field} />
    case 'flag':
      return <FlagField {...props} />
    case 'tanks':
      return <TanksField path={field.path} tanks={Array.isArray(value) ? value : []} onChange={onChange} problems={inner ?? {}} />
    default:
      return assertNever(field)
  }
}

/** One fact of the register, typed or chosen. Drawn anew only when its own value or sentence changes. */
export const RigField = memo(FieldOfKind)
