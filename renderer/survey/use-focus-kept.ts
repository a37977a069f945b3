import { useLayoutEffect, useRef, type RefObject } from 'react'

interface KeptFocus {
  readonly ref: RefObject<HTMLDivElement | null>
  readonly tabIndex: -1
  readonly onFocus: () => void
  readonly onBlur: () => void
}

/**
 * For a part of the screen whose buttons go away by themselves: when the one with the focus goes, the part takes the
 * focus. On the page as a whole it would be lost, and Escape with it.
 */
export const useFocusKept = (): KeptFocus => {
  const ref = useRef<HTMLDivElement>(null)
  // A button that is taken away tells of no blur.
  const isInside = useRef(false)
  useLayoutEffect(() => {
    if (isInside.current && document.activeElement === document.body) ref.current?.focus({ preventScroll: true })
  })
  return { ref, tabIndex: -1, onFocus: () => { isInside.current = true }, onBlur: () => { isInside.current = false } }
}
