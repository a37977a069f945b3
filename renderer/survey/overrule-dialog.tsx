import { useState } from 'react'
import { verdicts, type Verdict } from '../../shared-logic/survey/verdict'
import { reasonLimit, type Answer } from '../../shared-logic/survey/answer'
import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { Dialog } from '../parts/dialog'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import { VerdictShape } from '../parts/verdict-mark'
import style from './reason.module.css'

interface OverruleDialogProps {
  readonly judged: Verdict | undefined
  readonly overrule: Answer['overrule']
  readonly onConfirm: (overrule: Answer['overrule']) => void
  readonly onClose: () => void
}

/** The surveyor's own verdict over the judged one, always with the reason. */
export const OverruleDialog = ({ judged, overrule, onConfirm, onClose }: OverruleDialogProps) => {
  const words = useWords()
  const said = words.screens.survey.overrule
  const offered = verdicts.filter((verdict) => verdict !== judged && verdict !== 'not seen' && verdict !== 'not applicable')
  const [verdict, setVerdict] = useState(overrule?.verdict)
  const [reason, setReason] = useState(overrule?.reason ?? '')
  const [isTried, setTried] = useState(false)
  const confirm = (): void => {
    setTried(true)
    const given = reason.trim()
    if (verdict !== undefined && given !== '' && given.length <= reasonLimit) onConfirm({ verdict, reason: given })
  }
  return (
    <Dialog
      title={said.title} isOpen onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>{said.cancel}</Button>
          {overrule !== undefined && <Button onPress={() => onConfirm(undefined)}>{said.withdraw}</Button>}
          <Button kind="primary" onPress={confirm}>{said.confirm}</Button>
        </>
      }
    >
      <p className={style.explain}>{said.explain}</p>
      <ChoiceField
        label={said.verdict} value={verdict} onChange={setVerdict} error={isTried && verdict === undefined ? said.needVerdict : undefined}
        options={offered.map((each) => ({ value: each, label: words.verdicts[each], mark: <VerdictShape verdict={each} /> }))}
      />
      <form onSubmit={(event) => { event.preventDefault(); confirm() }}>
        <TextField label={said.reason} value={reason} onChange={setReason} maxLength={reasonLimit} error={isTried && reason.trim() === '' ? said.needReason : undefined} />
      </form>
    </Dialog>
  )
}
