import { useMemo } from 'react'
import { isPresent } from '../../shared-logic/corrosion/corroded-share'
import { corrosionPlan, type SpotMark } from '../../shared-logic/drawings/corrosion/corrosion-plan'
import { spotViews, type SpotView } from '../../shared-logic/drawings/corrosion/rig-view'
import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { DrawingView } from '../drawing/drawing-view'
import { ChoiceField } from '../parts/choice-field'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { useIsNarrow } from '../sums/use-is-narrow'
import style from './corrosion-page.module.css'
import { areaOfTrail, type NumberedTrail } from './numbered-trails'

const markOf = ({ number, trail }: NumberedTrail): SpotMark => {
  const { last: { spot, grading }, position, standing } = trail
  return { number, position, verdict: standing === 'not looked at again' ? 'not seen' : grading.verdict, ...(spot.at && { at: spot.at }), areaM2: areaOfTrail(trail) }
}

interface SpotsDrawingProps {
  readonly rig: Rig
  readonly spots: readonly NumberedTrail[]
  readonly view: SpotView
  readonly onView: (view: SpotView) => void
  readonly open: number | undefined
  readonly onOpen: (number: number) => void
}

/** The rig with its spots, from above or from the side. Each number opens its spot; the list beside says the same. */
export const SpotsDrawing = ({ rig, spots, view, onView, open, onOpen }: SpotsDrawingProps) => {
  const words = useWords()
  const { drawing: said, view: views } = words.screens.corrosion
  const { ruleBook, units } = useSettings()
  const isSmall = useIsNarrow()
  // A repaired spot is told in the list: on the drawing stands what is there.
  const shown = useMemo(() => spots.filter(({ trail }) => isPresent(trail.last.spot)), [spots])
  const drawing = useMemo(() => corrosionPlan(rig, ruleBook, shown.map(markOf), view, { words, units, isSmall }), [rig, ruleBook, shown, view, words, units, isSmall])
  const labelOf = ({ number, trail }: NumberedTrail): string => say(said.spot, { number, place: trail.last.spot.place }, units)
  return (
    <figure className={style.drawing}>
      <ChoiceField label={views.label} value={view} onChange={onView} options={spotViews.map((value) => ({ value, label: views[value] }))} />
      <DrawingView
        drawing={drawing} title={say(said[view], { spots: shown.map(labelOf).join('; ') }, units)} onPlace={(place) => onOpen(Number(place.slice('spot '.length)))}
        stops={shown.map((spot) => ({ place: `spot ${spot.number}`, label: labelOf(spot), face: null, look: 'target' }))} {...(open !== undefined && { current: `spot ${open}` })}
      />
      <figcaption>{said.size}{shown.some(({ trail }) => trail.last.spot.at === undefined) && ` ${said.aboutPlace}`}</figcaption>
    </figure>
  )
}
