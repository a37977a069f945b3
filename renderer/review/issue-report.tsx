import { useState } from 'react'
import { useLocation } from 'wouter'
import { Refusal } from '../../shared-logic/contract/refusal'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayRefusal } from '../../shared-logic/words/say-refusal'
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

const isRefused = (error: unknown, code: string): error is Refusal => error instanceof Refusal && error.data.code === code
const wantsName = (error: unknown): boolean => isRefused(error, 'report.no-surveyor')
/** Originals are not as they came in, and the surveyor was not told yet. */
const tellsHarm = (error: unknown): error is Refusal => isRefused(error, 'report.originals-harmed')

const hasPlaceToPrint = ({ isPrinted, latitude }: Photograph): boolean => isPrinted && latitude !== undefined

/** Issuing: says what becomes of open checks and that the survey is frozen; asks for the surveyor's name where none is known. Originals that are not as they came in are named before it is issued all the same. */
export const IssueReport = ({ survey, openCount }: IssueReportProps) => {
  const words = useWords()
  const { review, walk } = words.screens.survey
  const units = useUnits()
  const [, navigate] = useLocation()
  const settings = useQueryOf('settings.get', {})
  const issue = useMutationOf('reports.issue')
  const [step, setStep] = useState<'name' | 'confirm'>()
  const [told, setTold] = useState<Refusal>()
  const [withPlaces, setWithPlaces] = useState(false)
  if (survey.status === 'issued') return <LinkButton to={`/surveys/${survey.id}/report`} kind="primary" isWide>{walk.toReport}</LinkButton>
  const begin = (): void => {
    setWithPlaces(false)
    setStep(settings.data !== undefined && settings.data.settings.surveyorName === '' ? 'name' : 'confirm')
  }
  const close = (): void => {
    setStep(undefined)
    setTold(undefined)
  }
  const failed = (error: unknown): void => {
    setStep(wantsName(error) ? 'name' : undefined)
    setTold(tellsHarm(error) ? error : undefined)
  }
  const send = (isHarmKnown: boolean): void => {
    if (issue.isPending) return
    issue.mutate({ surveyId: survey.id, withPlaces, ...(isHarmKnown && { isHarmKnown }) }, { onSuccess: () => navigate(`/surveys/${survey.id}/report`), onError: failed })
  }
  const title = openCount === 0 ? review.confirmTitleNone : openCount === 1 ? review.confirmTitleOne : say(review.confirmTitle, { count: openCount }, units)
  return (
    <section aria-label={review.issue} className={style.issue}>
      <Button kind="primary" isWide onPress={begin}>{issue.isPending ? review.issuing : review.issue}</Button>
      <p className={style.soft}>{review.issueExplain}</p>
      {issue.error && !wantsName(issue.error) && told === undefined && <RefusalNotice error={issue.error} onRetry={() => send(false)} />}
      {step === 'name' && settings.data && <WhoSigns settings={settings.data.settings} onKept={() => setStep('confirm')} onClose={() => setStep(undefined)} />}
      <Dialog
        title={title} isOpen={step === 'confirm'} isAlert onClose={close}
        actions={<><Button onPress={close}>{review.cancel}</Button><Button kind="primary" onPress={() => send(false)}>{issue.isPending ? review.issuing : review.confirm}</Button></>}
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
      <Dialog
        title={review.harmedTitle} isOpen={told !== undefined} isAlert onClose={close}
        actions={<><Button onPress={close}>{review.cancel}</Button><Button kind="primary" onPress={() => send(true)}>{issue.isPending ? review.issuing : review.harmedConfirm}</Button></>}
      >
        {told && <p>{sayRefusal(words, told.data)}</p>}
        <p>{review.harmedExplain}</p>
      </Dialog>
    </section>
  )
}
