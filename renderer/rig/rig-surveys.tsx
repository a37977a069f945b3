import type { SurveyRow } from '../../shared-logic/survey/records'
import { say, sayDate } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { LinkButton } from '../parts/link-button'
import { Waiting } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { TalliesLine } from '../parts/tallies-line'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import style from './rig-surveys.module.css'

const SurveyItem = ({ survey }: { readonly survey: SurveyRow }) => {
  const words = useWords()
  const { rig: rigWords, yard } = words.screens
  const date = sayDate(survey.surveyDate)
  const { asked, open, tallies, verdict } = survey.summary
  // What is still open counts as not seen in the end; while the survey is under way it is only open.
  const isUnderWay = survey.status === 'under way'
  return (
    <li className={style.survey}>
      <div className={style.what}>
        <h3>{date}</h3>
        <p className={style.soft}>{words.purposes[survey.purpose]}</p>
        {survey.reportNumber !== undefined && <p className={style.soft}>{survey.reportNumber}{survey.revision > 1 && `, ${say(rigWords.revision, { revision: survey.revision }, 'metric')}`}</p>}
      </div>
      <div className={style.came}>
        {isUnderWay ? <p>{rigWords.underWay}, {say(yard.answered, { answered: asked - open, asked }, 'metric')}</p> : <VerdictMark verdict={verdict} />}
        <TalliesLine tallies={isUnderWay ? { ...tallies, 'not seen': tallies['not seen'] - open } : tallies} />
      </div>
      <div className={style.steps}>
        {isUnderWay
          ? <LinkButton to={`/surveys/${survey.id}`}>{rigWords.goOn}<span className="visually-hidden">: {date}</span></LinkButton>
          : <LinkButton to={`/surveys/${survey.id}/report`}>{survey.reportNumber === undefined ? rigWords.reviewIt : rigWords.openReport}<span className="visually-hidden">: {date}</span></LinkButton>}
      </div>
    </li>
  )
}

/** The rig's surveys, newest first, with what each came to. */
export const RigSurveys = ({ rigId }: { readonly rigId: string }) => {
  const { rig: words } = useWords().screens
  const surveys = useQueryOf('surveys.list', { rigId, limit: 200 })
  return (
    <section className={style.surveys} aria-labelledby="surveys">
      <h2 id="surveys">{words.surveys}</h2>
      <RefusalNotice error={surveys.error} onRetry={() => { void surveys.refetch() }} />
      {surveys.data ? (
        surveys.data.surveys.length === 0
          ? <p className={style.soft}>{words.noSurveys}</p>
          : <ul>{surveys.data.surveys.map((survey) => <SurveyItem key={survey.id} survey={survey} />)}</ul>
      ) : !surveys.error && <Waiting />}
    </section>
  )
}
