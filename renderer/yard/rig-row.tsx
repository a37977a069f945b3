import { Link } from 'wouter'
import type { RigRow as Row, SurveyRow } from '../../shared-logic/survey/records'
import { say, sayDate } from '../../shared-logic/words/say'
import { sayEquipment } from '../../shared-logic/words/say-equipment'
import { RigThumbnail } from '../drawing/rig-thumbnail'
import { LinkButton } from '../parts/link-button'
import { useSettings } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './rig-row.module.css'

/** The newest survey in two lines: what it came to, or how far it has come. */
const Latest = ({ survey }: { readonly survey: SurveyRow }) => {
  const words = useWords()
  const { yard } = words.screens
  const { asked, open, verdict } = survey.summary
  if (survey.status === 'issued') {
    return (
      <div className={style.latest}>
        <VerdictMark verdict={verdict} />
        <span className={style.date}>{sayDate(survey.surveyDate)}, {words.purposes[survey.purpose].toLowerCase()}</span>
      </div>
    )
  }
  return (
    <div className={style.latest}>
      <span>{yard.underWay}</span>
      <progress className={style.bar} value={asked - open} max={Math.max(asked, 1)} aria-label={yard.underWay} />
      <span className={style.date}>{say(yard.answered, { answered: asked - open, asked }, 'metric')}</span>
    </div>
  )
}

/** One rig of the yard: what it looks like, whose it is, what it is, and how it stood last. */
export const RigRow = ({ row }: { readonly row: Row }) => {
  const words = useWords()
  const { yard } = words.screens
  const settings = useSettings()
  const { rig, latest } = row
  return (
    <li className={style.row}>
      <div className={style.drawing}><RigThumbnail rig={rig} ruleBook={settings.ruleBook} /></div>
      <div className={style.names}>
        <h2><Link to={`/rigs/${row.id}`} className={style.name}>{rig.name}</Link></h2>
        <p className={style.owner}>{rig.owner?.name ?? yard.noOwner}</p>
        <p className={style.equipment}>{sayEquipment(words, rig, settings.units)}</p>
      </div>
      {latest ? <Latest survey={latest} /> : <p className={style.date}>{yard.neverSurveyed}</p>}
      <div className={style.step}>
        {latest?.status === 'under way' && (
          <LinkButton to={`/surveys/${latest.id}`}>{yard.goOn}<span className="visually-hidden">: {rig.name}</span></LinkButton>
        )}
      </div>
    </li>
  )
}
