import { useEffect, useRef } from 'react'
import { isWriting } from './use-walk-keys'

/** Single keys while a photograph is viewed large: L and R turn it. Never while something is typed, nor with a modifier. */
export const useViewerKeys = (turn: ((quarters: 1 | -1) => void) | undefined, isOn: boolean): void => {
  const latest = useRef(turn)
  useEffect(() => {
    latest.current = turn
  })
  useEffect(() => {
    if (!isOn) return undefined
    const strike = (event: KeyboardEvent): void => {
      const { key, target } = event
      const quarters = key.toLowerCase() === 'r' ? 1 : key.toLowerCase() === 'l' ? -1 : undefined
      if (quarters === undefined || latest.current === undefined || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || !(target instanceof Element) || isWriting(target)) return
      event.preventDefault()
      latest.current(quarters)
    }
    // Captured on the way down: React Aria's buttons keep their key events to themselves.
    document.addEventListener('keydown', strike, true)
    return () => document.removeEventListener('keydown', strike, true)
  }, [isOn])
}
