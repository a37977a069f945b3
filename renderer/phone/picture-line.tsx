import { useState } from 'react'
import { largestPhotographBytes } from '../../shared-logic/photographs/limits'
import { Button } from './button'
import { FileButton } from './file-button'
import type { Handover } from './handover'
import type { Picture } from './picture'
import style from './picture-list.module.css'
import { saveOnPhone } from './save-on-phone'
import { Thumbnail } from './thumbnail'
import { fill, usePhoneWords } from './use-phone-words'

interface PictureLineProps {
  readonly picture: Picture
  readonly number: number
  /** How much of it has gone, while it is being sent: 0 to 1. */
  readonly share: number | undefined
  readonly handover: Handover
  /** It is not sent by itself any more: the door is closed, or it was taken for an earlier one. It may be the only copy there is. */
  readonly isStuck: boolean
}

/** One picture: what it shows, where it belongs, what became of it, and what can be done. */
export const PictureLine = ({ picture, number, share, handover, isStuck }: PictureLineProps) => {
  const { pictures: said, checks } = usePhoneWords()
  const { state, sentence, why, warnings } = picture
  const shown = share === undefined ? state : 'sending'
  const name = fill(said.name, { number })
  const percent = Math.round((share ?? 0) * 100)
  return (
    <li className={style.line} aria-label={name}>
      <Thumbnail small={picture.small} />
      <div className={style.words}>
        <strong>{picture.place?.title ?? checks.none}</strong>
        <p className={style.state}>
          <span className={style.mark} data-state={shown} aria-hidden="true" />
          <span>{said.states[shown]}</span>
          {share !== undefined && <span>{fill(said.percent, { percent })}</span>}
          {picture.isOnlyHere === true && state === 'waiting' && <span>{said.onlyHere}</span>}
        </p>
        {share !== undefined && <progress className={style.bar} value={percent} max={100} aria-label={name} />}
        {state === 'refused' && <p className={style.refused}>{why === undefined ? (sentence ?? said.why.unsaid) : fill(said.why[why], { megabytes: largestPhotographBytes / 1_000_000 })}</p>}
        {warnings.map((warning) => <p key={warning} className={style.warning}>{warning}</p>)}
      </div>
      {(state === 'refused' || (isStuck && state === 'waiting')) && <PictureActs picture={picture} handover={handover} isStuck={isStuck} />}
      {state === 'arrived' && warnings.length > 0 && (
        <div className={style.acts}><FileButton isCamera onFiles={(files) => void handover.add(files, picture.place)}>{said.takeAgain}</FileButton></div>
      )}
    </li>
  )
}

const PictureActs = ({ picture, handover, isStuck }: Pick<PictureLineProps, 'picture' | 'handover' | 'isStuck'>) => {
  const { pictures: said } = usePhoneWords()
  const [isAsked, setAsked] = useState(false)
  const { id, why, fileName, place } = picture
  const hasFile = why !== 'gone' && why !== 'too large'
  if (isAsked)
    return (
      <div className={style.acts}>
        <span role="alert">{said.removeSure}</span>
        <Button onPress={() => setAsked(false)}>{said.removeNo}</Button>
        <Button onPress={() => void handover.remove(id)}>{said.removeYes}</Button>
      </div>
    )
  return (
    <div className={style.acts}>
      {!isStuck && <FileButton isCamera onFiles={(files) => void handover.add(files, place)}>{said.takeAgain}</FileButton>}
      {!isStuck && hasFile && <Button onPress={() => void handover.sendAgain(id)}>{said.sendAgain}</Button>}
      {hasFile && <Button onPress={() => void saveOnPhone(() => handover.file(id), fileName)}>{said.save}</Button>}
      {/* Nothing is lost by letting go of what was never kept. */}
      <Button kind="quiet" onPress={() => (hasFile ? setAsked(true) : void handover.remove(id))}>{said.remove}</Button>
    </div>
  )
}
