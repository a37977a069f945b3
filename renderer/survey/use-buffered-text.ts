import { useEffect, useRef, useState } from 'react'

const pauseMs = 450

interface BufferedText {
  readonly text: string
  readonly write: (text: string) => void
  /** Keeps now what still waits. */
  readonly keep: () => void
}

/** Text that is kept when the typing pauses, the field is left or the screen goes. */
export const useBufferedText = (kept: string, save: (text: string) => void): BufferedText => {
  const [written, setWritten] = useState<string>()
  const waiting = useRef<string>(undefined)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  const keep = (): void => {
    clearTimeout(timer.current)
    if (waiting.current === undefined) return
    const text = waiting.current
    waiting.current = undefined
    save(text)
  }
  const latest = useRef(keep)
  useEffect(() => {
    latest.current = keep
  })
  useEffect(() => () => latest.current(), [])
  const write = (text: string): void => {
    setWritten(text)
    waiting.current = text
    clearTimeout(timer.current)
    timer.current = setTimeout(() => latest.current(), pauseMs)
  }
  return { text: written ?? kept, write, keep }
}
