import { useEffect } from 'react'
import type { HandoverView } from './handover-view'

/** Asks before the page is closed, while something waits that is kept nowhere else. */
export const useKeepOpen = ({ pictures, isLasting }: HandoverView): void => {
  const isNeeded = pictures.some(({ state, isOnlyHere, why }) => state !== 'arrived' && why !== 'too large' && (isOnlyHere === true || !isLasting))
  useEffect(() => {
    if (!isNeeded) return undefined
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isNeeded])
}
