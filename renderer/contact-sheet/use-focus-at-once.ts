import { useEffect, useRef, type RefObject } from 'react'

/** For a field that somebody has just asked for: it has the focus as soon as it is there. */
export const useFocusAtOnce = <Field extends HTMLElement>(): RefObject<Field | null> => {
  const field = useRef<Field>(null)
  useEffect(() => field.current?.focus(), [])
  return field
}
