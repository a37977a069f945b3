import type { Tallies } from '../../shared-logic/survey/tallies'
import { verdicts } from '../../shared-logic/survey/verdict'
import style from './tallies-line.module.css'
import { useWords } from './use-words'
import { VerdictShape } from './verdict-mark'

interface TalliesLineProps {
  readonly tallies: Tallies
}

/** How many checks came to each verdict, in one line. */
export const TalliesLine = ({ tallies }: TalliesLineProps) => {
  const words = useWords()
  return (
    <ul className={style.line} aria-label={words.screens.shell.tallies}>
      {verdicts.map((verdict) => (
        <li key={verdict} className={style.item}>
          <VerdictShape verdict={verdict} size={14} />
          <span className={style.count}>{tallies[verdict]}</span> {words.verdicts[verdict]}
        </li>
      ))}
    </ul>
  )
}
