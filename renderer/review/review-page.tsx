import { useMemo } from 'react'
import { catalogue } from '../../shared-logic/checks/catalogue'
import { assess } from '../../shared-logic/survey/assess'
import { factsOf } from '../../shared-logic/survey/facts'
import type { Survey } from '../../shared-logic/survey/records'
import { sayDate, say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { LinkButton } from '../parts/link-button'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { LoadProblem } from '../parts/load-problem'
import { ProofPanel } from '../proof/proof-panel'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { PhotographNews } from '../survey/photograph-news'
import { usePhotographs } from '../survey/use-photographs'
import { Findings } from './findings'
import { IssueReport } from './issue-report'
import { NotSeenList, OpenList } from './left-out'
import style from './review.module.css'
import { PhotographsWanted } from './photographs-wanted'
import { StationTable } from './station-table'
import { Overall } from './overall'

interface ReviewPageProps {
  readonly surveyId: string
}

/** The survey as it stands, before it is issued: verdict and tallies, what is open, findings, what was not seen. */
export const ReviewPage = ({ surveyId }: ReviewPageProps) => {
  const words = useWords()
  const units = useUnits()
  const { review } = words.screens.survey
  const { data: survey, error, refetch } = useQueryOf('surveys.get', { surveyId })
  const crumbs = survey ? [{ label: survey.rigName, to: `/rigs/${survey.rigId}` }, { label: review.walk, to: `/surveys/${surveyId}` }] : []
  return (
    <Page
      title={survey ? say(review.title, { rig: survey.rigName }, units) : review.titleAlone} crumbs={crumbs}
      subtitle={survey && `${words.purposes[survey.purpose]}, ${sayDate(survey.surveyDate)}`}
      actions={survey && <><LinkButton to={`/surveys/${surveyId}/photographs`}>{words.screens.contactSheet.link}</LinkButton>{survey.status === 'under way' && <LinkButton to={`/surveys/${surveyId}`}>{review.back}</LinkButton>}</>}
    >
      {error && <LoadProblem error={error} onRetry={() => void refetch()} />}
      {survey === undefined && !error && <Waiting />}
      {survey && <Review survey={survey} />}
    </Page>
  )
}

/** A report issued now would be without them. */
const Arriving = ({ surveyId }: { readonly surveyId: string }) => <div className={style.arriving}><PhotographNews photographs={usePhotographs(surveyId)} /></div>

const Review = ({ survey }: { readonly survey: Survey }) => {
  const assessed = useMemo(() => assess(catalogue, factsOf(survey)), [survey])
  const open = assessed.filter((each) => each.open)
  return (
    <div className={style.review}>
      <div className={style.main}>
        {survey.status === 'under way' && <Arriving surveyId={survey.id} />}
        <Overall assessed={assessed} />
        <PhotographsWanted assessed={assessed} survey={survey} />
        <Findings assessed={assessed} survey={survey} />
        <OpenList open={open} survey={survey} />
        <NotSeenList assessed={assessed} survey={survey} />
        <ProofPanel key={survey.photographs.length} survey={survey} />
      </div>
      <aside className={style.side}>
        <IssueReport survey={survey} openCount={open.length} />
        <StationTable assessed={assessed} />
      </aside>
    </div>
  )
}
