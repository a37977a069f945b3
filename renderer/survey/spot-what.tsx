import { spotComponents, spotKinds, spotMaterials, touchingMetals, type Spot } from '../../shared-logic/survey/spot'
import { ChoiceField } from '../parts/choice-field'
import { SelectField } from '../parts/select-field'
import { Switch } from '../parts/switch'
import { useWords } from '../parts/use-words'
import style from './spot-sheet.module.css'

interface SpotWhatProps {
  readonly spot: Spot
  readonly onChange: (spot: Spot) => void
}

const states = ['present', 'repaired'] as const
const sizes = ['smaller', 'larger'] as const
const none = 'none'

/** On what, of what metal and coating, what kind, and what lies beside it: each decides by which rule it is graded. */
export const SpotWhat = ({ spot, onChange }: SpotWhatProps) => {
  const words = useWords()
  const said = words.screens.survey.spots
  const touch = (chosen: (typeof touchingMetals)[number] | typeof none): void => {
    const { touches: _touches, touchingIsSmaller: _size, ...rest } = spot
    onChange(chosen === none ? rest : { ...spot, touches: chosen })
  }
  const { components, metals } = words.corrosion
  return (
    <>
      <ChoiceField label={said.state} value={spot.state ?? 'present'} options={states.map((value) => ({ value, label: said.states[value] }))} onChange={(state) => onChange({ ...spot, state })} />
      <div className={style.pair}>
        <SelectField label={said.component} value={spot.component} options={spotComponents.map((value) => ({ value, label: components[value] }))} onChange={(component) => onChange({ ...spot, component })} />
        <SelectField label={said.material} value={spot.material} options={spotMaterials.map((value) => ({ value, label: said.materials[value] }))} onChange={(material) => onChange({ ...spot, material })} />
        <SelectField label={said.kind} value={spot.kind} options={spotKinds.map((value) => ({ value, label: said.kinds[value] }))} onChange={(kind) => onChange({ ...spot, kind })} />
        <SelectField
          label={said.touches} value={spot.touches ?? none} onChange={touch}
          options={[{ value: none, label: said.touchesNone, isQuiet: true }, ...touchingMetals.map((value) => ({ value, label: metals[value] }))]}
        />
      </div>
      {spot.touches !== undefined && (
        <ChoiceField
          label={said.smaller} value={spot.touchingIsSmaller === undefined ? undefined : spot.touchingIsSmaller ? 'smaller' : 'larger'}
          options={sizes.map((value) => ({ value, label: said.sizes[value] }))} onChange={(size) => onChange({ ...spot, touchingIsSmaller: size === 'smaller' })}
        />
      )}
      <Switch label={said.besideWeld} isOn={spot.besideWeld === true} onChange={(besideWeld) => onChange({ ...spot, besideWeld })} />
      <Switch label={said.nearMounting} isOn={spot.nearMounting === true} onChange={(nearMounting) => onChange({ ...spot, nearMounting })} />
    </>
  )
}
