import { SelectField } from '../parts/select-field'
import { Switch } from '../parts/switch'
import { useWords } from '../parts/use-words'
import style from './phone-panel.module.css'

export const minuteChoices = ['15', '30', '60', '120', '240'] as const
export type MinuteChoice = (typeof minuteChoices)[number]

interface DoorFormProps {
  readonly minutes: MinuteChoice
  readonly onMinutes: (minutes: MinuteChoice) => void
  readonly isSecure: boolean
  readonly onSecure: (isSecure: boolean) => void
}

/** What is chosen before the door is opened: for how long, and whether what is sent is encrypted. */
export const DoorForm = ({ minutes, onMinutes, isSecure, onSecure }: DoorFormProps) => {
  const said = useWords().screens.phone.panel
  return (
    <div className={style.form}>
      <p>{said.intro}</p>
      <SelectField label={said.minutes} value={minutes} onChange={onMinutes} options={minuteChoices.map((value) => ({ value, label: said.minuteOptions[value] }))} />
      <div>
        <Switch label={said.encrypt} isOn={isSecure} onChange={onSecure} />
        <p className={style.soft}>{said.encryptHint}</p>
      </div>
      <p className={style.caution}>{said.cautions.only}</p>
    </div>
  )
}
