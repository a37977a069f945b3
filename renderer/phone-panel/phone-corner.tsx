import { useState } from 'react'
import type { Survey } from '../../shared-logic/survey/records'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './phone-line.module.css'
import { PhoneLine } from './phone-line'
import { PhonePanel } from './phone-panel'
import { countOf, fill, nameOfPhone } from './say-door'
import { usePhoneDoor } from './use-phone-door'

interface PhoneCornerProps {
  readonly survey: Survey
  readonly isPanelOpen: boolean
  readonly onPanel: (isOpen: boolean) => void
}

/** All of the phone in the survey: the panel when it is called, a line while the door is open, and word of what changed. */
export const PhoneCorner = ({ survey, isPanelOpen, onPanel }: PhoneCornerProps) => {
  const said = useWords().screens.phone.panel
  const door = usePhoneDoor(survey.id)
  const { state } = door
  // What was last known of a door that is now shut.
  const [last, setLast] = useState(state)
  if (state !== undefined && state !== last) setLast(state)
  const closedNews = state === undefined && last !== undefined ? countOf(said.closedNews, last.arrived.length) : undefined
  const news = state?.phone === undefined ? '' : [fill(said.connected, { phone: nameOfPhone(said, state.phone) }), countOf(said.arrivedNews, state.arrived.length)].join('. ')
  return (
    <>
      <output className="visually-hidden">{isPanelOpen ? '' : news}</output>
      {state !== undefined && <PhoneLine state={state} onShow={() => onPanel(true)} />}
      {closedNews !== undefined && (
        <output className={style.line}>
          <span className={style.text}>{closedNews}</span>
          <Button kind="quiet" onPress={() => setLast(undefined)}>{said.understood}</Button>
        </output>
      )}
      {isPanelOpen && <PhonePanel survey={survey} door={door} news={news} closedNews={closedNews} onClose={() => onPanel(false)} />}
    </>
  )
}
