import { memo, useMemo } from 'react'
import { marksDrawing } from '../../shared-logic/marking/marks-drawing'
import type { MarkLayer } from '../../shared-logic/marking/marks'
import { DrawingShapes } from '../drawing/drawing-shapes'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './marked-picture.module.css'

interface MarksOverProps {
  readonly layer: MarkLayer
  readonly quarterTurns: number
  readonly fit: 'cover' | 'contain'
}

/** The layer of marks, laid over the picture the way the picture lies in its box. */
export const MarksOver = memo(({ layer, quarterTurns, fit }: MarksOverProps) => {
  const words = useWords()
  const units = useUnits()
  const { viewBox, shapes } = useMemo(() => marksDrawing(layer, quarterTurns, { words, units }), [layer, quarterTurns, words, units])
  return (
    <svg viewBox={viewBox.join(' ')} preserveAspectRatio={`xMidYMid ${fit === 'cover' ? 'slice' : 'meet'}`} className={style.marks} aria-hidden="true">
      <DrawingShapes shapes={shapes} />
    </svg>
  )
})
MarksOver.displayName = 'MarksOver'
