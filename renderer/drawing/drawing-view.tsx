import type { ReactNode } from 'react'
import { Button } from 'react-aria-components'
import type { Drawing, Place } from '../../shared-logic/drawings/drawing'
import type { Verdict } from '../../shared-logic/survey/verdict'
import { DrawingShapes } from './drawing-shapes'
import styles from './drawing.module.css'

/** A finding or a result marked at a place of the drawing. */
export interface DrawingMark {
  readonly place: string
  readonly verdict: Verdict
  readonly number?: number
}

/** A place that can be tapped. `face` is what stands on it; `label` is what a screen reader says. */
export interface DrawingStop {
  readonly place: string
  readonly label: string
  readonly face: ReactNode
  /** 'stop' a round station on the walk; 'target' a small ring on the rig itself. */
  readonly look: 'stop' | 'target'
  readonly done?: boolean
}

interface DrawingViewProps {
  readonly drawing: Drawing
  /** What the drawing shows, for those who cannot see it. */
  readonly title: string
  readonly marks?: readonly DrawingMark[]
  readonly stops?: readonly DrawingStop[]
  readonly current?: string
  readonly onPlace?: (place: string) => void
}

const percent = ({ viewBox: [x, y, width, height] }: Drawing, place: Place): { left: string; top: string } => ({
  left: `${((place.x - x) / width) * 100}%`,
  top: `${((place.y - y) / height) * 100}%`,
})

/** A drawing with places to tap and findings marked on it. The list beside it serves keyboard and screen reader in the same order. */
export function DrawingView({ drawing, title, marks = [], stops = [], current, onPlace }: DrawingViewProps) {
  const places = new Map(drawing.places.map((place) => [place.id, place]))
  return (
    <div className={styles['sheet']} style={{ aspectRatio: `${drawing.viewBox[2]} / ${drawing.viewBox[3]}` }}>
      <svg viewBox={drawing.viewBox.join(' ')} role="img" aria-label={title} className={styles['drawing']}>
        <DrawingShapes shapes={drawing.shapes} />
        {marks.map((mark) => {
          const place = places.get(mark.place)
          return place && <VerdictAt key={`${mark.place} ${mark.number ?? mark.verdict}`} place={place} mark={mark} />
        })}
      </svg>
      {stops.map((stop) => {
        const place = places.get(stop.place)
        if (!place) return null
        const isCurrent = stop.place === current
        return (
          <Button
            key={stop.place}
            className={`${styles[stop.look]} ${isCurrent ? styles['current'] : ''} ${stop.done ? styles['done'] : ''}`}
            style={percent(drawing, place)}
            aria-label={stop.label}
            aria-current={isCurrent ? 'step' : undefined}
            onPress={() => onPlace?.(stop.place)}
          >
            {stop.face}
          </Button>
        )
      })}
    </div>
  )
}

const shapeAt: Record<Verdict, (x: number, y: number) => ReactNode> = {
  pass: (x, y) => <circle cx={x} cy={y} r={9} className={styles['mark-pass']} />,
  advisory: (x, y) => (
    <>
      <path d={`M${x} ${y - 15} L${x + 15} ${y} L${x} ${y + 15} L${x - 15} ${y} Z`} className={styles['mark-advisory']} />
      <path d={`M${x} ${y - 15} L${x} ${y + 15} L${x - 15} ${y} Z`} className={styles['mark-advisory-half']} />
    </>
  ),
  fail: (x, y) => (
    <>
      <path d={`M${x - 12} ${y - 12} h24 v24 h-24 Z`} className={styles['mark-fail']} />
      <path d={`M${x - 7} ${y - 7} l14 14 M${x + 7} ${y - 7} l-14 14`} className={styles['mark-fail-cross']} />
    </>
  ),
  'not seen': (x, y) => <circle cx={x} cy={y} r={9} className={styles['mark-not-seen']} />,
  'not applicable': (x, y) => <path d={`M${x - 8} ${y} h16`} className={styles['mark-not-applicable']} />,
}

function VerdictAt({ place, mark }: { readonly place: Place; readonly mark: DrawingMark }) {
  return (
    <g>
      {shapeAt[mark.verdict](place.x, place.y)}
      {mark.number !== undefined && (
        <text x={place.x + 18} y={place.y + 8} fontSize={24} className={`${styles['text']} ${styles['fill-ink']} ${styles['bold']}`}>
          {mark.number}
        </text>
      )}
    </g>
  )
}
