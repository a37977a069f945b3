import { memo, type KeyboardEvent } from 'react'
import { Slider, SliderThumb, SliderTrack } from 'react-aria-components'
import type { Rig } from '../../shared-logic/rig/rig'
import style from './side-board.module.css'

interface MoveHandleProps {
  readonly label: string
  /** Metres aft of the ball. */
  readonly valueM: number
  readonly minM: number
  readonly maxM: number
  /** Where the range begins and ends across the drawing, and how far down the handle stands, as shares. */
  readonly left: number
  readonly right: number
  readonly top: number
  /** The rig with what is dragged at another place. */
  readonly moved: (rig: Rig, aftM: number) => Rig
  readonly kept: Rig
  /** Told of each step while it is dragged, then once where it was let go. */
  readonly onMove: (rig: Rig) => void
  readonly onEnd: (rig: Rig) => void
}

const shiftStep = 0.1
const keySteps: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }
const toMillimetre = (metres: number): number => Number(metres.toFixed(3))
const percent = (share: number): string => `${share * 100}%`

/** A handle on the drawing that moves along the trailer: by pointer, and by arrow keys 1 cm, with Shift 10 cm. The one that stands still is not drawn anew. */
export const MoveHandle = memo(({ label, valueM, minM, maxM, left, right, top, moved, kept, onMove, onEnd }: MoveHandleProps) => {
  const byTen = (event: KeyboardEvent): void => {
    const way = keySteps[event.key]
    if (!event.shiftKey || way === undefined) return
    event.preventDefault()
    event.stopPropagation()
    onEnd(moved(kept, toMillimetre(Math.min(Math.max(valueM + way * shiftStep, minM), maxM))))
  }
  return (
    <div className={style.rail} style={{ left: percent(left), width: percent(right - left), top: percent(top) }} onKeyDownCapture={byTen}>
      <Slider
        aria-label={label} value={valueM} minValue={minM} maxValue={maxM} step={0.01} formatOptions={{ style: 'unit', unit: 'meter', minimumFractionDigits: 2 }}
        onChange={(next) => onMove(moved(kept, toMillimetre(next)))} onChangeEnd={(next) => onEnd(moved(kept, toMillimetre(next)))}
      >
        <SliderTrack className={style.track ?? ''}><SliderThumb className={style.thumb ?? ''}><svg viewBox="0 0 44 44" aria-hidden="true"><path d="M8 22H36M13 16L7 22L13 28M31 16L37 22L31 28" /></svg></SliderThumb></SliderTrack>
      </Slider>
    </div>
  )
})
MoveHandle.displayName = 'MoveHandle'
