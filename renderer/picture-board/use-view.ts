import { useCallback, useEffect, useState, type RefObject } from 'react'
import type { PixelPoint } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { brought, fitted, panned, zoomed, type FrameSize, type View } from './view'

export interface ViewControl {
  readonly view: View
  readonly frame: FrameSize
  readonly zoom: (by: number, at?: PixelPoint) => void
  readonly pan: (byX: number, byY: number) => void
  readonly fit: () => void
  readonly bring: (point: PixelPoint) => void
}

const noFrame: FrameSize = { width: 1, height: 1 }
const wheelShare = 0.0015

/** How the picture lies in its frame: the whole of it until someone comes closer; it follows when the frame changes. */
export const useView = (element: RefObject<HTMLElement | null>, size: PictureSize): ViewControl => {
  const [frame, setFrame] = useState(noFrame)
  const [chosen, setChosen] = useState<View>()
  const view = chosen ?? fitted(frame, size)
  const change = useCallback((how: (view: View) => View) => setChosen((before) => how(before ?? fitted(frame, size))), [frame, size])

  useEffect(() => {
    const watched = element.current
    if (watched === null) return undefined
    const measure = (): void => setFrame({ width: Math.max(watched.clientWidth, 1), height: Math.max(watched.clientHeight, 1) })
    measure()
    if (typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(() => {
      measure()
      setChosen(undefined)
    })
    observer.observe(watched)
    return () => observer.disconnect()
  }, [element])

  useEffect(() => {
    const turned = element.current
    if (turned === null) return undefined
    const wheel = (event: WheelEvent): void => {
      event.preventDefault()
      const box = turned.getBoundingClientRect()
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1
      change((before) => zoomed(before, Math.exp(-event.deltaY * lines * wheelShare), [event.clientX - box.left, event.clientY - box.top], frame, size))
    }
    // After a finger a browser plays a mouse: it would take the focus from a field that the tap has opened, and press what has come under the finger.
    const touch = (event: TouchEvent): void => event.preventDefault()
    // React listens passively; here the page must not scroll along.
    turned.addEventListener('wheel', wheel, { passive: false })
    turned.addEventListener('touchstart', touch, { passive: false })
    return () => {
      turned.removeEventListener('wheel', wheel)
      turned.removeEventListener('touchstart', touch)
    }
  }, [element, change, frame, size])

  return {
    view,
    frame,
    zoom: (by, at = [frame.width / 2, frame.height / 2]) => change((before) => zoomed(before, by, at, frame, size)),
    pan: (byX, byY) => change((before) => panned(before, byX, byY, frame, size)),
    fit: () => setChosen(undefined),
    bring: (point) => change((before) => brought(before, point, frame, size)),
  }
}
