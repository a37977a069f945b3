import { SwitchButton, SwitchField } from 'react-aria-components'
import style from './switch.module.css'

interface SwitchProps {
  readonly label: string
  readonly isOn: boolean
  readonly onChange: (isOn: boolean) => void
  readonly isDisabled?: boolean
}

/** Something that is on or off, and takes hold at once. */
export const Switch = ({ label, isOn, onChange, isDisabled = false }: SwitchProps) => (
  <SwitchField isSelected={isOn} onChange={onChange} isDisabled={isDisabled}>
    <SwitchButton className={style.switch ?? ''}>
      <span className={style.track} aria-hidden="true" />
      {label}
    </SwitchButton>
  </SwitchField>
)
