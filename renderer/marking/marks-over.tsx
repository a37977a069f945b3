import { memo, useMemo } from 'react'
import type { Shape } from '../../shared-logic/drawings/drawing'
import { marksDrawing } from '../../shared-logic/marking/marks-drawing'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import { turnedSize } from '../../shared-logic/marking/turned'
import { DrawingShapes } from '../drawing/drawing-shapes'
import style from './marked-picture.module.css'
import { useReader } from './use-reader'

const nothing: readonly Shape[] = []

interface MarksOverProps {
  readonly layer: MarkLayer
  readonly quarterTurns: number
  readonly fit: 'cover' | 'contain'
  /** How many times larger than the whole it is looked at: the marks do not swell with it. */
  readonly closer?: number
  /** More to draw below the marks, px of the picture as it is turned. */
  readonly below?: readonly Shape[]
}

/** The layer of marks, laid over the picture the way the picture lies in its box. */
export const MarksOver = memo(({ layer, quarterTurns, fit, closer = 1, below = nothing }: MarksOverProps) => {
  const reader = useReader()
  const { shapes } = useMemo(() => marksDrawing(layer, quarterTurns, reader, closer), [layer, quarterTurns, reader, closer])
  const { widthPx, heightPx } = turnedSize(layer, quarterTurns)
  return (
    <svg viewBox={`0 0 ${widthPx} ${heightPx}`} preserveAspectRatio={`xMidYMid ${fit === 'cover' ? 'slice' : 'meet'}`} className={style.marks} aria-hidden="true">
      <DrawingShapes shapes={below} />
      <DrawingShapes shapes={shapes} />
    </svg>
  )
})
MarksOver.displayName = 'MarksOver'
