import { useState } from 'react'
import { gradeSpot } from '../../shared-logic/corrosion/grade-spot'
import { faultsOfSpots } from '../../shared-logic/corrosion/spot-faults'
import type { Spot } from '../../shared-logic/survey/spot'
import { formatQuantity } from '../../shared-logic/units/convert'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { sayShortGrade } from '../../shared-logic/words/corrosion/grade'
import { say } from '../../shared-logic/words/say'
import type { Words } from '../../shared-logic/words/en'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { useSpotScene } from './spot-scene'
import { SpotSheet } from './spot-sheet'
import style from './spots.module.css'
import { useEarlierSpots } from './use-earlier-spots'

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

/** The corroded spots of a place: listed with their grades, added, changed, removed. 'Looked, none found' is an answer of its own. */
export const SpotsEditor = ({ label, error, spots, onChange }: SpotsEditorProps) => {
  const said = useWords().screens.survey.spots
  const { walk } = useSpotScene()
  const { position } = walk.current
  const earlier = useEarlierSpots(walk.survey.rigId, walk.survey.id, position)
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
          {spots.map((spot) => <SpotLine key={spot.id} spot={spot} spots={spots} position={position} onEdit={() => setEdited(spot)} onRemove={() => onChange(spots.filter((each) => each.id !== spot.id))} />)}
        </ol>
      )}
      {error !== undefined && <p className={style.error}>{error}</p>}
      <div className={style.acts}>
        <Button onPress={() => setEdited('new')}>{said.add}</Button>
        {spots === undefined && <Button onPress={() => onChange([])}>{said.noneSeen}</Button>}
      </div>
      {edited !== undefined && <SpotSheet spot={edited === 'new' ? undefined : edited} spots={spots ?? []} earlier={earlier} onKeep={keep} onClose={() => setEdited(undefined)} />}
    </section>
  )
}

interface SpotLineProps {
  readonly spot: Spot
  readonly spots: readonly Spot[]
  readonly position: string
  readonly onEdit: () => void
  readonly onRemove: () => void
}

const SpotLine = ({ spot, spots, position, onEdit, onRemove }: SpotLineProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.survey.spots
  // Kept spots have no faults, but a record of an older program may.
  const grading = faultsOfSpots(spots, String).length > 0 ? undefined : gradeSpot(spot, spots, { position })
  return (
    <li className={style.spot}>
      <span className={style.what}>
        <span>{spot.place}</span>
        <span className={style.measure}>{[said.kinds[spot.kind], said.materials[spot.material], measureOf(words, spot, units), grading ? sayShortGrade(words, grading) : ''].filter((part) => part !== '').join(' · ')}</span>
      </span>
      {grading && <VerdictMark verdict={grading.verdict} />}
      <Button kind="quiet" onPress={onEdit} aria-label={say(said.edit, { place: spot.place }, units)}><PencilSign /></Button>
      <Button kind="quiet" onPress={onRemove} aria-label={say(said.remove, { place: spot.place }, units)}><CrossSign /></Button>
    </li>
  )
}

const PencilSign = () => <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"><path d="M2 14L3 10.5L11.5 2L14 4.5L5.5 13Z" fill="none" stroke="currentColor" strokeWidth="1.25" /></svg>
const CrossSign = () => <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"><path d="M3 3L13 13M13 3L3 13" fill="none" stroke="currentColor" strokeWidth="1.5" /></svg>
