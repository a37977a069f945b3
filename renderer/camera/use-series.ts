import { useCallback, useEffect, useRef, useState } from 'react'

/** Three a second: as fast as an edge that lights up may blink (WCAG 2.3.1), and as a full-size picture is written anywhere. */
export const seriesPerSecond = 3
export const seriesLength = 12

/** Pictures one after the other from a press to the next, or until the series is full. Only while `isReady`. */
export const useSeries = (take: () => Promise<boolean>, isReady: boolean): { readonly isRunning: boolean; readonly taken: number; readonly toggle: () => void } => {
  const [isRunning, setRunning] = useState(false)
  const [taken, setTaken] = useState(0)
  const latest = useRef(take)
  useEffect(() => {
    latest.current = take
  })
  if (isRunning && (!isReady || taken >= seriesLength)) setRunning(false)
  useEffect(() => {
    if (!isRunning) return undefined
    // A beat for which there is no room is left out; the next one comes.
    const beat = (): void => void latest.current().then((did) => { if (did) setTaken((count) => count + 1) })
    beat()
    const timer = setInterval(beat, 1000 / seriesPerSecond)
    return () => clearInterval(timer)
  }, [isRunning])
  const toggle = useCallback(() => {
    setTaken(0)
    setRunning((before) => !before)
  }, [])
  return { isRunning, taken, toggle }
}
