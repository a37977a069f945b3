import { useEffect, useState } from 'react'

/** The value once it has stood still for a moment: asked for when typing pauses, not at each letter. */
export const useSettled = <Value>(value: Value, milliseconds: number): Value => {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), milliseconds)
    return () => clearTimeout(timer)
  }, [value, milliseconds])
  return settled
}
