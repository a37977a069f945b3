import { useState } from 'react'
import type { Spot } from '../../shared-logic/survey/spot'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import type { Words } from '../../shared-logic/words/en'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { SpotDialog } from './spot-dialog'
import style from './spots.module.css'

interface SpotsEditorProps {
  readonly label: string
  readonly error: string | undefined
  /** Undefined while nobody has looked; empty when looked at and none found. */
  readonly spots: readonly Spot[] | undefined
  readonly onChange: (spots: readonly Spot[] | undefined) => void
}

const measureOf = (words: Words, spot: Spot, units: UnitSystem): string =>
  [
    spot.areaM2 === undefined ? undefined : formatQuantity('area', spot.areaM2, units),
    spot.pitDepthM === undefined ? undefined : say(words.screens.survey.spots.deep, { depth: formatQuantity('smallLength', spot.pitDepthM, units) }, units),
  ]
    .filter((part) => part !== undefined)
    .join(', ')

/** The corroded spots of a place: listed, added, changed, removed. 'Looked, none found' is an answer of its own. */
export const SpotsEditor = ({ label, error, spots, onChange }: SpotsEditorProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.survey.spots
  const [edited, setEdited] = useState<Spot | 'new'>()
  const keep = (spot: Spot): void => {
    const list = spots ?? []
    onChange(list.some((each) => each.id === spot.id) ? list.map((each) => (each.id === spot.id ? spot : each)) : [...list, spot])
    setEdited(undefined)
  }
  return (
    <section aria-label={label} className={style.editor}>
      {spots === undefined && <p className={style.none}>{said.none}</p>}
      {spots?.length === 0 && <p className={style.none}>{said.noneSeenNow}</p>}
      {spots !== undefined && spots.length > 0 && (
        <ol className={style.spots}>
          {spots.map((spot) => (
            <li key={spot.id} className={style.spot}>
              <span className={style.what}>
                <span>{spot.place}</span>
                <span className={style.measure}>{[said.kinds[spot.kind], said.materials[spot.material], measureOf(words, spot, units)].filter((part) => part !== '').join(' · ')}</span>
              </span>
              <Button kind="quiet" onPress={() => setEdited(spot)} aria-label={say(said.edit, { place: spot.place }, units)}><PencilSign /></Button>
              <Button kind="quiet" onPress={() => onChange(spots.filter((each) => each.id !== spot.id))} aria-label={say(said.remove, { place: spot.place }, units)}><CrossSign /></Button>
            </li>
          ))}
        </ol>
      )}
      {error !== undefined && <p className={style.error}>{error}</p>}
      <div className={style.acts}>
        <Button onPress={() => setEdited('new')}>{said.add}</Button>
        {spots === undefined && <Button onPress={() => onChange([])}>{said.noneSeen}</Button>}
      </div>
      {edited !== undefined && <SpotDialog spot={edited === 'new' ? undefined : edited} onKeep={keep} onClose={() => setEdited(undefined)} />}
    </section>
  )
}

const PencilSign = () => <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"><path d="M2 14L3 10.5L11.5 2L14 4.5L5.5 13Z" fill="none" stroke="currentColor" strokeWidth="1.25" /></svg>
const CrossSign = () => <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"><path d="M3 3L13 13M13 3L3 13" fill="none" stroke="currentColor" strokeWidth="1.5" /></svg>
