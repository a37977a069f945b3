import type { SpotGrading } from '../../shared-logic/corrosion/grade-spot'
import { sayGrade, sayShortGrade } from '../../shared-logic/words/corrosion/grade'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark, VerdictShape } from '../parts/verdict-mark'
import style from './spot-sheet.module.css'

/** The verdict of a spot, its grades in a few letters, and by when. */
export const SpotVerdict = ({ grading }: { readonly grading: SpotGrading }) => {
  const words = useWords()
  return (
    <p className={style.verdict}>
      <VerdictMark verdict={grading.verdict} isLarge />
      <span className={style.short}>{sayShortGrade(words, grading)}</span>
      {grading.by !== undefined && <span>{words.byWhens[grading.by]}</span>}
    </p>
  )
}

/** A spot's grade in sentences: coating and metal apart, what to do, and what to mind. */
export const SpotGrade = ({ grading }: { readonly grading: SpotGrading }) => {
  const words = useWords()
  const units = useUnits()
  const { lines, cautions, sources } = sayGrade(words, grading, units)
  return (
    <div className={style.grade}>
      <SpotVerdict grading={grading} />
      <ul className={style.lines}>
        {lines.map(({ text, verdict }) => <li key={text} data-judged={verdict !== undefined}>{verdict !== undefined && <VerdictShape verdict={verdict} />}<span>{text}</span></li>)}
      </ul>
      {cautions.map((caution) => <p key={caution} className={style.soft}>{caution}</p>)}
      {sources.length > 0 && <details className={style.soft}><summary>{words.screens.survey.spots.sources}</summary><ul>{sources.map((source) => <li key={source}>{source}</li>)}</ul></details>}
    </div>
  )
}
