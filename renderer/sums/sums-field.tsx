import { memo } from 'react'
import { assertNever } from '../../shared-logic/assert-never'
import type { Words } from '../../shared-logic/words/en'
import { ChoiceField } from '../parts/choice-field'
import { DateField } from '../parts/date-field'
import { QuantityField } from '../parts/quantity-field'
import { useWords } from '../parts/use-words'
import { CountField } from './count-field'
import type { SumsInput } from './fields'
import { labelOf } from './label-of'
import { valueAt } from './rig-paths'
import style from './sums-inputs.module.css'
import type { Held } from './change-rig'
import type { ChangeSumsField, SheetFields } from './use-sums-rig'

interface SumsFieldProps {
  readonly input: SumsInput
  readonly value: unknown
  readonly error: string | undefined
  readonly onChange: ChangeSumsField
  /** Where the path's own label would not tell rows apart. */
  readonly label?: string
  readonly hint?: string | undefined
  readonly today: string
}

const unknown = 'not known'
const asNumber = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined)

const optionsOf = ({ screens: { sums } }: Words, input: Extract<SumsInput, { kind: 'choice' }>) => {
  const labels: Readonly<Record<string, string>> = sums[input.words]
  return [...input.options.map((value) => ({ value, label: labels[value] ?? value })), ...(input.isNeeded === true ? [] : [{ value: unknown, label: sums.notKnown, isQuiet: true }])]
}

const Plain = ({ input, value, error, onChange, label: given, hint, today }: SumsFieldProps) => {
  const words = useWords()
  const { yes, no, notKnown } = words.screens.sums
  const { path } = input
  const label = given ?? labelOf(words, path)
  switch (input.kind) {
    case 'quantity':
      return <QuantityField label={label} name={path} quantity={input.quantity} value={asNumber(value)} hint={hint} error={error} onChange={(si, problem) => onChange(input, si, problem)} />
    case 'count':
      return <CountField label={label} name={path} value={asNumber(value)} error={error} onChange={(next, problem) => onChange(input, next, problem)} />
    case 'date':
      return <DateField label={label} name={path} value={typeof value === 'string' ? value : undefined} max={today} error={error} onChange={(next) => onChange(input, next)} />
    case 'choice':
      return <ChoiceField label={label} name={path} options={optionsOf(words, input)} value={typeof value === 'string' ? value : input.isNeeded === true ? undefined : unknown} error={error} onChange={(next) => onChange(input, next === unknown ? undefined : next)} />
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
  readonly hint?: string | undefined
}

/** What is to be said at the field itself: what cannot be read the field says when it is left, and what waits for its fellows is not wrong. */
const errorOf = (open: Held | undefined): string | undefined => (open === undefined || open.isUnread || (open.isWaiting === true && open.value !== undefined) ? undefined : open.problem)

/** The input with what is kept, or with what was typed and could not be taken. */
export const BoundField = ({ input, sheet: { kept, held, change, today }, label, hint }: BoundFieldProps) => {
  const open = held.get(input.path)
  return <SumsField input={input} value={open ? open.value : valueAt(kept, input.path)} error={errorOf(open)} onChange={change} today={today} hint={hint} {...(label !== undefined && { label })} />
}

/** Why what is typed below a path is not kept yet although nothing is wrong with it, once. */
export const WaitingNote = ({ sheet: { held }, below }: { readonly sheet: SheetFields; readonly below: string }) => {
  const open = [...held.values()].find(({ field, isWaiting, value }) => field.path.startsWith(`${below}.`) && isWaiting === true && value !== undefined)
  return open ? <output className={style.note}>{open.problem}</output> : null
}
