import { useCallback, useEffect, useRef } from 'react'

/** The same function in every drawing, doing what the latest would: for what is drawn anew only when what it shows has changed. */
export const useStable = <Taken extends readonly unknown[], Answered>(how: (...taken: Taken) => Answered): ((...taken: Taken) => Answered) => {
  const latest = useRef(how)
  useEffect(() => {
    latest.current = how
  })
  return useCallback((...taken: Taken) => latest.current(...taken), [])
}
