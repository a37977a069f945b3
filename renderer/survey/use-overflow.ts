import { useEffect, useState, type RefObject } from 'react'

/** Whether what lies in a box is higher than the box: then it is scrolled. The box has one child, which holds all of it. */
export const useOverflow = (box: RefObject<HTMLElement | null>): boolean => {
  const [isOver, setOver] = useState(false)
  useEffect(() => {
    const { current } = box
    if (current === null || typeof ResizeObserver === 'undefined') return undefined
    const observer = new ResizeObserver(() => setOver(current.scrollHeight > current.clientHeight + 1))
    observer.observe(current)
    if (current.firstElementChild) observer.observe(current.firstElementChild)
    return () => observer.disconnect()
  }, [box])
  return isOver
}
