import { sayDate, say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { EmptyState } from '../parts/empty-state'
import { LinkButton } from '../parts/link-button'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { LoadProblem } from '../parts/load-problem'
import { ProofPanel } from '../proof/proof-panel'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { EarlierRevisions } from './earlier-revisions'
import { IssuedReport } from './issued-report'
import style from './report-page.module.css'
import { ReopenSurvey } from './reopen-survey'
import { SurveyAsIssued } from './survey-as-issued'

interface ReportPageProps {
  readonly surveyId: string
}

/** An issued report: what it says in short, its file, earlier revisions, the way to a new one, and the survey it rests on. */
export const ReportPage = ({ surveyId }: ReportPageProps) => {
  const words = useWords()
  const units = useUnits()
  const said = words.screens.reportPage
  const survey = useQueryOf('surveys.get', { surveyId })
  const reports = useQueryOf('reports.list', { surveyId })
  const error = survey.error ?? reports.error
  const revisions = (reports.data?.reports ?? []).toSorted((a, b) => b.revision - a.revision)
  const [newest, ...earlier] = revisions
  const crumbs = survey.data ? [{ label: survey.data.rigName, to: `/rigs/${survey.data.rigId}` }] : []
  return (
    <Page
      title={newest ? say(said.title, { number: newest.number }, units) : said.titleAlone} crumbs={crumbs} subtitle={survey.data && `${words.purposes[survey.data.purpose]}, ${sayDate(survey.data.surveyDate)}`}
      actions={survey.data && survey.data.photographs.length > 0 && <LinkButton to={`/surveys/${surveyId}/photographs`}>{words.screens.contactSheet.link}</LinkButton>}
    >
      {error && <LoadProblem error={error} onRetry={() => void Promise.all([survey.refetch(), reports.refetch()])} />}
      {!error && (survey.data === undefined || reports.data === undefined) && <Waiting />}
      {survey.data && reports.data && newest === undefined && (
        <EmptyState title={said.none} actions={<LinkButton to={`/surveys/${surveyId}`} kind="primary">{said.toWalk}</LinkButton>}><p>{said.noneHelp}</p></EmptyState>
      )}
      {survey.data && newest && (
        <div className={style.page}>
          <IssuedReport report={newest} survey={survey.data} />
          <EarlierRevisions reports={earlier} />
          <ReopenSurvey survey={survey.data} newest={newest} />
          <ProofPanel key={survey.data.photographs.length} survey={survey.data} />
          <SurveyAsIssued survey={survey.data} />
        </div>
      )}
    </Page>
  )
}
