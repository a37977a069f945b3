import { useEffect, useRef } from 'react'
import { Button } from 'react-aria-components'
import { say } from '../../shared-logic/words/say'
import { useWords } from '../parts/use-words'
import type { Problems } from './draft-problems'
import { goToField } from './go-to-field'
import style from './problem-summary.module.css'

interface ProblemSummaryProps {
  readonly problems: Problems
  /** Another attempt takes the focus here again. */
  readonly attempt: number
}

/** A field as the form names it; a tank's parts by what they are. */
const labelOf = (fields: Readonly<Record<string, string>>, path: string): string => fields[path] ?? fields[path.replace(/\.\d+\./, '.')] ?? path

/** All that stands in the way of saving, in one place, each a step to its field. */
export const ProblemSummary = ({ problems, attempt }: ProblemSummaryProps) => {
  const { fields, screens: { rig: words } } = useWords()
  const summary = useRef<HTMLDivElement>(null)
  const list = Object.entries(problems)
  useEffect(() => {
    if (attempt > 0) summary.current?.focus()
  }, [attempt])
  if (list.length === 0) return null
  return (
    <div ref={summary} role="alert" tabIndex={-1} className={style.summary}>
      <p><strong>{list.length === 1 ? words.problemTitle : say(words.problemsTitle, { count: list.length }, 'metric')}</strong></p>
      <ul>
        {list.map(([path, sentence]) => (
          <li key={path}>
            {path === '' ? <span>{sentence}</span> : <Button className={style.problem ?? ''} onPress={() => goToField(path)}>{labelOf(fields, path)}: <span className={style.sentence}>{sentence}</span></Button>}
          </li>
        ))}
      </ul>
    </div>
  )
}
