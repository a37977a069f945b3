import { useRef, useState } from 'react'
import type { PixelPoint, Stroke } from '../../shared-logic/measuring/measurement'
import { mostStrokePoints } from './board'

/** Points of a stroke stand at least this share of the brush's radius apart. */
const leastStep = 0.2

export interface BrushTip {
  readonly does: Stroke['does']
  readonly radiusPx: number
}

interface Drawn {
  readonly stroke: Stroke | undefined
  readonly begin: (at: PixelPoint) => void
  readonly go: (at: PixelPoint) => void
  readonly end: () => void
  readonly cancel: () => void
}

/** The stroke under the hand, handed over when it is lifted; a very long one goes over in parts. */
export const useStroke = (tip: BrushTip | undefined, onStroke: (stroke: Stroke) => void): Drawn => {
  const [stroke, setStroke] = useState<Stroke>()
  const now = useRef<Stroke>(undefined)
  const show = (next: Stroke | undefined): void => {
    now.current = next
    setStroke(next)
  }
  return {
    stroke,
    begin: (at) => show(tip && { ...tip, points: [at] }),
    go: (at) => {
      const { current } = now
      const last = current?.points.at(-1)
      if (current === undefined || last === undefined || Math.hypot(at[0] - last[0], at[1] - last[1]) < current.radiusPx * leastStep) return
      if (current.points.length < mostStrokePoints) show({ ...current, points: [...current.points, at] })
      else {
        onStroke(current)
        show({ ...current, points: [last, at] })
      }
    },
    end: () => {
      if (now.current) onStroke(now.current)
      show(undefined)
    },
    cancel: () => show(undefined),
  }
}
