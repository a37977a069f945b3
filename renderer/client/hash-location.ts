import { useSyncExternalStore } from 'react'
import { navigate } from 'wouter/use-hash-location'

/** Told where someone wants to go while the window is held where it is. */
type Holder = (wanted: string) => void

const locationNow = (): string => `/${window.location.hash.replace(/^#?\/?/, '')}`

/** What the window shows. Kept apart from the address, which a back button changes before anyone can be asked. */
let shown = locationNow()
let holder: Holder | undefined
const listeners = new Set<() => void>()

const show = (location: string): void => {
  shown = location
  for (const tell of listeners) tell()
}

const onHashChange = (): void => {
  const wanted = locationNow()
  if (wanted === shown) return
  if (!holder) return show(wanted)
  history.pushState(null, '', `#${shown}`)
  holder(wanted)
}

const subscribe = (tell: () => void): (() => void) => {
  if (listeners.size === 0) {
    shown = locationNow()
    window.addEventListener('hashchange', onHashChange)
  }
  listeners.add(tell)
  return () => {
    listeners.delete(tell)
    if (listeners.size === 0) window.removeEventListener('hashchange', onHashChange)
  }
}

const useLocationOfWindow = (): [string, typeof navigate] => [useSyncExternalStore(subscribe, () => shown), navigate]

/** Where the window stands, after the hash: both doors serve it, and it survives a reload. For wouter's `Router`. */
export const hashLocation = Object.assign(useLocationOfWindow, { hrefs: (href: string): string => `#${href}` })

/** Holds the window where it is and tells where someone wanted to go instead, until the answer is called. */
export const holdLocation = (tell: Holder): (() => void) => {
  holder = tell
  return () => {
    if (holder === tell) holder = undefined
  }
}
