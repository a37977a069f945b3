import { useState } from 'react'
import { spotViews, type SpotView } from '../../shared-logic/drawings/corrosion/rig-view'
import { trailOf, type Spot } from '../../shared-logic/survey/spot'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { SelectField } from '../parts/select-field'
import { TextField } from '../parts/text-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { SpotDrawing } from './spot-drawing'
import type { NumberedSpot } from './spot-numbers'
import type { EarlierSpot } from './use-earlier-spots'
import style from './spot-sheet.module.css'
import { sameSpotAgain, suggestedComponent } from './spot-suggestions'
import { useSayAt } from './use-say-at'

interface SpotPlaceProps {
  readonly spot: Spot
  readonly position: string
  readonly number: number
  /** The survey's other spots, all over the rig. */
  readonly others: readonly NumberedSpot[]
  readonly earlier: readonly EarlierSpot[]
  readonly error: string | undefined
  readonly onChange: (spot: Spot) => void
}

const newPlace = 'new place'

/** Where the spot is: on the drawing, in words, and whether it was there last time. */
export const SpotPlace = ({ spot, position, number, others, earlier, error, onChange }: SpotPlaceProps) => {
  const words = useWords()
  const said = words.screens.survey.spots
  const units = useUnits()
  const sayAt = useSayAt()
  const [view, setView] = useState<SpotView>(spot.at?.view ?? 'plan')
  const put = (at: NonNullable<Spot['at']>): void => {
    const component = spot.component === undefined || spot.component === suggestedComponent(position, spot.at) ? suggestedComponent(position, at) : spot.component
    const suggested = say(said.suggested, { component: words.corrosion.components[component], aft: measured('length', at.aftOfBallM) }, units)
    onChange({ ...spot, at, component, place: spot.place.trim() === '' ? suggested : spot.place })
  }
  const placesHere = [...new Set(others.filter((each) => each.position === position).map((each) => each.spot.place))].filter((place) => place !== spot.place)
  return (
    <>
      <ChoiceField label={said.view} value={view} options={spotViews.map((value) => ({ value, label: said.views[value] }))} onChange={setView} />
      <SpotDrawing view={view} position={position} at={spot.at} others={others} number={number} onPut={put} />
      <div className={style.put}>
        <p>{spot.at === undefined ? said.notPut : sayAt(spot.at)}</p>
        {spot.at !== undefined && <Button kind="quiet" onPress={() => { const { at: _off, ...rest } = spot; onChange(rest) }}>{said.takeOff}</Button>}
      </div>
      <Earlier spot={spot} earlier={earlier} taken={others.map((each) => trailOf(each.spot))} onChange={onChange} />
      <TextField label={said.place} hint={said.placeHint} value={spot.place} maxLength={120} error={error} onChange={(place) => onChange({ ...spot, place })} />
      {placesHere.length > 0 && (
        <fieldset className={style.places} aria-label={said.placesHere}>
          <span className={style.soft}>{said.placesHere}</span>
          {placesHere.map((place) => <Button key={place} kind="quiet" onPress={() => onChange({ ...spot, place })}>{place}</Button>)}
        </fieldset>
      )}
    </>
  )
}

interface EarlierProps extends Pick<SpotPlaceProps, 'spot' | 'earlier' | 'onChange'> {
  readonly taken: readonly string[]
}

/** The spots of earlier surveys that nobody has taken up yet in this one. */
const Earlier = ({ spot, earlier, taken, onChange }: EarlierProps) => {
  const said = useWords().screens.survey.spots
  const units = useUnits()
  const open = earlier.filter((each) => !taken.includes(trailOf(each.spot)))
  if (open.length === 0) return null
  const choose = (trail: string): void => {
    const found = open.find((each) => trailOf(each.spot) === trail)
    const { trail: _left, ...rest } = spot
    onChange(found ? sameSpotAgain(spot, found.spot, trail) : rest)
  }
  const options = open.map(({ spot: then, date }) => ({ value: trailOf(then), label: say(said.earlierOption, { place: then.place, kind: said.kinds[then.kind].toLowerCase(), date: { date } }, units) }))
  return <SelectField label={said.earlier} hint={said.earlierHint} value={spot.trail ?? newPlace} options={[{ value: newPlace, label: said.newPlace, isQuiet: true }, ...options]} onChange={choose} />
}
