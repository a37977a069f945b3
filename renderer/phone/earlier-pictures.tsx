import { Button } from './button'
import style from './earlier-pictures.module.css'
import type { Handover } from './handover'
import type { HandoverView } from './handover-view'
import { countOf, usePhoneWords } from './use-phone-words'

interface EarlierPicturesProps {
  readonly view: HandoverView
  readonly handover: Handover
  readonly onLook: () => void
}

/** Pictures left from an earlier connection. That may have been another survey: only the person knows, and says so. */
export const EarlierPictures = ({ view: { earlier, link }, handover, onLook }: EarlierPicturesProps) => {
  const { earlier: said } = usePhoneWords()
  const waiting = earlier.filter(({ state }) => state === 'waiting').length
  if (waiting === 0 || link.state !== 'open') return null
  return (
    <section className={style.earlier} aria-labelledby="earlier">
      <h2 id="earlier" className={style.title}>{said.title}</h2>
      <p>{countOf(said.text, waiting)}</p>
      <div className={style.acts}>
        <Button onPress={onLook}>{said.look}</Button>
        <Button onPress={() => void handover.adoptEarlier()}>{said.send}</Button>
      </div>
    </section>
  )
}
