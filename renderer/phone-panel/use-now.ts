import { useEffect, useState } from 'react'

/** The time, told anew every second. */
export const useNow = (): number => {
  const [now, setNow] = useState(Date.now)
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1_000)
    return () => clearInterval(timer)
  }, [])
  return now
}
