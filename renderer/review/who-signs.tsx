import { useState } from 'react'
import type { Settings } from '../../shared-logic/survey/settings'
import { useMutationOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { RefusalNotice } from '../parts/refusal-notice'
import { TextField } from '../parts/text-field'
import { useWords } from '../parts/use-words'
import style from './review.module.css'

interface WhoSignsProps {
  readonly settings: Settings
  readonly onKept: () => void
  readonly onClose: () => void
}

/** Asks once who the surveyor is, where the first report needs it, and keeps it in the settings. */
export const WhoSigns = ({ settings, onKept, onClose }: WhoSignsProps) => {
  const { review } = useWords().screens.survey
  const [name, setName] = useState(settings.surveyorName)
  const [address, setAddress] = useState(settings.surveyorAddress)
  const [contact, setContact] = useState(settings.surveyorContact)
  const [isTried, setTried] = useState(false)
  const save = useMutationOf('settings.save')
  const keep = (): void => {
    setTried(true)
    if (name.trim() === '' || save.isPending) return
    save.mutate({ settings: { ...settings, surveyorName: name.trim(), surveyorAddress: address.trim(), surveyorContact: contact.trim() } }, { onSuccess: onKept })
  }
  return (
    <Dialog
      title={review.whoTitle} isOpen onClose={onClose}
      actions={<><Button onPress={onClose}>{review.cancel}</Button><Button kind="primary" onPress={keep}>{review.whoConfirm}</Button></>}
    >
      <p className={style.soft}>{review.whoExplain}</p>
      <form className={style.form} onSubmit={(event) => { event.preventDefault(); keep() }}>
        <TextField label={review.name} value={name} onChange={setName} maxLength={120} isRequired autoComplete="name" error={isTried && name.trim() === '' ? review.needName : undefined} />
        <TextField label={review.address} value={address} onChange={setAddress} maxLength={400} isLong />
        <TextField label={review.contact} value={contact} onChange={setContact} maxLength={200} />
        <button type="submit" hidden>{review.whoConfirm}</button>
      </form>
      <RefusalNotice error={save.error} />
    </Dialog>
  )
}
