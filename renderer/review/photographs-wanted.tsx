import type { Assessed } from '../../shared-logic/survey/assess'
import { findingsOf } from '../../shared-logic/survey/findings'
import type { Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { photographsAt } from '../survey/survey-cache'
import style from './review.module.css'

interface PhotographsWantedProps {
  readonly assessed: readonly Assessed[]
  readonly survey: Survey
}

/** Numbers of the findings that want a photograph and have none, and names of the photographs whose file is gone. */
export const PhotographsWanted = ({ assessed, survey }: PhotographsWantedProps) => {
  const { review } = useWords().screens.survey
  const units = useUnits()
  const { data } = useQueryOf('photographs.missing', {})
  const numbers = findingsOf(assessed).flatMap(({ check, position }, index) =>
    check.photograph === true && photographsAt(survey, { checkId: check.id, position }).length === 0 ? [index + 1] : [])
  const gone = new Set(data?.missing)
  const names = survey.photographs.filter(({ sha256 }) => gone.has(sha256)).map(({ caption, fileName }) => caption || fileName)
  if (numbers.length === 0 && names.length === 0) return null
  return (
    <div className={style.wanted}>
      {numbers.length > 0 && <p>{say(review.wantPhotographs, { numbers: numbers.join(', ') }, units)}</p>}
      {names.length > 0 && <p>{say(review.filesGone, { names: names.join('; ') }, units)}</p>}
    </div>
  )
}
