import { Button } from 'react-aria-components'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import { nameOf, reasonOf } from './check-names'
import style from './check-line.module.css'

interface CheckLineProps {
  readonly assessed: Assessed
  readonly survey: Survey
  readonly onOpen: () => void
}

/** A neighbour of the open check, in one line: what it is, what it came to and why. */
export const CheckLine = ({ assessed, survey, onOpen }: CheckLineProps) => {
  const words = useWords()
  const units = useUnits()
  const { title, place } = nameOf(words, assessed, survey)
  const reason = assessed.open ? undefined : reasonOf(words, assessed, units)
  return (
    <Button className={style.line ?? ''} onPress={onOpen}>
      <span className={style.mark}>{assessed.open ? <OpenMark word={words.screens.survey.walk.open} /> : <VerdictMark verdict={assessed.verdict} />}</span>
      <span className={style.name}>{title}{place !== '' && <span className={style.place}> · {place}</span>}</span>
      <span className={style.reason}>{reason}</span>
    </Button>
  )
}

/** Not answered yet: a small empty box, unlike every verdict's shape. */
const OpenMark = ({ word }: { readonly word: string }) => (
  <span className={style.open}>
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"><path d="M4 12H12" fill="none" stroke="currentColor" strokeWidth="1" strokeDasharray="1.5 2" /></svg>
    {word}
  </span>
)
