import { useRef, type PointerEvent } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { ViewControl } from './use-view'

export interface FrameGestures {
  readonly onTap: (at: PixelPoint) => void
  /** One pointer goes down: answers whether it draws from here, else it drags the picture. Then it moves and is lifted; `cancel` when a second finger makes a pinch of it. */
  readonly onDown?: (at: PixelPoint, isTouch: boolean) => boolean
  readonly onMove?: (at: PixelPoint) => void
  readonly onUp?: () => void
  readonly onCancel?: () => void
}

/** Nearer than this to where it went down, a lifted pointer was a tap; px. */
const tapPx = 6
const draws = 0
const middleButton = 1

const apart = ([a, b]: readonly PixelPoint[]): number => (a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 1)
const between = ([a, b]: readonly PixelPoint[]): PixelPoint => (a && b ? [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] : [0, 0])

const placeIn = (event: PointerEvent<HTMLElement>): PixelPoint => {
  const box = event.currentTarget.getBoundingClientRect()
  return [event.clientX - box.left, event.clientY - box.top]
}

/**
 * Pointers on the picture: two fingers pinch and move it. One taps, and drags the picture along, or draws where it is told to
 * (then the middle button drags the picture).
 */
export const useTouches = ({ zoom, pan }: ViewControl, gestures: FrameGestures) => {
  const down = useRef(new Map<number, PixelPoint>())
  const began = useRef<{ readonly at: PixelPoint; readonly draws: boolean }>(undefined)
  const hasMoved = useRef(false)
  const release = (event: PointerEvent<HTMLElement>, isLifted: boolean): void => {
    if (!down.current.delete(event.pointerId) || down.current.size > 0) return
    const { current } = began
    began.current = undefined
    if (current?.draws === true) (isLifted ? gestures.onUp : gestures.onCancel)?.()
    else if (current && !hasMoved.current && isLifted && event.button === draws) gestures.onTap(placeIn(event))
  }
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== draws && event.button !== middleButton) return
      event.currentTarget.focus({ preventScroll: true })
      const at = placeIn(event)
      event.currentTarget.setPointerCapture?.(event.pointerId)
      down.current.set(event.pointerId, at)
      if (down.current.size > 1) {
        if (began.current?.draws === true) gestures.onCancel?.()
        began.current = undefined
        return
      }
      hasMoved.current = false
      began.current = { at, draws: event.button === draws && gestures.onDown?.(at, event.pointerType === 'touch') === true }
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void => {
      const before = down.current.get(event.pointerId)
      if (before === undefined) return
      const at = placeIn(event)
      const pair = [...down.current.values()].slice(0, 2)
      down.current.set(event.pointerId, at)
      if (pair.length === 2) {
        const next = [...down.current.values()].slice(0, 2)
        const [from, to] = [between(pair), between(next)]
        zoom(apart(next) / Math.max(apart(pair), 1), to)
        pan(to[0] - from[0], to[1] - from[1])
        return
      }
      if (began.current === undefined) return
      if (began.current.draws) return gestures.onMove?.(at)
      const [x, y] = began.current.at
      if (!hasMoved.current && Math.hypot(at[0] - x, at[1] - y) < tapPx) return
      const [fromX, fromY] = hasMoved.current ? before : began.current.at
      hasMoved.current = true
      pan(at[0] - fromX, at[1] - fromY)
    },
    onPointerUp: (event: PointerEvent<HTMLElement>): void => release(event, true),
    onPointerCancel: (event: PointerEvent<HTMLElement>): void => release(event, false),
  }
}
