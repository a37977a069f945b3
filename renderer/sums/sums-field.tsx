import { memo } from 'react'
import { assertNever } from '../../shared-logic/assert-never'
import type { Words } from '../../shared-logic/words/en'
import { ChoiceField } from '../parts/choice-field'
import { NumberField } from '../parts/number-field'
import { QuantityField } from '../parts/quantity-field'
import { useWords } from '../parts/use-words'
import type { SumsInput } from './fields'
import { valueAt } from './rig-paths'
import style from './sums-inputs.module.css'
import type { ChangeSumsField, SheetFields } from './use-sums-rig'

interface SumsFieldProps {
  readonly input: SumsInput
  readonly value: unknown
  readonly error: string | undefined
  readonly onChange: ChangeSumsField
  /** Where the path's own label would not tell rows apart. */
  readonly label?: string
}

const unknown = 'not known'
const asNumber = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined)

const optionsOf = ({ screens: { sums } }: Words, input: Extract<SumsInput, { kind: 'choice' }>) => {
  const labels: Readonly<Record<string, string>> = sums[input.words]
  return [...input.options.map((value) => ({ value, label: labels[value] ?? value })), { value: unknown, label: sums.notKnown, isQuiet: true }]
}

const Plain = ({ input, value, error, onChange, label: given }: SumsFieldProps) => {
  const words = useWords()
  const { yes, no, notKnown } = words.screens.sums
  const labels: Readonly<Record<string, string>> = words.screens.sums.labels
  const { path } = input
  const label = given ?? labels[path] ?? words.fields[path.replaceAll(/\.\d+/g, '')] ?? path
  switch (input.kind) {
    case 'quantity':
      return <QuantityField label={label} name={path} quantity={input.quantity} value={asNumber(value)} error={error} onChange={(si, problem) => onChange(input, si, problem)} />
    case 'number':
      return <NumberField label={label} name={path} value={asNumber(value)} min={input.min} max={input.max} error={error} onChange={(next) => onChange(input, next)} />
    case 'choice':
      return <ChoiceField label={label} name={path} options={optionsOf(words, input)} value={typeof value === 'string' ? value : unknown} error={error} onChange={(next) => onChange(input, next === unknown ? undefined : next)} />
    case 'flag':
      return (
        <ChoiceField
          label={label} name={path} error={error} value={value === true ? 'yes' : value === false ? 'no' : unknown}
          options={[{ value: 'yes', label: yes }, { value: 'no', label: no }, { value: unknown, label: notKnown, isQuiet: true }]} onChange={(next) => onChange(input, next === unknown ? undefined : next === 'yes')}
        />
      )
    default:
      return assertNever(input)
  }
}

/** One input of the sums; drawn anew only when its own value changes, so that a drag costs nothing here. */
const SumsField = memo((props: SumsFieldProps) => (
  <div data-path={props.input.path} className={props.input.kind === 'choice' || props.input.kind === 'flag' ? style.wide : style.field}><Plain {...props} /></div>
))
SumsField.displayName = 'SumsField'

interface BoundFieldProps {
  readonly input: SumsInput
  readonly sheet: SheetFields
  readonly label?: string
}

/** The input with what is kept, or with what was typed and could not be taken. */
export const BoundField = ({ input, sheet: { kept, held, change }, label }: BoundFieldProps) => {
  const open = held.get(input.path)
  return <SumsField input={input} value={open ? open.value : valueAt(kept, input.path)} error={open?.problem} onChange={change} {...(label !== undefined && { label })} />
}
