import { useRef, useState } from 'react'
import type { Mark } from '../../shared-logic/marking/marks'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import { mostPoints } from './sketch'
import { drawnMark, isSpan, type Tool } from './tools'

interface DrawingGiven {
  readonly tool: Tool
  /** Px of the picture: points of a line drawn by hand stand so far apart, and a pointer lifted nearer than that to where it went down was a tap. */
  readonly stillPx: number
  readonly onDrawn: (mark: Mark) => void
  /** The first of two points was set. */
  readonly onStart: (point: PixelPoint) => void
  /** Set, and nothing to draw from there. */
  readonly onPress: (point: PixelPoint) => void
}

export interface Drawing {
  /** The first point, while the second is waited for. */
  readonly start: PixelPoint | undefined
  /** What would be drawn as it stands; `to` the place the second point would have. */
  readonly preview: (to: PixelPoint | undefined) => Mark | undefined
  /** A pointer goes down, moves, is lifted. */
  readonly down: (point: PixelPoint) => void
  readonly move: (point: PixelPoint) => void
  readonly up: () => void
  /** Enter: the first point, then the second; begins and ends a line by hand, which `follow` draws on. */
  readonly enter: (point: PixelPoint) => void
  readonly follow: (point: PixelPoint) => void
  /** A second finger came: no stroke, and a first point that waits goes on waiting. */
  readonly drop: () => void
  /** Answers whether there was something to give up. */
  readonly cancel: () => boolean
}

/** What is under the hand: a first point that waits, or the points of a stroke. */
interface Draft {
  readonly tool: Tool
  readonly start: PixelPoint | undefined
  readonly path: readonly PixelPoint[]
  readonly isByKeys: boolean
}

const apart = ([ax, ay]: PixelPoint, [bx, by]: PixelPoint): number => Math.hypot(ax - bx, ay - by)

/** Drawing with one tool: dragged in one go, or between two points set one after the other by tap or key. */
export const useDrawing = ({ tool, stillPx, onDrawn, onStart, onPress }: DrawingGiven): Drawing => {
  const empty: Draft = { tool, start: undefined, path: [], isByKeys: false }
  const [shown, setShown] = useState(empty)
  // Several pointer events may come between two drawings.
  const latest = useRef(empty)
  const put = (draft: Draft): void => {
    latest.current = draft
    setShown(draft)
  }
  const now = (): Draft => (latest.current.tool === tool ? latest.current : empty)
  const finish = (points: readonly PixelPoint[]): void => {
    put(empty)
    const mark = drawnMark(tool, points)
    if (mark !== undefined) onDrawn(mark)
  }
  const press = (point: PixelPoint): void => {
    const { start } = now()
    if (!isSpan(tool)) onPress(point)
    else if (start !== undefined) finish([start, point])
    else {
      put({ ...empty, start: point })
      onStart(point)
    }
  }
  const draft = shown.tool === tool ? shown : empty
  return {
    start: draft.start,
    preview: (to) => {
      if (draft.path.length > 1) return drawnMark(tool, draft.path)
      return draft.start && to && drawnMark(tool, [draft.start, to])
    },
    down: (point) => put({ ...now(), path: [point], isByKeys: false }),
    move: (point) => {
      const { path } = now()
      const [first, ...rest] = path
      const last = rest.at(-1) ?? first
      if (first === undefined || last === undefined) return
      if (tool !== 'freehand') put({ ...now(), path: [first, point] })
      else if (apart(last, point) >= stillPx && path.length < mostPoints) put({ ...now(), path: [...path, point] })
    },
    up: () => {
      const { path, start } = now()
      const [first] = path
      if (first === undefined) return
      if (path.some((point) => apart(first, point) >= stillPx)) return finish(path)
      put({ ...empty, start })
      press(first)
    },
    enter: (point) => {
      const { path, isByKeys } = now()
      if (tool !== 'freehand') press(point)
      else if (isByKeys) finish([...path, point])
      else {
        put({ ...empty, path: [point], isByKeys: true })
        onStart(point)
      }
    },
    follow: (point) => {
      const { path, isByKeys } = now()
      if (isByKeys && path.length < mostPoints) put({ ...now(), path: [...path, point] })
    },
    drop: () => put({ ...empty, start: now().start }),
    cancel: () => {
      const { start, path } = now()
      put(empty)
      return start !== undefined || path.length > 0
    },
  }
}
