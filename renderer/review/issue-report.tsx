import { useState } from 'react'
import { useLocation } from 'wouter'
import { Refusal } from '../../shared-logic/contract/refusal'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useMutationOf, useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { LinkButton } from '../parts/link-button'
import { RefusalNotice } from '../parts/refusal-notice'
import { Switch } from '../parts/switch'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './review.module.css'
import { WhoSigns } from './who-signs'

interface IssueReportProps {
  readonly survey: Survey
  readonly openCount: number
}

const wantsName = (error: unknown): boolean => error instanceof Refusal && error.data.code === 'report.no-surveyor'

const hasPlaceToPrint = ({ isPrinted, latitude }: Photograph): boolean => isPrinted && latitude !== undefined

/** Issuing: says what becomes of open checks and that the survey is frozen; asks for the surveyor's name where none is known. */
export const IssueReport = ({ survey, openCount }: IssueReportProps) => {
  const { review, walk } = useWords().screens.survey
  const units = useUnits()
  const [, navigate] = useLocation()
  const settings = useQueryOf('settings.get', {})
  const issue = useMutationOf('reports.issue')
  const [step, setStep] = useState<'name' | 'confirm'>()
  const [withPlaces, setWithPlaces] = useState(false)
  if (survey.status === 'issued') return <LinkButton to={`/surveys/${survey.id}/report`} kind="primary" isWide>{walk.toReport}</LinkButton>
  const begin = (): void => {
    setWithPlaces(false)
    setStep(settings.data !== undefined && settings.data.settings.surveyorName === '' ? 'name' : 'confirm')
  }
  const send = (): void => {
    if (issue.isPending) return
    issue.mutate({ surveyId: survey.id, withPlaces }, { onSuccess: () => navigate(`/surveys/${survey.id}/report`), onError: (error) => setStep(wantsName(error) ? 'name' : undefined) })
  }
  const title = openCount === 0 ? review.confirmTitleNone : openCount === 1 ? review.confirmTitleOne : say(review.confirmTitle, { count: openCount }, units)
  return (
    <section aria-label={review.issue} className={style.issue}>
      <Button kind="primary" isWide onPress={begin}>{issue.isPending ? review.issuing : review.issue}</Button>
      <p className={style.soft}>{review.issueExplain}</p>
      {issue.error && !wantsName(issue.error) && <RefusalNotice error={issue.error} onRetry={send} />}
      {step === 'name' && settings.data && <WhoSigns settings={settings.data.settings} onKept={() => setStep('confirm')} onClose={() => setStep(undefined)} />}
      <Dialog
        title={title} isOpen={step === 'confirm'} isAlert onClose={() => setStep(undefined)}
        actions={<><Button onPress={() => setStep(undefined)}>{review.cancel}</Button><Button kind="primary" onPress={send}>{issue.isPending ? review.issuing : review.confirm}</Button></>}
      >
        {openCount > 0 && <p>{review.confirmOpen}</p>}
        <p>{review.confirmFrozen}</p>
        {survey.photographs.some(hasPlaceToPrint) && (
          <div className={style.places}>
            <Switch label={review.withPlaces} isOn={withPlaces} onChange={setWithPlaces} />
            <p className={style.soft}>{review.withPlacesHint}</p>
          </div>
        )}
      </Dialog>
    </section>
  )
}
