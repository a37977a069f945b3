import { useState } from 'react'

const place = 'bunkwright.single-keys'

const remembered = (): boolean => {
  try {
    return window.localStorage.getItem(place) !== 'off'
  } catch {
    return true
  }
}

/** Whether single keys work on the walk: a choice of this machine, kept in the window. */
export const useSingleKeys = (): readonly [boolean, (isOn: boolean) => void] => {
  const [isOn, setOn] = useState(remembered)
  const choose = (next: boolean): void => {
    setOn(next)
    try {
      window.localStorage.setItem(place, next ? 'on' : 'off')
    } catch {
      // Storage may be refused; the choice then holds until the window closes.
    }
  }
  return [isOn, choose]
}
