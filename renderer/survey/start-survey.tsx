import { useState } from 'react'
import { useLocation } from 'wouter'
import { catalogue } from '../../shared-logic/checks/catalogue'
import { depthOf } from '../../shared-logic/checks/depth'
import type { OutputOf } from '../../shared-logic/contract/contract'
import type { Rig } from '../../shared-logic/rig/rig'
import type { RuleBook } from '../../shared-logic/rules/rule-book'
import { ruleBooks } from '../../shared-logic/rules/rule-book'
import { askedChecks } from '../../shared-logic/survey/assess'
import { purposes, type Purpose } from '../../shared-logic/survey/purpose'
import { useMutationOf, useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { DateField } from '../parts/date-field'
import { LoadProblem } from '../parts/load-problem'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { TextField } from '../parts/text-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { say } from '../../shared-logic/words/say'
import style from './start-survey.module.css'

interface StartSurveyProps {
  readonly rigId: string
}

/** Before the walk: what the survey is for, its date and place, and the rules it is judged by. */
export const StartSurvey = ({ rigId }: StartSurveyProps) => {
  const { start } = useWords().screens.survey
  const rig = useQueryOf('rigs.get', { rigId })
  const about = useQueryOf('yard.about', {})
  const settings = useQueryOf('settings.get', {})
  const error = rig.error ?? about.error ?? settings.error
  const crumbs = rig.data ? [{ label: rig.data.rig.name, to: `/rigs/${rigId}` }] : []
  return (
    <Page title={start.title} subtitle={rig.data?.rig.name} crumbs={crumbs} width="reading">
      {error && <LoadProblem error={error} onRetry={() => void Promise.all([rig.refetch(), about.refetch(), settings.refetch()])} />}
      {!error && (rig.data && about.data && settings.data ? <StartForm rigId={rigId} rig={rig.data.rig} today={about.data.today} ruleBook={settings.data.settings.ruleBook} /> : <Waiting />)}
    </Page>
  )
}

interface StartFormProps {
  readonly rigId: string
  readonly rig: Rig
  readonly today: OutputOf<'yard.about'>['today']
  readonly ruleBook: RuleBook
}

const StartForm = ({ rigId, rig, today, ruleBook: usual }: StartFormProps) => {
  const words = useWords()
  const { start } = words.screens.survey
  const [, navigate] = useLocation()
  const [purpose, setPurpose] = useState<Purpose>()
  const [date, setDate] = useState<string | undefined>(today)
  const [place, setPlace] = useState('')
  const [ruleBook, setRuleBook] = useState<RuleBook>(usual)
  const [isTried, setTried] = useState(false)
  const begin = useMutationOf('surveys.start')
  const submit = (): void => {
    setTried(true)
    if (purpose === undefined || date === undefined || begin.isPending) return
    begin.mutate({ rigId, purpose, surveyDate: date, ruleBook, ...(place.trim() !== '' && { place: place.trim() }) }, { onSuccess: (survey) => navigate(`/surveys/${survey.id}`, { replace: true }) })
  }
  return (
    <form className={style.form} noValidate onSubmit={(event) => { event.preventDefault(); submit() }}>
      <ChoiceField label={start.purpose} value={purpose} onChange={setPurpose} options={purposes.map((each) => ({ value: each, label: words.purposes[each] }))} error={isTried && purpose === undefined ? start.needPurpose : undefined} />
      {purpose && <Depth rig={rig} ruleBook={ruleBook} purpose={purpose} />}
      <div className={style.pair}>
        <DateField label={start.date} value={date} onChange={setDate} max={today} error={isTried && date === undefined ? start.needDate : undefined} />
        <TextField label={start.place} hint={start.placeHint} value={place} onChange={setPlace} maxLength={200} />
      </div>
      <ChoiceField label={start.ruleBook} hint={start.ruleBookHint} value={ruleBook} onChange={setRuleBook} options={ruleBooks.map((each) => ({ value: each, label: words.ruleBooks[each] }))} />
      <RefusalNotice error={begin.error} />
      <div><Button kind="primary" type="submit">{begin.isPending ? start.beginning : start.begin}</Button></div>
    </form>
  )
}

/** How deep this purpose goes and how many checks that is on this rig, before the surveyor sets out. */
const Depth = ({ rig, ruleBook, purpose }: { readonly rig: Rig; readonly ruleBook: RuleBook; readonly purpose: Purpose }) => {
  const { start } = useWords().screens.survey
  const units = useUnits()
  return <output>{say(start.depth[depthOf(purpose)], { count: askedChecks(catalogue, { rig, ruleBook, purpose }).length }, units)}</output>
}
