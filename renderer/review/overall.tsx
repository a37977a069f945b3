import { summarize, type Assessed } from '../../shared-logic/survey/assess'
import { TalliesLine } from '../parts/tallies-line'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './review.module.css'

interface OverallProps {
  readonly assessed: readonly Assessed[]
}

/** What the rig comes to as a whole: the worst of what was seen, and the counts. */
export const Overall = ({ assessed }: OverallProps) => {
  const { review } = useWords().screens.survey
  const { verdict, tallies } = summarize(assessed)
  return (
    <section className={style.overall} aria-labelledby="overall">
      <h2 id="overall">{review.overall}</h2>
      <VerdictMark verdict={verdict} isLarge />
      <TalliesLine tallies={tallies} />
    </section>
  )
}
