import { Link } from 'wouter'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { namePlace } from '../../shared-logic/words/position'
import { useWords } from '../parts/use-words'
import { nameOf } from '../survey/check-names'
import { wantCheck } from '../survey/wanted-check'
import style from './review.module.css'

interface CheckLinkProps {
  readonly assessed: Assessed
  readonly survey: Survey
}

/** The name of a check; while the survey is under way it leads back to it. */
export const CheckLink = ({ assessed, survey }: CheckLinkProps) => {
  const { title, place } = nameOf(useWords(), assessed, survey)
  const name = namePlace(title, place)
  if (survey.status === 'issued') return <span>{name}</span>
  return <Link to={`/surveys/${survey.id}`} state={wantCheck(assessed.key)} className={style.link}>{name}</Link>
}
