import type { PhoneState } from '../../shared-logic/phone/phone-state'
import type { Survey } from '../../shared-logic/survey/records'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import style from './phone-panel.module.css'
import { fill, nameOfPhone, sayCheckOf, sayHeard } from './say-door'
import { useNow } from './use-now'

interface PairedViewProps {
  readonly survey: Survey
  readonly state: PhoneState
  readonly phone: NonNullable<PhoneState['phone']>
  readonly onAnother: () => void
}

/** As many as are looked at: the survey shows them all. */
const shownCount = 12

/** The open door with a phone behind it: who it is, when it was last heard, and what it has sent, the newest first. */
export const PairedView = ({ survey, state, phone, onAnother }: PairedViewProps) => {
  const words = useWords()
  const said = words.screens.phone.panel
  const now = useNow()
  const byId = new Map(survey.photographs.map((photograph) => [photograph.id, photograph]))
  // What was taken away here since is not looked for.
  const arrived = state.arrived.flatMap(({ photographId }) => byId.get(photographId) ?? [])
  const newest = arrived.toReversed().slice(0, shownCount)
  return (
    <div className={style.form}>
      <p className={style.phone}><strong>{fill(said.connected, { phone: nameOfPhone(said, phone) })}</strong><span>{sayHeard(said, phone, now)}</span></p>
      <section aria-labelledby="phone-arrived" className={style.arrived}>
        <h3 id="phone-arrived">{said.arrivedTitle}</h3>
        {newest.length === 0
          ? <p>{said.arrivedCount.none}</p>
          : (
              <>
                {newest.length < arrived.length && <p className={style.soft}>{fill(said.lastOf, { shown: newest.length, count: arrived.length })}</p>}
                <ul className={style.strip}>
                  {newest.map((photograph) => (
                    <li key={photograph.id}>
                      <MarkedPicture photograph={photograph} size="small" alt={photograph.fileName} className={style.small} />
                      <span className={style.soft}>{sayCheckOf(words, photograph, survey.rig.trailer.axleCount)}</span>
                    </li>
                  ))}
                </ul>
              </>
            )}
      </section>
      <div>
        <Button onPress={onAnother}>{said.another}</Button>
        <p className={style.soft}>{said.anotherHint}</p>
      </div>
    </div>
  )
}
