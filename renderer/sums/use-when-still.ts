import { useEffect, useState } from 'react'

/** A hand that rests so long, ms, looks at what it has done. */
const restMs = 120

/** The value itself while nothing moves; while something is dragged, as it was when the hand last rested. */
export const useWhenStill = <Value>(value: Value, isMoving: boolean): Value => {
  const [still, setStill] = useState(value)
  if (!isMoving && still !== value) setStill(value)
  useEffect(() => {
    if (!isMoving) return undefined
    const timer = setTimeout(() => setStill(value), restMs)
    return () => clearTimeout(timer)
  }, [value, isMoving])
  return isMoving ? still : value
}
