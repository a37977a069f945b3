import { useEffect, useRef, type RefObject } from 'react'
import { useLocation } from 'wouter'

/** The first screen of a visit leaves the focus to the browser, so that the skip link comes first. */
let lastArrival: string | undefined

/** Names the window after the screen, and moves the focus to its heading whenever another screen has come. */
export const useArrival = (title: string, programName: string): RefObject<HTMLHeadingElement | null> => {
  const heading = useRef<HTMLHeadingElement>(null)
  const [location] = useLocation()
  useEffect(() => {
    document.title = title === programName ? programName : `${title} · ${programName}`
  }, [title, programName])
  useEffect(() => {
    if (lastArrival !== undefined && lastArrival !== location) {
      window.scrollTo(0, 0)
      heading.current?.focus({ preventScroll: true })
    }
    lastArrival = location
  }, [location])
  return heading
}
