import { useEffect, useState, type FormEvent } from 'react'
import { useLocation } from 'wouter'
import type { Rig } from '../../shared-logic/rig/rig'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { LeaveGuard } from '../parts/leave-guard'
import { LinkButton } from '../parts/link-button'
import { Page } from '../parts/page'
import { useWords } from '../parts/use-words'
import type { Draft } from './draft'
import type { Problems } from './draft-problems'
import { rigGroups, type RigGroup } from './fields'
import { FormSections } from './form-sections'
import { goToField } from './go-to-field'
import { LivePlan } from './live-plan'
import { ProblemSummary } from './problem-summary'
import { RigField, type ChangeField } from './rig-field'
import style from './rig-form.module.css'
import { useRigDraft } from './use-rig-draft'
import { wantedField } from './wanted-field'

interface GroupProps {
  readonly group: RigGroup
  readonly draft: Draft
  readonly problems: Problems
  readonly onChange: ChangeField
}

const FieldGroup = ({ group, draft, problems, onChange }: GroupProps) => {
  const { title, text } = useWords().screens.rig.groups[group.id]
  return (
    <section className={style.group} aria-labelledby={`group-${group.id}`}>
      <div className={style.groupHead}>
        <h2 id={`group-${group.id}`} tabIndex={-1}>{title}</h2>
        {text !== '' && <p className={style.groupText}>{text}</p>}
      </div>
      <div className={style.fields}>
        {group.fields.filter((field) => field.when?.(draft) !== false).map((field) => (
          <div key={field.path} data-path={field.path} className={style[field.width]}>
            <RigField field={field} value={draft[field.path]} onChange={onChange} error={problems[field.path]} inner={field.kind === 'tanks' ? problems : undefined} />
          </div>
        ))}
      </div>
    </section>
  )
}

interface RigFormProps {
  readonly rigId?: string
  readonly kept?: Rig
}

/** The register's form with its drawing: what is typed is drawn at once. */
export const RigForm = ({ rigId, kept }: RigFormProps) => {
  const { rig: words } = useWords().screens
  const form = useRigDraft(kept, rigId)
  const [, navigate] = useLocation()
  const [leaveFor, setLeaveFor] = useState<string>()
  const [wanted] = useState(wantedField)
  useEffect(() => {
    if (wanted) goToField(wanted.field)
  }, [wanted])
  useEffect(() => {
    if (leaveFor !== undefined) navigate(leaveFor)
  }, [leaveFor, navigate])
  const submit = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    const saved = await form.save()
    if (saved !== undefined) setLeaveFor(wanted?.back ?? `/rigs/${saved}`)
  }
  const title = kept ? say(words.editTitle, { rig: kept.name }, 'metric') : words.newTitle
  const back = rigId === undefined ? '/' : `/rigs/${rigId}`
  return (
    <Page title={title} subtitle={words.formIntro} crumbs={kept ? [{ label: kept.name, to: back }] : []}>
      <LeaveGuard isHeld={form.isDirty && leaveFor === undefined} />
      <form className={style.form} onSubmit={(event) => { void submit(event) }} noValidate>
        <FormSections />
        <div className={style.groups}>
          <ProblemSummary problems={form.problems} attempt={form.attempt} />
          {rigGroups.map((group) => <FieldGroup key={group.id} group={group} draft={form.draft} problems={form.problems} onChange={form.change} />)}
          <div className={style.saveBar}>
            <span className={style.saveState}>{form.isDirty ? words.unsaved : words.nothingChanged}</span>
            <LinkButton to={wanted?.back ?? back} kind="quiet">{useWords().screens.shell.cancel}</LinkButton>
            <Button type="submit" kind="primary" isPending={form.isSaving}>{form.isSaving ? words.saving : words.save}</Button>
          </div>
        </div>
        <LivePlan draft={form.draft} />
      </form>
    </Page>
  )
}
