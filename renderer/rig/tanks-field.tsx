import { mostTanks, tankContents } from '../../shared-logic/rig/boat'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { QuantityField } from '../parts/quantity-field'
import { SelectField } from '../parts/select-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { TankDraft } from './draft'
import type { ChangeField } from './rig-field'
import style from './tanks-field.module.css'

interface TanksFieldProps {
  readonly path: string
  readonly tanks: readonly TankDraft[]
  readonly onChange: ChangeField
  readonly problems: Readonly<Record<string, string>>
}

/** The boat's tanks, one after the other: what each holds and how much. */
export const TanksField = ({ path, tanks, onChange, problems }: TanksFieldProps) => {
  const words = useWords()
  const units = useUnits()
  const { rig } = words.screens
  const contents = tankContents.map((value) => ({ value, label: words.fieldOptions['boat.tanks.contents']?.[value] ?? value }))
  const change = (changed: TankDraft, problem?: string): void => onChange(path, tanks.map((tank) => (tank.key === changed.key ? changed : tank)), problem)
  const add = (): void => onChange(path, [...tanks, { key: Math.max(-1, ...tanks.map((tank) => tank.key)) + 1 }])
  return (
    <fieldset className={style.tanks}>
      <legend className={style.legend}>{words.fields[path]}</legend>
      {tanks.map((tank, index) => (
        <fieldset key={tank.key} className={style.tank} aria-label={say(rig.tank, { number: index + 1 }, units)}>
          <div data-path={`${path}.${index}.contents`}><SelectField
            label={words.fields['boat.tanks.contents'] ?? ''} name={`${path}.${index}.contents`} options={contents} value={tank.contents} placeholder={rig.notKnown}
            error={problems[`${path}.${index}.contents`]} onChange={(holds) => change({ ...tank, contents: holds })}
          /></div>
          <div data-path={`${path}.${index}.capacityM3`}><QuantityField
            label={words.fields['boat.tanks.capacityM3'] ?? ''} name={`${path}.${index}.capacityM3`} quantity="volume" value={tank.capacityM3}
            error={problems[`${path}.${index}.capacityM3`]} onChange={(capacityM3, problem) => change({ ...tank, capacityM3 }, problem)}
          /></div>
          <Button kind="quiet" onPress={() => onChange(path, tanks.filter((other) => other.key !== tank.key))}>{say(rig.removeTank, { number: index + 1 }, units)}</Button>
        </fieldset>
      ))}
      {tanks.length < mostTanks && <div><Button onPress={add}>{rig.addTank}</Button></div>}
    </fieldset>
  )
}
