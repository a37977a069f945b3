import { useState } from 'react'
import { useLocation } from 'wouter'
import type { ReportRow, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useMutationOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { LinkButton } from '../parts/link-button'
import { RefusalNotice } from '../parts/refusal-notice'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './report-page.module.css'

interface ReopenSurveyProps {
  readonly survey: Survey
  readonly newest: ReportRow
}

/** The way to a new revision. The report issued stays as it is, and the surveyor is told so before. */
export const ReopenSurvey = ({ survey, newest }: ReopenSurveyProps) => {
  const said = useWords().screens.reportPage
  const units = useUnits()
  const [, navigate] = useLocation()
  const [isAsking, setAsking] = useState(false)
  const reopen = useMutationOf('surveys.reopen')
  if (survey.status === 'under way')
    return (
      <section className={style.reopen}>
        <p>{say(said.underWay, { revision: newest.revision }, units)}</p>
        <LinkButton to={`/surveys/${survey.id}`}>{said.toWalk}</LinkButton>
      </section>
    )
  const send = (): void => {
    if (!reopen.isPending) reopen.mutate({ surveyId: survey.id }, { onSuccess: () => navigate(`/surveys/${survey.id}`), onError: () => setAsking(false) })
  }
  return (
    <section className={style.reopen}>
      <Button onPress={() => setAsking(true)}>{said.reopen}</Button>
      <RefusalNotice error={reopen.error} onRetry={send} />
      <Dialog
        title={said.reopenTitle} isOpen={isAsking} onClose={() => setAsking(false)}
        actions={<><Button onPress={() => setAsking(false)}>{said.cancel}</Button><Button kind="primary" onPress={send}>{said.reopenConfirm}</Button></>}
      >
        <p>{say(said.reopenExplain, { revision: newest.revision + 1 }, units)}</p>
      </Dialog>
    </section>
  )
}
