import { useState } from 'react'
import type { Assessed } from '../../shared-logic/survey/assess'
import { notSeenOf } from '../../shared-logic/survey/findings'
import type { Survey } from '../../shared-logic/survey/records'
import { summarizeByStation } from '../../shared-logic/survey/assess'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { reasonOf } from '../survey/check-names'
import { CheckLink } from './check-link'
import style from './review.module.css'

interface OpenListProps {
  readonly open: readonly Assessed[]
  readonly survey: Survey
}

const shownAtFirst = 12

/** What nobody has answered yet, station by station, each a way back to it. */
export const OpenList = ({ open, survey }: OpenListProps) => {
  const words = useWords()
  const units = useUnits()
  const { review } = words.screens.survey
  const [isWhole, setWhole] = useState(false)
  const shown = isWhole ? open : open.slice(0, shownAtFirst)
  return (
    <section aria-labelledby="open" className={style.section}>
      <h2 id="open">{review.open}{open.length > 0 && <span className={style.count}> {open.length}</span>}</h2>
      <p className={style.soft}>{open.length === 0 ? review.noOpen : review.openExplain}</p>
      {summarizeByStation(shown).map(({ station }) => (
        <div key={station} className={style.group}>
          <h3>{words.stations[station]}</h3>
          <ul className={style.plain}>
            {shown.filter((each) => each.check.station === station).map((each) => <li key={each.key}><CheckLink assessed={each} survey={survey} /></li>)}
          </ul>
        </div>
      ))}
      {shown.length < open.length && <div><Button kind="quiet" onPress={() => setWhole(true)}>{say(review.more, { count: open.length }, units)}</Button></div>}
    </section>
  )
}

interface NotSeenListProps {
  readonly assessed: readonly Assessed[]
  readonly survey: Survey
}

/** What could not be seen, each with its reason. Open checks have none yet and stand above. */
export const NotSeenList = ({ assessed, survey }: NotSeenListProps) => {
  const words = useWords()
  const units = useUnits()
  const { review } = words.screens.survey
  const unseen = notSeenOf(assessed).filter((each) => !each.open)
  return (
    <section aria-labelledby="not-seen" className={style.section}>
      <h2 id="not-seen">{review.notSeen}{unseen.length > 0 && <span className={style.count}> {unseen.length}</span>}</h2>
      {unseen.length === 0 && <p className={style.soft}>{review.noNotSeen}</p>}
      <ul className={style.reasons}>
        {unseen.map((each) => (
          <li key={each.key}>
            <CheckLink assessed={each} survey={survey} />
            <span className={style.soft}>{reasonOf(words, each, units)}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
