import { useRef, useState } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { FrameGestures } from '../picture-board/use-touches'
import type { Chosen } from './sketch'
import type { Tool } from './tools'
import type { Drawing } from './use-drawing'
import type { Moving } from './use-moving'

interface MarkPointerGiven {
  readonly tool: Tool
  /** The point of the picture under a place of the frame. */
  readonly at: (place: PixelPoint) => PixelPoint
  /** Whether a place of the frame lies on the picture, or so near that its border is meant. */
  readonly isNear: (place: PixelPoint) => boolean
  /** Px of the picture: what moved less was a tap. */
  readonly stillPx: number
  readonly under: (point: PixelPoint) => Chosen | undefined
  readonly drawing: Drawing
  readonly moving: Moving
  readonly onChoose: (chosen: Chosen) => void
  readonly onDown: (point: PixelPoint) => void
  readonly onTap: (point: PixelPoint) => void
}

interface MarkPointer {
  readonly gestures: FrameGestures
  /** A tap meant for the picture, at a place of the frame. */
  readonly tapAt: (place: PixelPoint) => void
  /** The point being drawn to under a finger. */
  readonly touched: PixelPoint | undefined
}

/** A mark taken hold of, and where; it moves once the pointer has. */
interface Held {
  readonly chosen: Chosen
  readonly from: PixelPoint
  readonly isMoving: boolean
}

/** What one pointer on the picture does: draws with a tool that draws, moves the mark it meets, drags the picture where it meets none. */
export const useMarkPointer = ({ tool, at, isNear, stillPx, under, drawing, moving, onChoose, onDown, onTap }: MarkPointerGiven): MarkPointer => {
  const held = useRef<Held>(undefined)
  const isTouch = useRef(false)
  const [touched, setTouched] = useState<PixelPoint>()
  const take = (point: PixelPoint): boolean => {
    const chosen = under(point)
    if (chosen === undefined) return false
    onChoose(chosen)
    moving.grab(chosen)
    held.current = { chosen, from: point, isMoving: false }
    return true
  }
  const dragHeld = (point: PixelPoint): void => {
    const { current } = held
    if (current === undefined) return
    const by: PixelPoint = [point[0] - current.from[0], point[1] - current.from[1]]
    const isMoving = current.isMoving || Math.hypot(...by) >= stillPx
    held.current = { ...current, isMoving }
    if (isMoving) moving.drag(current.chosen, 'whole', by, isTouch.current)
  }
  return {
    touched,
    tapAt: (place) => {
      if (!isNear(place)) return
      if (tool === 'move' || tool === 'text') return onTap(at(place))
      drawing.down(at(place))
      drawing.up()
    },
    gestures: {
      onTap: (place) => { if (isNear(place)) onTap(at(place)) },
      onDown: (place, byTouch) => {
        if (!isNear(place)) return false
        const point = at(place)
        isTouch.current = byTouch
        onDown(point)
        if (tool === 'move') return take(point)
        if (tool === 'text') return false
        drawing.down(point)
        return true
      },
      onMove: (place) => {
        const point = at(place)
        if (tool === 'move') return dragHeld(point)
        drawing.move(point)
        if (isTouch.current && tool !== 'freehand') setTouched(point)
      },
      onUp: () => {
        setTouched(undefined)
        if (held.current) held.current = undefined
        else drawing.up()
      },
      onCancel: () => {
        setTouched(undefined)
        if (held.current?.isMoving === true) moving.drag(held.current.chosen, 'whole', [0, 0], false)
        held.current = undefined
        drawing.drop()
      },
    },
  }
}
