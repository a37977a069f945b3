import { useLayoutEffect, useRef, type PointerEvent, type RefObject, type UIEvent } from 'react'
import { turnedPoint } from '../../shared-logic/marking/turned'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'

interface HeldPlace {
  readonly onScroll: (event: UIEvent<HTMLElement>) => void
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void
}

/** Shares of the picture's width and height. */
type Place = PixelPoint

const wholePicture = { widthPx: 1, heightPx: 1 }

const middle: Place = [0.5, 0.5]

/** Where a place of the window lies on the picture; the picture is the frame's one child. */
const placeAt = (frame: HTMLElement, x: number, y: number): Place => {
  const box = frame.firstElementChild?.getBoundingClientRect()
  return box === undefined || box.width === 0 || box.height === 0 ? middle : [(x - box.left) / box.width, (y - box.top) / box.height]
}

const inTheMiddle = (frame: HTMLElement): Place => {
  const { left, top } = frame.getBoundingClientRect()
  return placeAt(frame, left + frame.clientWidth / 2, top + frame.clientHeight / 2)
}

const bringToMiddle = (frame: Element, picture: Element, [x, y]: Place): void => {
  const at = picture.getBoundingClientRect()
  const around = frame.getBoundingClientRect()
  frame.scrollLeft += at.left + x * at.width - around.left - frame.clientWidth / 2
  frame.scrollTop += at.top + y * at.height - around.top - frame.clientHeight / 2
}

/**
 * A picture in a frame that scrolls, seen closer or from further away, or turned: the place looked at stays in the
 * middle. That is the place last pressed, or what scrolling brought to the middle since. Another picture begins in its
 * middle.
 */
export const useHeldPlace = (frame: RefObject<HTMLElement | null>, closer: number, pictureId: string, quarterTurns: number): HeldPlace => {
  const held = useRef(middle)
  const of = useRef({ pictureId, quarterTurns })
  const put = useRef<Place>(undefined)
  useLayoutEffect(() => {
    const { current } = frame
    const picture = current?.firstElementChild
    if (!current || !picture) return
    held.current = of.current.pictureId === pictureId ? turnedPoint(held.current, wholePicture, (quarterTurns - of.current.quarterTurns + 4) % 4) : middle
    of.current = { pictureId, quarterTurns }
    bringToMiddle(current, picture, held.current)
    put.current = [current.scrollLeft, current.scrollTop]
  }, [frame, closer, pictureId, quarterTurns])
  return {
    onScroll: ({ currentTarget }) => {
      // Not what was put there just now, which at an edge may not reach the middle.
      if (put.current?.[0] === currentTarget.scrollLeft && put.current[1] === currentTarget.scrollTop) return
      put.current = undefined
      held.current = inTheMiddle(currentTarget)
    },
    onPointerDown: ({ currentTarget, clientX, clientY }) => { held.current = placeAt(currentTarget, clientX, clientY) },
  }
}
