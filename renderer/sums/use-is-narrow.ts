import { useSyncExternalStore } from 'react'

const query = '(max-width: 720px)'
const subscribe = (listener: () => void): (() => void) => {
  const media = window.matchMedia(query)
  media.addEventListener('change', listener)
  return () => media.removeEventListener('change', listener)
}

/** Whether drawings are shown small and have to set their figures larger. */
export const useIsNarrow = (): boolean => useSyncExternalStore(typeof window.matchMedia === 'function' ? subscribe : () => () => undefined, () => typeof window.matchMedia === 'function' && window.matchMedia(query).matches)
