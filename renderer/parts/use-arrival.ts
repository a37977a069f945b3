import { useEffect, useRef, type RefObject } from 'react'
import { useLocation } from 'wouter'

/** Where the window stands. The first screen of a visit leaves the focus to the browser, so that the skip link comes first. */
let arrival: { readonly location: string; readonly isFirst: boolean } | undefined

/** Names the window after the screen, and moves the focus to its heading whenever another screen has come. */
export const useArrival = (title: string, programName: string): RefObject<HTMLHeadingElement | null> => {
  const heading = useRef<HTMLHeadingElement>(null)
  const [location] = useLocation()
  useEffect(() => {
    document.title = title === programName ? programName : `${title} · ${programName}`
  }, [title, programName])
  useEffect(() => {
    const isNew = arrival !== undefined && arrival.location !== location
    if (isNew) window.scrollTo(0, 0)
    // A screen that came in place of its own waiting sign takes the focus up again where that let it fall.
    const isDropped = arrival?.isFirst === false && document.activeElement === document.body
    if (isNew || isDropped) heading.current?.focus({ preventScroll: true })
    arrival = { location, isFirst: arrival === undefined || (arrival.isFirst && !isNew) }
  }, [location])
  return heading
}
