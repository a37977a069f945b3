import { useMemo, useState, type KeyboardEvent, type MouseEvent } from 'react'
import { rigView, type RigView, type SpotView } from '../../shared-logic/drawings/corrosion/rig-view'
import type { Point } from '../../shared-logic/drawings/strokes'
import type { Spot } from '../../shared-logic/survey/spot'
import type { UnitSystem } from '../../shared-logic/units/quantity'
import { footM, inchM } from '../../shared-logic/units/unit-table'
import { say } from '../../shared-logic/words/say'
import { DrawingShapes } from '../drawing/drawing-shapes'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { NumberedSpot } from './spot-numbers'
import { useSpotScene } from './spot-scene'
import style from './spot-sheet.module.css'
import { useSayAt } from './use-say-at'

type At = NonNullable<Spot['at']>

interface SpotDrawingProps {
  readonly view: SpotView
  readonly position: string
  readonly at: Spot['at']
  readonly others: readonly NumberedSpot[]
  readonly number: number
  readonly onPut: (at: At) => void
}

const ways: Readonly<Record<string, readonly [along: number, across: number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }
/** Steps of the arrow keys, m, round in the reader's units. */
const stepsM: Readonly<Record<UnitSystem, { readonly small: number; readonly large: number }>> = { metric: { small: 0.05, large: 0.5 }, us: { small: 2 * inchM, large: footM } }
/** Bounds of the record, m. */
const bounds = { aft: [-2, 40], across: [-5, 5], height: [0, 6] } as const

const within = (value: number, [least, most]: readonly [number, number]): number => Math.round(Math.min(most, Math.max(least, value)) * 1000) / 1000

const placeAt = (view: SpotView, aftM: number, acrossM: number): At =>
  view === 'plan'
    ? { view, aftOfBallM: within(aftM, bounds.aft), toRightM: within(acrossM, bounds.across) }
    : { view, aftOfBallM: within(aftM, bounds.aft), heightM: within(acrossM, bounds.height) }

const acrossOf = (at: At): number => (at.view === 'plan' ? at.toRightM : at.heightM)

/** The plan lies on its side, coupler to the left as in the side view: it takes no more room than that. */
interface Sheet {
  readonly viewBox: readonly [number, number, number, number]
  readonly turn: string | undefined
  readonly toSheet: (point: Point) => Point
  readonly fromSheet: (point: Point) => Point
}

const sheetOf = ({ viewBox: [x, y, width, height] }: RigView, view: SpotView): Sheet =>
  view === 'plan'
    ? { viewBox: [y, -x - width, height, width], turn: 'rotate(-90)', toSheet: (at) => ({ x: at.y, y: -at.x }), fromSheet: (at) => ({ x: -at.y, y: at.x }) }
    : { viewBox: [x, y, width, height], turn: undefined, toSheet: (at) => at, fromSheet: (at) => at }

/** Metres of a point of the drawing: the drawing is even, so two of its places tell all. */
const metresAt = ({ spotAt }: RigView, view: SpotView, point: Point): At => {
  const origin = spotAt({ at: placeAt(view, 0, 0), position: '' })
  const one = spotAt({ at: placeAt(view, 1, 1), position: '' })
  const [alongAxis, acrossAxis] = view === 'plan' ? (['y', 'x'] as const) : (['x', 'y'] as const)
  const share = (axis: 'x' | 'y'): number => (point[axis] - origin[axis]) / (one[axis] - origin[axis])
  return placeAt(view, share(alongAxis), share(acrossAxis))
}

/** The rig as it is drawn everywhere, with the survey's spots numbered: this one is put by a tap, or by arrow keys and Enter. */
export const SpotDrawing = ({ view, position, at, others, number, onPut }: SpotDrawingProps) => {
  const said = useWords().screens.survey.spots
  const units = useUnits()
  const sayAt = useSayAt()
  const [cursor, setCursor] = useState<At>()
  const [news, setNews] = useState('')
  const { rig, ruleBook } = useSpotScene().walk.survey
  const drawn = useMemo(() => rigView(rig, ruleBook, view), [rig, ruleBook, view])
  const { viewBox, turn, toSheet, fromSheet } = sheetOf(drawn, view)
  const own = at?.view === view ? at : undefined
  const pointOf = (where: { readonly at?: Spot['at']; readonly position: string }): Point => toSheet(drawn.spotAt(where))
  const put = (next: At): void => {
    setNews(say(said.put, { at: sayAt(next) }, units))
    onPut(next)
  }
  const tap = (event: MouseEvent<HTMLDivElement>): void => {
    const box = event.currentTarget.getBoundingClientRect()
    const [left, top, width, height] = viewBox
    setCursor(undefined)
    put(metresAt(drawn, view, fromSheet({ x: left + ((event.clientX - box.left) / box.width) * width, y: top + ((event.clientY - box.top) / box.height) * height })))
  }
  const here = cursor?.view === view ? cursor : (own ?? metresAt(drawn, view, drawn.spotAt({ ...(at && { at }), position })))
  const strike = (event: KeyboardEvent<HTMLDivElement>): void => {
    const way = ways[event.key]
    if (way !== undefined) {
      const step = event.shiftKey ? stepsM[units].large : stepsM[units].small
      const next = placeAt(view, here.aftOfBallM + way[0] * step, acrossOf(here) + way[1] * step)
      setCursor(next)
      setNews(say(said.cursor, { at: sayAt(next) }, units))
    } else if (event.key === 'Enter' || event.key === ' ') {
      setCursor(undefined)
      put(here)
    } else return
    event.preventDefault()
  }
  return (
    <>
      {/* oxlint-disable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions -- a drawing surface of its own: what it takes is told below it */}
      <div role="application" tabIndex={0} className={style.drawing} aria-label={said.drawing[view]} aria-describedby="spot-drawing-help" onClick={tap} onKeyDown={strike}>
        {/* oxlint-enable jsx-a11y/no-noninteractive-tabindex, jsx-a11y/no-noninteractive-element-interactions */}
        <svg viewBox={viewBox.join(' ')} aria-hidden="true">
          <g transform={turn}><DrawingShapes shapes={drawn.shapes.filter((shape) => shape.kind !== 'text')} /></g>
          {others.map((each) => <Mark key={each.spot.id} point={pointOf({ ...(each.spot.at && { at: each.spot.at }), position: each.position })} number={each.number} />)}
          {at && <Mark point={pointOf({ at, position })} number={number} isOwn />}
          {cursor?.view === view && <Cursor point={pointOf({ at: cursor, position })} />}
        </svg>
      </div>
      <p id="spot-drawing-help" className={style.soft}>{said.drawingHelp[units]}</p>
      <output className="visually-hidden">{news}</output>
    </>
  )
}

const Mark = ({ point: { x, y }, number, isOwn = false }: { readonly point: Point; readonly number: number; readonly isOwn?: boolean }) => (
  <g className={isOwn ? style.own : style.other}>
    <circle cx={x} cy={y} />
    <text x={x} y={y} textAnchor="middle" dominantBaseline="central">{number}</text>
  </g>
)

const Cursor = ({ point: { x, y } }: { readonly point: Point }) => <path d={`M${x - 26} ${y}h20m12 0h20M${x} ${y - 26}v20m0 12v20`} className={style.cursor} />
