import { useEffect, useRef, useState } from 'react'
import type { PhoneState } from '../../shared-logic/phone/phone-state'
import type { Survey } from '../../shared-logic/survey/records'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { RefusalNotice } from '../parts/refusal-notice'
import { useWords } from '../parts/use-words'
import { CodeView } from './code-view'
import { DoorForm, type MinuteChoice } from './door-form'
import { PairedView } from './paired-view'
import style from './phone-panel.module.css'
import { countOf, sayTimeLeft } from './say-door'
import type { PhoneDoor } from './use-phone-door'
import { useNow } from './use-now'

interface PhonePanelProps {
  readonly survey: Survey
  readonly door: PhoneDoor
  /** Of a phone or pictures that came: said in the dialog, for nothing behind it is heard. */
  readonly news: string
  /** That the door has just closed, and what came. */
  readonly closedNews: string | undefined
  readonly onClose: () => void
}

/** 'Use a phone': the door is opened here, the code is shown, the pictures are seen to come, and the door is closed. */
export const PhonePanel = ({ survey, door, news, closedNews, onClose }: PhonePanelProps) => {
  const said = useWords().screens.phone.panel
  const [minutes, setMinutes] = useState<MinuteChoice>('60')
  const [isSecure, setSecure] = useState(false)
  const { state } = door
  const [beganShut] = useState(state === undefined)
  const open = (more: { readonly isSecure: boolean; readonly address?: string }): void => door.open({ minutes: Number(minutes), ...more })
  const actions = state === undefined
    ? (
        <>
          <Button key="cancel" onPress={onClose}>{said.cancel}</Button>
          <Button key="open" kind="primary" onPress={() => open({ isSecure })} isPending={door.isOpening}>{door.isOpening ? said.opening : said.openDoor}</Button>
        </>
      )
    : <Button key="back" kind="primary" onPress={onClose}>{said.back}</Button>
  return (
    <Dialog title={said.title} isOpen onClose={onClose} isWide={state !== undefined} actions={actions}>
      <output className="visually-hidden">{news}</output>
      <RefusalNotice error={door.problem} />
      {state === undefined && (
        <>
          <output className={style.caution}>{closedNews}</output>
          <DoorForm minutes={minutes} onMinutes={setMinutes} isSecure={isSecure} onSecure={setSecure} />
        </>
      )}
      {state !== undefined && <DoorFacts state={state} isArrival={beganShut} onCloseDoor={() => { door.close(); onClose() }} />}
      {state !== undefined && state.phone === undefined && (
        <CodeView state={state} onNetwork={(address) => open({ isSecure: state.isSecure, address })} onNewCode={() => open({ isSecure: state.isSecure })} />
      )}
      {state?.phone !== undefined && <PairedView survey={survey} state={state} phone={state.phone} onAnother={() => open({ isSecure: state.isSecure })} />}
    </Dialog>
  )
}

interface DoorFactsProps {
  readonly state: PhoneState
  /** The door was opened here, by a button that is gone: the focus comes along. */
  readonly isArrival: boolean
  readonly onCloseDoor: () => void
}

/** How the door stands, and the way to close it: apart from the button that opened it, so that a second tap on that closes nothing. */
const DoorFacts = ({ state: { closesAt, phone, arrived }, isArrival, onCloseDoor }: DoorFactsProps) => {
  const said = useWords().screens.phone.panel
  const now = useNow()
  const facts = useRef<HTMLParagraphElement>(null)
  useEffect(() => {
    if (isArrival) facts.current?.focus()
  }, [isArrival])
  return (
    <div className={style.facts}>
      <p ref={facts} tabIndex={-1} className={style.state}>{phone === undefined ? said.waitingForPhone : countOf(said.arrivedCount, arrived.length)} · {sayTimeLeft(said, closesAt, now)}</p>
      <Button onPress={onCloseDoor}>{said.closeDoor}</Button>
    </div>
  )
}
