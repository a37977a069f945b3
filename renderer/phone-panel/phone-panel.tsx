import { useState } from 'react'
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
  readonly onClose: () => void
}

/** 'Use a phone': the door is opened here, the code is shown, the pictures are seen to come, and the door is closed. */
export const PhonePanel = ({ survey, door, onClose }: PhonePanelProps) => {
  const said = useWords().screens.phone.panel
  const [minutes, setMinutes] = useState<MinuteChoice>('60')
  const [isSecure, setSecure] = useState(false)
  const { state } = door
  const open = (more: { readonly isSecure: boolean; readonly address?: string }): void => door.open({ minutes: Number(minutes), ...more })
  const actions = state === undefined
    ? (
        <>
          <Button onPress={onClose}>{said.cancel}</Button>
          <Button kind="primary" onPress={() => open({ isSecure })} isPending={door.isOpening}>{door.isOpening ? said.opening : said.openDoor}</Button>
        </>
      )
    : (
        <>
          <Button onPress={() => { door.close(); onClose() }}>{said.closeDoor}</Button>
          <Button kind="primary" onPress={onClose}>{said.back}</Button>
        </>
      )
  return (
    <Dialog title={said.title} isOpen onClose={onClose} isWide={state !== undefined} actions={actions}>
      <RefusalNotice error={door.problem} />
      {state === undefined && <DoorForm minutes={minutes} onMinutes={setMinutes} isSecure={isSecure} onSecure={setSecure} />}
      {state !== undefined && <DoorFacts closesAt={state.closesAt} count={state.arrived.length} isPaired={state.phone !== undefined} />}
      {state !== undefined && state.phone === undefined && (
        <CodeView state={state} onNetwork={(address) => open({ isSecure: state.isSecure, address })} onNewCode={() => open({ isSecure: state.isSecure })} />
      )}
      {state?.phone !== undefined && <PairedView survey={survey} state={state} phone={state.phone} onAnother={() => open({ isSecure: state.isSecure })} />}
    </Dialog>
  )
}

interface DoorFactsProps {
  readonly closesAt: string
  readonly count: number
  readonly isPaired: boolean
}

const DoorFacts = ({ closesAt, count, isPaired }: DoorFactsProps) => {
  const said = useWords().screens.phone.panel
  const now = useNow()
  return <p className={style.state}>{isPaired ? countOf(said.arrivedCount, count) : said.waitingForPhone}<span> · {sayTimeLeft(said, closesAt, now)}</span></p>
}
