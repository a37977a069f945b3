import { useMemo, type CSSProperties } from 'react'
import type { Drawing } from '../../shared-logic/drawings/drawing'
import { gatherPlaces, type Gathered } from '../../shared-logic/drawings/gather-places'
import { planView } from '../../shared-logic/drawings/plan-view'
import { findingsOf } from '../../shared-logic/survey/findings'
import { checkAtPosition, type Stop } from '../../shared-logic/survey/walk'
import { worstVerdict } from '../../shared-logic/survey/verdict'
import { sayPosition } from '../../shared-logic/words/position'
import { say } from '../../shared-logic/words/say'
import { DrawingView, type DrawingMark, type DrawingStop } from '../drawing/drawing-view'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictShape } from '../parts/verdict-mark'
import style from './rig-map.module.css'
import type { Walk } from './use-walk'

interface RigMapProps {
  readonly walk: Walk
  readonly onGone?: () => void
}

const stationPrefix = 'station '
/** Drawing units between the middles of two things to tap: 44 px where the drawing is shown smallest. */
const fingerApart = 84

/** The stylesheet keeps the whole drawing in sight by it. */
const aspectOf = ({ viewBox: [, , width, height] }: Drawing): CSSProperties => ({ ['--aspect' as string]: width / height })

/** The way round: the rig from above, stations as stops on the walk, findings marked where they are, the parts of this station to tap. */
export const RigMap = ({ walk, onGone }: RigMapProps) => {
  const words = useWords()
  const { walk: said } = words.screens.survey
  const { rig, ruleBook } = walk.survey
  const plan = useMemo(() => planView(rig, ruleBook), [rig, ruleBook])
  const parts = partsOf(walk, plan)
  const drawing = { ...plan, places: [...plan.places, ...parts] }
  const marks = marksOf(walk)
  const stops = useStops(walk, parts)
  const go = (place: string): void => {
    const station = walk.stops.find((stop) => place === `${stationPrefix}${stop.station}`)
    const here = parts.find((part) => part.id === place)?.of.flatMap((position) => checkAtPosition(walk.assessed, position, walk.stop.station) ?? []) ?? []
    const check = station?.entry ?? here.find((each) => each.open) ?? here[0]
    if (check) walk.goTo(check.key)
    onGone?.()
  }
  return (
    <figure className={style.map} style={aspectOf(drawing)}>
      <DrawingView drawing={drawing} title={said.drawing} marks={marks} stops={stops} current={`${stationPrefix}${walk.stop.station}`} onPlace={go} />
      <figcaption className={style.caption}>{drawing.toScale ? said.drawingHelp : `${said.notToScale} ${said.drawingHelp}`}</figcaption>
    </figure>
  )
}

/** The parts asked about at this station, those too close for a finger taken together. */
const partsOf = (walk: Walk, { places, viewBox: [x] }: Drawing): Gathered[] => {
  const asked = new Set(walk.stop.checks.map((each) => each.position))
  const stopX = Math.max(...places.filter(({ id }) => id.startsWith(stationPrefix)).map((place) => place.x), x)
  return gatherPlaces(places.filter(({ id }) => id !== 'rig' && asked.has(id)), fingerApart, stopX - fingerApart)
}

/** One mark a part of the rig: the worst of what was found there. What is asked of the whole rig is marked at its station's stop. */
const marksOf = (walk: Walk): DrawingMark[] => {
  const findings = findingsOf(walk.assessed).filter((each) => each.position !== 'rig')
  return [...new Set(findings.map((each) => each.position))].map((place) => ({ place, verdict: worstVerdict(findings.filter((each) => each.position === place).map((each) => each.verdict)) }))
}

interface StopFaceProps {
  readonly stop: Stop
}

/** The number of a stop, with the worst of what was found at it. */
const StopFace = ({ stop }: StopFaceProps) => {
  const { verdict } = stop.summary
  return (
    <>
      {stop.number}
      {(verdict === 'fail' || verdict === 'advisory') && <span className={style.found}><VerdictShape verdict={verdict} size={14} /></span>}
    </>
  )
}

/** The stations of the walk, and the parts asked about at this one. */
const useStops = (walk: Walk, parts: readonly Gathered[]): DrawingStop[] => {
  const words = useWords()
  const units = useUnits()
  const { walk: said } = words.screens.survey
  const stations = walk.stops.map((stop): DrawingStop => {
    const { open, verdict } = stop.summary
    const isFinding = verdict === 'fail' || verdict === 'advisory'
    const state = `${open === 0 ? said.allDone : say(said.openCount, { count: open }, units)}${isFinding ? `, ${words.verdicts[verdict]}` : ''}`
    return { place: `${stationPrefix}${stop.station}`, look: 'stop', face: <StopFace stop={stop} />, done: stop.summary.open === 0, label: `${stop.number}. ${words.stations[stop.station]}, ${state}` }
  })
  const targets = parts.map(({ id, of }): DrawingStop => {
    const open = walk.stop.checks.filter((each) => each.open && of.includes(each.position)).length
    const names = of.map((position) => sayPosition(position, walk.survey.rig.trailer.axleCount)).join(', ')
    const isHere = of.includes(walk.current.position)
    return {
      place: id, look: 'target', done: open === 0,
      face: isHere ? <span className={style.here} /> : null,
      label: `${words.stations[walk.stop.station]}, ${names}, ${open === 0 ? said.allDone : say(said.openCount, { count: open }, units)}${isHere ? `, ${said.here}` : ''}`,
    }
  })
  return [...stations, ...targets]
}
