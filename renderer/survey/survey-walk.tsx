import { useState } from 'react'
import { say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { EmptyState } from '../parts/empty-state'
import { LinkButton } from '../parts/link-button'
import { LoadProblem } from '../parts/load-problem'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { takeWantedCheck } from './wanted-check'
import { WalkScreen } from './walk-screen'

interface SurveyWalkProps {
  readonly surveyId: string
}

/** A survey under way, opened where the surveyor stood last. */
export const SurveyWalk = ({ surveyId }: SurveyWalkProps) => {
  const words = useWords()
  const units = useUnits()
  const { walk: said } = words.screens.survey
  const { data: survey, error, refetch } = useQueryOf('surveys.get', { surveyId })
  const [startAt] = useState(takeWantedCheck)
  const title = survey ? say(said.title, { rig: survey.rigName }, units) : error ? words.screens.survey.notOpened : said.stations
  const crumbs = survey ? [{ label: survey.rigName, to: `/rigs/${survey.rigId}` }] : []
  return (
    <Page title={title} crumbs={crumbs} width={survey ? 'full' : 'reading'} isTitleHidden={!error}>
      {error && <LoadProblem error={error} onRetry={() => void refetch()} />}
      {survey === undefined && !error && <Waiting />}
      {survey?.status === 'under way' && <WalkScreen survey={survey} startAt={startAt} />}
      {survey?.status === 'issued' && (
        <EmptyState title={title} actions={<LinkButton to={`/surveys/${surveyId}/report`} kind="primary">{said.toReport}</LinkButton>}><p>{said.issuedAlready}</p></EmptyState>
      )}
    </Page>
  )
}
