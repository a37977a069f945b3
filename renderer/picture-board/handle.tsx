import { useRef, useState, type PointerEvent } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { movingKeys } from './moving-keys'
import style from './stage.module.css'

/** Its target is wide for a finger: a tap this far from its middle, without a move, is none of its own. */
const middlePx = 11
const stillPx = 3

interface HandleProps {
  readonly label: string
  /** Told beside it where points are counted. */
  readonly number?: number
  /** Where it stands in the frame, px. */
  readonly at: PixelPoint
  /** Dragged so far from where it was taken hold of, px of the frame; `isTouch` under a finger. */
  readonly onDrag: (byX: number, byY: number, isTouch: boolean) => void
  readonly onGrab: () => void
  readonly onLetGo: () => void
  /** Tapped beside its middle, at a place of the window: meant for the picture under it. */
  readonly onTap: (x: number, y: number) => void
  readonly onStep: (way: PixelPoint, isLarge: boolean) => void
  readonly onRemove: () => void
}

/** One point on the picture: dragged by mouse or finger, moved by arrow keys, taken away by Delete. */
export const Handle = ({ label, number, at, onDrag, onGrab, onLetGo, onTap, onStep, onRemove }: HandleProps) => {
  const from = useRef<PixelPoint>(undefined)
  const hasMoved = useRef(false)
  const [isHeld, setHeld] = useState(false)
  const grab = (event: PointerEvent<HTMLButtonElement>): void => {
    if (event.button !== 0) return
    event.stopPropagation()
    event.currentTarget.focus({ preventScroll: true })
    event.currentTarget.setPointerCapture?.(event.pointerId)
    from.current = [event.clientX, event.clientY]
    hasMoved.current = false
    setHeld(true)
    onGrab()
  }
  const drag = (event: PointerEvent<HTMLButtonElement>): void => {
    if (from.current === undefined) return
    event.stopPropagation()
    if (!hasMoved.current && Math.hypot(event.clientX - from.current[0], event.clientY - from.current[1]) < stillPx) return
    hasMoved.current = true
    onDrag(event.clientX - from.current[0], event.clientY - from.current[1], event.pointerType === 'touch')
  }
  const letGo = (event: PointerEvent<HTMLButtonElement>): void => {
    if (from.current === undefined) return
    event.stopPropagation()
    const [fromX, fromY] = from.current
    from.current = undefined
    setHeld(false)
    onLetGo()
    const box = event.currentTarget.getBoundingClientRect()
    const isStill = !hasMoved.current
    if (event.type === 'pointerup' && isStill && Math.hypot(fromX - box.left - box.width / 2, fromY - box.top - box.height / 2) > middlePx) onTap(fromX, fromY)
  }
  return (
    <button
      type="button" className={style.handle} style={{ left: at[0], top: at[1] }} aria-label={label} data-held={isHeld}
      onPointerDown={grab} onPointerMove={drag} onPointerUp={letGo} onPointerCancel={letGo} onKeyDown={movingKeys({ onStep, onRemove })}
    >
      {number !== undefined && <span aria-hidden="true">{number}</span>}
    </button>
  )
}
