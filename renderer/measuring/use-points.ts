import { useRef, useState } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { keyStep, onPicture, wherePx } from '../picture-board/on-picture'
import type { ViewControl } from '../picture-board/use-view'
import { withPoints, type Board, type PointList } from './board'

interface PointsGiven {
  readonly board: Board
  readonly list: PointList | undefined
  readonly size: PictureSize
  readonly viewed: ViewControl
  readonly onPut: (board: Board, gesture?: string) => void
  /** A point was taken away: the focus has to go somewhere. */
  readonly onRemoved: () => void
}

export interface Points {
  readonly points: readonly PixelPoint[]
  readonly labelOf: (index: number) => string
  readonly grab: (index: number) => void
  /** By how far it was dragged from where it was grabbed, px of the frame. */
  readonly drag: (index: number, byX: number, byY: number, isTouch: boolean) => void
  readonly letGo: () => void
  readonly step: (index: number, way: PixelPoint, isLarge: boolean) => void
  readonly remove: (index: number) => void
  /** The point under a finger. */
  readonly touched: PixelPoint | undefined
  readonly news: string
}

/** The points of one list under the hand: dragged, stepped by keys, taken away; each told to a screen reader. */
export const usePoints = ({ board, list, size, viewed, onPut, onRemoved }: PointsGiven): Points => {
  const { measuring: { handles }, pictureBoard: { handleAt, moved, removed } } = useWords().screens
  const units = useUnits()
  const [touched, setTouched] = useState<PixelPoint>()
  const [news, setNews] = useState('')
  const gesture = useRef(0)
  const grabbed = useRef<PixelPoint>([0, 0])
  const points = list === undefined ? [] : board.points[list]
  const nameOf = (index: number): string => (list === undefined ? '' : say(handles[list], { number: index + 1 }, units))
  const move = (index: number, to: PixelPoint, by: string): PixelPoint => {
    const next = onPicture(to, size)
    if (list !== undefined) onPut(withPoints(board, list, points.with(index, next)), by)
    return next
  }
  return {
    points, touched, news,
    labelOf: (index) => say(handleAt, { name: nameOf(index), ...wherePx(points[index] ?? [0, 0]) }, units),
    grab: (index) => {
      gesture.current += 1
      grabbed.current = points[index] ?? [0, 0]
    },
    drag: (index, byX, byY, isTouch) => {
      const { scale } = viewed.view
      const next = move(index, [grabbed.current[0] + byX / scale, grabbed.current[1] + byY / scale], `drag ${gesture.current}`)
      if (isTouch) setTouched(next)
    },
    letGo: () => setTouched(undefined),
    step: (index, [x, y], isLarge) => {
      const by = keyStep(size, isLarge)
      const [fromX, fromY] = points[index] ?? [0, 0]
      const next = move(index, [fromX + x * by, fromY + y * by], `keys ${list} ${index}`)
      viewed.bring(next)
      setNews(say(moved, { name: nameOf(index), ...wherePx(next) }, units))
    },
    remove: (index) => {
      if (list === undefined) return
      setNews(say(removed, { name: nameOf(index) }, units))
      onPut(withPoints(board, list, points.toSpliced(index, 1)))
      onRemoved()
    },
  }
}
