import { useEffect, useRef, type RefObject } from 'react'

/** Puts the focus on the heading of a list that was turned to; not when the page has only just opened. */
export const useArrivalFocus = (isArrival: boolean): RefObject<HTMLHeadingElement | null> => {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (isArrival) heading.current?.focus()
  }, [isArrival])
  return heading
}
