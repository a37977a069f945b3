import type { Assessed } from '../../shared-logic/survey/assess'
import { becauseOf, remedyOf } from '../../shared-logic/words/check-sentences'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './verdict-line.module.css'

interface VerdictLineProps {
  readonly assessed: Assessed
}

/** What the check came to, why, what to do and by when; also an overrule with the judged verdict beside it. */
export const VerdictLine = ({ assessed }: VerdictLineProps) => {
  const words = useWords()
  const units = useUnits()
  const { check } = words.screens.survey
  if (assessed.open) return <p className={style.open}>{check.notJudgedYet}</p>
  const because = becauseOf(words, assessed, units)
  const remedy = assessed.by === undefined ? undefined : remedyOf(words, assessed, units)
  const { aside, overrule } = assessed.answer ?? {}
  return (
    <div className={style.line}>
      <div className={style.weight}>
        <VerdictMark verdict={assessed.verdict} isLarge />
        {assessed.by !== undefined && <p className={style.by}>{words.byWhens[assessed.by]}</p>}
      </div>
      <div className={style.words}>
        {aside !== undefined && <p>{aside.reason}</p>}
        {because !== undefined && <p>{because}</p>}
        {overrule !== undefined && assessed.judged !== undefined && (
          <p>{say(check.judgedBut, { judged: words.verdicts[assessed.judged], verdict: words.verdicts[overrule.verdict], reason: overrule.reason }, units)}</p>
        )}
        {overrule !== undefined && assessed.judged === undefined && <p>{overrule.reason}</p>}
        {remedy !== undefined && <p>{remedy}</p>}
      </div>
    </div>
  )
}
