import type { PhoneState } from '../../shared-logic/phone/phone-state'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './phone-line.module.css'
import { countOf, fill, nameOfPhone, sayHeard, sayTimeLeft } from './say-door'
import { useNow } from './use-now'

interface PhoneLineProps {
  readonly state: PhoneState
  readonly onShow: () => void
}

/** The open door, in one line of the survey: nobody forgets that it stands open. */
export const PhoneLine = ({ state, onShow }: PhoneLineProps) => {
  const said = useWords().screens.phone.panel
  const now = useNow()
  const { phone, arrived, closesAt } = state
  const parts = phone === undefined
    ? [said.waitingForPhone, sayTimeLeft(said, closesAt, now)]
    : [fill(said.connected, { phone: nameOfPhone(said, phone) }), sayHeard(said, phone, now), countOf(said.arrivedCount, arrived.length), sayTimeLeft(said, closesAt, now)]
  return (
    <section aria-label={said.line} className={style.line}>
      <span className={style.mark} data-paired={phone !== undefined} aria-hidden="true" />
      <p className={style.text}>{parts.join(' · ')}</p>
      <Button kind="quiet" onPress={onShow}>{said.show}</Button>
    </section>
  )
}
