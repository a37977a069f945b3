import { useEffect, useLayoutEffect, useRef } from 'react'

interface ShutterKeys {
  readonly take: () => void
  readonly retake: () => void
  readonly series: () => void
}

/** Where Space and letters mean something else: lists, switches, sliders, and any button but the shutter. */
const keepsItsKeys = 'button:not([data-shutter]), a, input, textarea, select, [role=listbox], [role=option], [role=button]:not([data-shutter]), [role=switch], [role=slider]'
const letters: Readonly<Record<string, keyof ShutterKeys>> = { t: 'take', r: 'retake', b: 'series' }

/**
 * Space takes a picture, and so does Enter on the shutter: as the key goes down, for the moment will not wait. T takes,
 * R retakes and B begins or ends a series from anywhere in the view; those are single keys and can be turned off.
 */
export const useShutterKeys = (keys: ShutterKeys, areLettersOn: boolean): void => {
  const latest = useRef(keys)
  // With the shutter itself: a key struck in the moment it is freed would reach the one that still waits, and be lost.
  useLayoutEffect(() => {
    latest.current = keys
  })
  useEffect(() => {
    const meaning = (event: KeyboardEvent, target: Element): keyof ShutterKeys | undefined => {
      const isOnShutter = target.closest('[data-shutter]') !== null
      if (event.key === ' ') return isOnShutter || target.closest(keepsItsKeys) === null ? 'take' : undefined
      if (event.key === 'Enter') return isOnShutter ? 'take' : undefined
      return areLettersOn && target.closest('input:not([type=range], [type=checkbox]), textarea, [role=listbox]') === null ? letters[event.key.toLowerCase()] : undefined
    }
    const strike = (event: KeyboardEvent): void => {
      const { target } = event
      if (event.ctrlKey || event.metaKey || event.altKey || !(target instanceof Element) || document.querySelector('[role=listbox], [role=alertdialog]') !== null) return
      const what = meaning(event, target)
      if (what === undefined) return
      event.preventDefault()
      event.stopPropagation()
      if (!event.repeat) latest.current[what]()
    }
    // Captured on the way down: React Aria's buttons keep their key events to themselves.
    document.addEventListener('keydown', strike, true)
    return () => document.removeEventListener('keydown', strike, true)
  }, [areLettersOn])
}
