import { FieldError, Label, Text } from 'react-aria-components'
import style from './field.module.css'

interface FieldWordsProps {
  readonly label: string
}

/** The label above a field. */
export const FieldLabel = ({ label }: FieldWordsProps) => <Label className={style.label}>{label}</Label>

interface FieldNotesProps {
  readonly hint?: string | undefined
  /** What was understood of what was typed. */
  readonly understood?: string | undefined
  readonly error?: string | undefined
}

/** What stands below a field: the hint, what was understood, and what is wrong. */
export const FieldNotes = ({ hint, understood, error }: FieldNotesProps) => (
  <>
    {(hint !== undefined || understood !== undefined) && (
      <Text slot="description" className={understood === undefined ? style.hint : style.understood}>{understood ?? hint}</Text>
    )}
    {error !== undefined && <FieldError className={style.error}>{error}</FieldError>}
  </>
)
