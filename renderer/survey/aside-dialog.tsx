import { useState } from 'react'
import { reasonLimit } from '../../shared-logic/survey/answer'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import style from './reason.module.css'

interface AsideDialogProps {
  readonly as: 'not seen' | 'not applicable'
  readonly reason: string
  readonly onConfirm: (reason: string) => void
  readonly onClose: () => void
}

/** Why a check is set aside: a common reason at a touch, or one's own words. Without a reason it is not. */
export const AsideDialog = ({ as, reason, onConfirm, onClose }: AsideDialogProps) => {
  const said = useWords().screens.survey.aside
  const [text, setText] = useState(reason)
  const [isTried, setTried] = useState(false)
  const confirm = (): void => {
    setTried(true)
    const given = text.trim()
    if (given !== '' && given.length <= reasonLimit) onConfirm(given)
  }
  return (
    <Dialog title={said.titles[as]} isOpen onClose={onClose} actions={<><Button onPress={onClose}>{said.cancel}</Button><Button kind="primary" onPress={confirm}>{said.confirm[as]}</Button></>}>
      <p className={style.explain}>{said.explain[as]}</p>
      <fieldset aria-label={said.common} className={style.chips}>
        {said.commonReasons[as].map((common) => (
          <Button key={common} onPress={() => onConfirm(common)}>{common}</Button>
        ))}
      </fieldset>
      <form onSubmit={(event) => { event.preventDefault(); confirm() }}>
        <TextField label={said.reason} value={text} onChange={setText} maxLength={reasonLimit} error={isTried && text.trim() === '' ? said.needReason : undefined} />
      </form>
    </Dialog>
  )
}
