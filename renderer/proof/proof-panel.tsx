import { useEffect, useId, useRef, useState } from 'react'
import { Refusal } from '../../shared-logic/contract/refusal'
import type { Verified } from '../../shared-logic/proof/problem'
import type { Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayBytes } from '../../shared-logic/words/say-bytes'
import { sayBeside, sayEnd, sayOutcome, sayProblem, sayReportEnds, sayToDo } from '../../shared-logic/words/say-proof'
import { useMutationOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { RefusalNotice } from '../parts/refusal-notice'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './proof-panel.module.css'

interface ProofPanelProps {
  readonly survey: Survey
}

const wasStopped = (error: unknown): boolean => error instanceof Refusal && error.data.code === 'proof.stopped'

/** Holds a survey's photographs to their record when asked, and says that all are as they came in, or what is not. */
export const ProofPanel = ({ survey }: ProofPanelProps) => {
  const { panel } = useWords().proof
  const units = useUnits()
  const heading = useId()
  const verify = useMutationOf('proof.verify')
  const stop = useMutationOf('proof.stop')
  const { id: surveyId } = survey
  const { mutate: stopNow } = stop
  const isVerifying = verify.isPending
  const isUnderWay = useRef(false)
  useEffect(() => {
    isUnderWay.current = isVerifying
  }, [isVerifying])
  // Who leaves the page does not wait for it any more.
  useEffect(() => () => {
    if (isUnderWay.current) stopNow({ surveyId })
  }, [stopNow, surveyId])
  if (survey.photographs.length === 0 && survey.reports.length === 0) return null
  const size = sayBytes(survey.photographs.reduce((sum, { byteCount }) => sum + byteCount, 0))
  return (
    <section aria-labelledby={heading} className={style.panel}>
      <h2 id={heading}>{panel.title}</h2>
      <p className={style.soft}>{panel.explain}</p>
      <div className={style.buttons}>
        <Button onPress={() => verify.mutate({ surveyId })} isPending={isVerifying}>{verify.data === undefined ? panel.verify : panel.again}</Button>
        {isVerifying && <Button kind="quiet" onPress={() => stopNow({ surveyId })}>{panel.stop}</Button>}
      </div>
      <output className={style.result}>
        {isVerifying && <p className={style.soft}>{say(survey.photographs.length === 1 ? panel.verifyingOne : panel.verifying, { count: survey.photographs.length, size }, units)}</p>}
        {!isVerifying && verify.data !== undefined && <Outcome verified={verify.data} />}
      </output>
      {!wasStopped(verify.error) && <RefusalNotice error={verify.error} />}
    </section>
  )
}

const shownAtFirst = 8

const Outcome = ({ verified }: { readonly verified: Verified }) => {
  const words = useWords()
  const units = useUnits()
  const [isWhole, setWhole] = useState(false)
  const { problems } = verified
  const shown = isWhole ? problems : problems.slice(0, shownAtFirst)
  const { panel, meaning } = words.proof
  const toDo = sayToDo(words, problems, verified.hasBackups)
  return (
    <div className={style.outcome} data-found={problems.length > 0}>
      <p className={style.said}><OutcomeShape isRight={problems.length === 0} />{sayOutcome(words, verified)}</p>
      {problems.length > 0 && <ul className={style.problems}>{shown.map((problem) => <li key={JSON.stringify(problem)}>{sayProblem(words, problem)}</li>)}</ul>}
      {shown.length < problems.length && <div><Button kind="quiet" onPress={() => setWhole(true)}>{say(words.screens.survey.review.more, { count: problems.length }, units)}</Button></div>}
      {toDo !== undefined && <p>{toDo}</p>}
      {sayBeside(words, verified).map((line) => <p key={line} className={style.soft}>{line}</p>)}
      <details>
        <summary className={style.summary}>{panel.details}</summary>
        <div className={style.details}>
          <p>{meaning}</p>
          {verified.end && <p>{sayEnd(words, verified.end)}</p>}
          {sayReportEnds(words, verified).map((line) => <p key={line}>{line}</p>)}
        </div>
      </details>
    </div>
  )
}

/** A closed chain, or one with a gap: never the colour alone. */
const OutcomeShape = ({ isRight }: { readonly isRight: boolean }) => (
  <svg viewBox="0 0 28 14" width="28" height="14" aria-hidden="true" className={style.shape}>
    <rect x="1.5" y="2" width="11" height="10" rx="5" />
    <rect x={isRight ? 10.5 : 15.5} y="2" width="11" height="10" rx="5" />
  </svg>
)
