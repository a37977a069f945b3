import { Button, Input, Label, SearchField as AriaSearchField } from 'react-aria-components'
import { classNames } from './class-names'
import fieldStyle from './field.module.css'
import style from './search-field.module.css'

interface SearchFieldProps {
  readonly label: string
  readonly clearLabel: string
  readonly value: string
  readonly onChange: (value: string) => void
}

/** Words to look for; Escape empties it. */
export const SearchField = ({ label, clearLabel, value, onChange }: SearchFieldProps) => (
  <AriaSearchField className={style.search ?? ''} value={value} onChange={onChange} maxLength={200} autoComplete="off">
    <Label className={fieldStyle.label ?? ''}>{label}</Label>
    <div className={style.box}>
      <Input className={classNames(fieldStyle.input, style.input)} />
      <Button className={style.clear ?? ''} aria-label={clearLabel}>×</Button>
    </div>
  </AriaSearchField>
)
