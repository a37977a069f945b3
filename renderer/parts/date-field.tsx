import { parseDate } from '@internationalized/date'
import { DateField as AriaDateField, DateInput, DateSegment, I18nProvider } from 'react-aria-components'
import { classNames } from './class-names'
import style from './field.module.css'
import { FieldLabel, FieldNotes } from './field-frame'

interface DateFieldProps {
  readonly label: string
  /** ISO, yyyy-mm-dd. */
  readonly value: string | undefined
  readonly onChange: (iso: string | undefined) => void
  /** The latest day that makes sense, ISO. */
  readonly max?: string | undefined
  readonly name?: string
  readonly hint?: string | undefined
  readonly error?: string | undefined
}

/** A day, typed part by part: day, month, year, as the report writes it. */
export const DateField = ({ label, value, onChange, max, name, hint, error }: DateFieldProps) => (
  <I18nProvider locale="en-GB">
    <AriaDateField
      className={style.field ?? ''} value={value === undefined ? null : parseDate(value)} onChange={(day) => onChange(day?.toString())} isInvalid={error !== undefined}
      validationBehavior="aria" shouldForceLeadingZeros {...(name !== undefined && { name })} {...(max !== undefined && { maxValue: parseDate(max) })}
    >
      <FieldLabel label={label} />
      <DateInput className={classNames(style.input, style.dates)}>{(segment) => <DateSegment segment={segment} className={style.segment ?? ''} />}</DateInput>
      <FieldNotes hint={hint} error={error} />
    </AriaDateField>
  </I18nProvider>
)
