import { useEffect } from 'react'
import type { HandoverView } from './handover-view'
import { hasFile } from './ways-on'

/** Asks before the page is closed, while something waits that is kept nowhere else. */
export const useKeepOpen = ({ pictures, isLasting }: HandoverView): void => {
  const isNeeded = pictures.some((picture) => picture.state !== 'arrived' && hasFile(picture) && (picture.isOnlyHere === true || !isLasting))
  useEffect(() => {
    if (!isNeeded) return undefined
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isNeeded])
}
