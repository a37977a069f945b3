import type { Handover } from './handover'
import { hasEnded, type HandoverView } from './handover-view'
import { PictureLine } from './picture-line'
import style from './picture-list.module.css'
import { useArrivalFocus } from './use-arrival-focus'
import { usePhoneWords } from './use-phone-words'

interface PictureListProps {
  /** The person turned to this list: the focus comes along. */
  readonly isArrival: boolean
  readonly view: HandoverView
  readonly handover: Handover
}

/** Every picture of this connection and what became of it, the newest first; those of an earlier one apart. */
export const PictureList = ({ isArrival, view, handover }: PictureListProps) => {
  const { pictures: said, earlier } = usePhoneWords()
  const heading = useArrivalFocus(isArrival)
  const isOver = hasEnded(view.link)
  const onRemoved = (): void => heading.current?.focus()
  return (
    <>
      <h2 ref={heading} tabIndex={-1} className={style.heading}>{said.title}</h2>
      {view.pictures.length === 0 && <p>{said.none}</p>}
      <ol className={style.list} reversed>
        {view.pictures.map((picture, index) => (
          <PictureLine key={picture.id} picture={picture} number={index + 1} share={view.sending?.id === picture.id ? view.sending.share : undefined} handover={handover} isStuck={isOver} onRemoved={onRemoved} />
        )).toReversed()}
      </ol>
      {view.earlier.length > 0 && (
        <section aria-labelledby="earlier-list">
          <h3 id="earlier-list">{earlier.title}</h3>
          <ol className={style.list}>
            {view.earlier.map((picture, index) => <PictureLine key={picture.id} picture={picture} number={index + 1} share={undefined} handover={handover} isStuck onRemoved={onRemoved} />)}
          </ol>
        </section>
      )}
    </>
  )
}
