import { useState } from 'react'
import { useLocation } from 'wouter'
import type { RigRow } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayEquipment } from '../../shared-logic/words/say-equipment'
import { useMutationOf, useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { ConfirmDialog } from '../parts/dialog'
import { LinkButton } from '../parts/link-button'
import { LoadProblem, isGone } from '../parts/load-problem'
import { Page } from '../parts/page'
import { Waiting } from '../parts/progress'
import { RefusalNotice } from '../parts/refusal-notice'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { RigIdentity } from './rig-identity'
import style from './rig-page.module.css'
import { RigPlan } from './rig-plan'
import { RigSurveys } from './rig-surveys'

const RemoveRig = ({ row }: { readonly row: RigRow }) => {
  const { rig: words } = useWords().screens
  const [isAsking, setAsking] = useState(false)
  const removing = useMutationOf('rigs.remove')
  const [, navigate] = useLocation()
  const remove = (): void => removing.mutate({ rigId: row.id }, { onSuccess: () => navigate('/') })
  return (
    <>
      <Button kind="quiet" onPress={() => setAsking(true)}>{words.remove}</Button>
      <ConfirmDialog
        title={say(words.removeTitle, { rig: row.rig.name }, 'metric')} isOpen={isAsking} confirmLabel={words.removeConfirm} cancelLabel={words.removeKeep}
        onConfirm={remove} onCancel={() => setAsking(false)} isPending={removing.isPending}
      >
        <p>{say(words.removeText, { count: row.surveyCount }, 'metric')}</p>
        <RefusalNotice error={removing.error} />
      </ConfirmDialog>
    </>
  )
}

const LoadedRig = ({ row }: { readonly row: RigRow }) => {
  const words = useWords()
  const { rig: rigWords } = words.screens
  const units = useUnits()
  const { rig, id } = row
  return (
    <Page
      title={rig.name} subtitle={sayEquipment(words, rig, units)} crumbs={[{ label: rig.name, to: `/rigs/${id}` }]}
      actions={<><LinkButton to={`/rigs/${id}/edit`}>{rigWords.edit}</LinkButton><LinkButton to={`/rigs/${id}/sums`}>{words.screens.sums.link}</LinkButton><LinkButton to={`/rigs/${id}/corrosion`}>{words.screens.corrosion.link}</LinkButton><LinkButton to={`/rigs/${id}/survey`} kind="primary">{rigWords.startSurvey}</LinkButton></>}
    >
      <div className={style.board}>
        <RigPlan rig={rig} />
        <div className={style.texts}>
          <RigSurveys rigId={id} />
          <RigIdentity rig={rig} />
          <div><RemoveRig row={row} /></div>
        </div>
      </div>
    </Page>
  )
}

/** One rig: its drawing, what is known of it, and its surveys. */
export const RigPage = ({ rigId }: { readonly rigId: string }) => {
  const { rig: words, shell } = useWords().screens
  const row = useQueryOf('rigs.get', { rigId })
  if (row.data) return <LoadedRig row={row.data} />
  return (
    <Page title={row.error ? (isGone(row.error) ? words.gone : words.notOpened) : shell.programName} isTitleHidden={!row.error}>
      {row.error ? <LoadProblem error={row.error} onRetry={() => { void row.refetch() }} /> : <Waiting />}
    </Page>
  )
}
