import { useEffect, useId, useState } from 'react'
import style from './progress.module.css'
import { useWords } from './use-words'

interface ProgressProps {
  readonly label: string
  readonly done: number
  readonly total: number
  /** What stands at the right: '3 of 12'. */
  readonly says?: string
}

/** How far a long work has come. */
export const Progress = ({ label, done, total, says }: ProgressProps) => {
  const id = useId()
  return (
    <div className={style.progress}>
      <div className={style.line}><label htmlFor={id}>{label}</label><span>{says ?? `${done} / ${total}`}</span></div>
      <progress id={id} className={style.track} value={done} max={Math.max(total, 1)} />
    </div>
  )
}

/** Shown while an answer is on its way; says nothing for the first moment, so that quick answers do not flicker. */
export const Waiting = () => {
  const { waiting } = useWords().screens.shell
  const [isSlow, setSlow] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), 250)
    return () => clearTimeout(timer)
  }, [])
  return <output className={style.waiting}>{isSlow ? waiting : ''}</output>
}
