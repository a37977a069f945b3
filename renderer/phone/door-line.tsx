import { useEffect, useState } from 'react'
import style from './door-line.module.css'
import type { HandoverView } from './handover-view'
import { fill, usePhoneWords } from './use-phone-words'

interface DoorLineProps {
  readonly view: HandoverView
}

const tickMs = 5_000

const useNow = (): number => {
  const [now, setNow] = useState(Date.now)
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), tickMs)
    return () => clearInterval(timer)
  }, [])
  return now
}

/** What this page is connected to, whether it is, and for how long. */
export const DoorLine = ({ view: { link, closesAtMs, isPaired } }: DoorLineProps) => {
  const words = usePhoneWords()
  const now = useNow()
  const isRunning = closesAtMs !== undefined && (link.state === 'open' || link.state === 'silent')
  const leftMs = isRunning ? closesAtMs - now : 0
  return (
    <header className={style.line}>
      <h1 className={style.title}>{isPaired ? words.survey : words.program}</h1>
      <p className={style.state}>
        <span className={style.mark} data-state={link.state} aria-hidden="true" />
        <output>{words.states[link.state]}</output>
        {isRunning && <span className={style.time}>{leftMs < 60_000 ? words.lastMinute : fill(words.minutesLeft, { minutes: Math.round(leftMs / 60_000) })}</span>}
      </p>
    </header>
  )
}
