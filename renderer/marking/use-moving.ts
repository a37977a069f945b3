import { useRef, useState } from 'react'
import { movedBy } from '../../shared-logic/marking/mark-geometry'
import type { Mark } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { keyStep, onPicture } from '../picture-board/on-picture'
import type { ViewControl } from '../picture-board/use-view'
import { chosenMark, gripOf, withMark, type Chosen, type Sketch } from './sketch'

export type End = 'from' | 'to'
/** What of a mark is moved: the whole of it, or one of its two ends. */
export type Part = End | 'whole'

interface MovingGiven {
  readonly sketch: Sketch
  readonly size: PictureSize
  readonly viewed: ViewControl
  readonly onPut: (sketch: Sketch, gesture: string) => void
  readonly onStepped: (chosen: Chosen, at: PixelPoint) => void
}

export interface Moving {
  /** Takes hold of it where it is now. */
  readonly grab: (chosen: Chosen) => void
  /** By so much from where it was taken hold of, px of the picture. */
  readonly drag: (chosen: Chosen, part: Part, by: PixelPoint, isTouch: boolean) => void
  readonly letGo: () => void
  readonly step: (chosen: Chosen, part: Part, way: PixelPoint, isLarge: boolean) => void
  /** The end under a finger. */
  readonly touched: PixelPoint | undefined
}

export const endOf = (mark: Mark, end: End): PixelPoint | undefined => ('from' in mark ? mark[end] : undefined)

/** An end put elsewhere on the picture, but not upon the other one. */
const withEnd = (mark: Mark, end: End, to: PixelPoint): Mark => {
  if (!('from' in mark)) return mark
  const other = mark[end === 'from' ? 'to' : 'from']
  return to[0] === other[0] && to[1] === other[1] ? mark : { ...mark, [end]: to }
}

const moved = (mark: Mark, part: Part, [byX, byY]: PixelPoint, size: PictureSize): Mark => {
  if (part === 'whole') return movedBy(mark, [byX, byY], size)
  const [x, y] = endOf(mark, part) ?? [0, 0]
  return withEnd(mark, part, onPicture([x + byX, y + byY], size))
}

/** Marks under the hand: moved whole or by an end, dragged or stepped by keys. Every drag is one step back. */
export const useMoving = ({ sketch, size, viewed, onPut, onStepped }: MovingGiven): Moving => {
  const grabbed = useRef<Mark>(undefined)
  const gesture = useRef(0)
  const [touched, setTouched] = useState<PixelPoint>()
  return {
    touched,
    grab: (chosen) => {
      gesture.current += 1
      grabbed.current = chosenMark(sketch, chosen)
    },
    drag: (chosen, part, by, isTouch) => {
      if (grabbed.current === undefined) return
      const mark = moved(grabbed.current, part, by, size)
      onPut(withMark(sketch, chosen, mark), `drag ${gesture.current}`)
      if (isTouch && part !== 'whole') setTouched(endOf(mark, part))
    },
    letGo: () => setTouched(undefined),
    step: (chosen, part, [x, y], isLarge) => {
      const before = chosenMark(sketch, chosen)
      if (before === undefined) return
      const by = keyStep(size, isLarge)
      const mark = moved(before, part, [x * by, y * by], size)
      const next = withMark(sketch, chosen, mark)
      const at = (part === 'whole' ? undefined : endOf(mark, part)) ?? gripOf(next, chosen)
      onPut(next, `keys ${chosen} ${part}`)
      viewed.bring(at)
      onStepped(chosen, at)
    },
  }
}
