import { useEffect } from 'react'
import { redone, undone, type History } from './history'

/** Undo and redo by the system's own keys; in a field they belong to what is typed there. `onHistory` stays the same function from one drawing to the next. */
export const useUndoKeys = <State>(onHistory: (change: (history: History<State>) => History<State>) => void): void => {
  useEffect(() => {
    const strike = (event: KeyboardEvent): void => {
      const key = event.key.toLowerCase()
      if (!(event.ctrlKey || event.metaKey) || (key !== 'z' && key !== 'y')) return
      if (event.target instanceof Element && event.target.closest('input:not([type=range], [type=radio], [type=checkbox]), textarea') !== null) return
      event.preventDefault()
      onHistory(key === 'y' || event.shiftKey ? redone : undone)
    }
    document.addEventListener('keydown', strike)
    return () => document.removeEventListener('keydown', strike)
  }, [onHistory])
}
