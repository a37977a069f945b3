import { useState } from 'react'
import { Button } from './button'
import { FileButton } from './file-button'
import type { Handover } from './handover'
import type { Picture } from './picture'
import style from './picture-list.module.css'
import { saveOnPhone } from './save-on-phone'
import { sayRefused } from './say-refused'
import { Thumbnail } from './thumbnail'
import { fill, usePhoneWords } from './use-phone-words'
import { hasFile, waysOn } from './ways-on'

interface PictureLineProps {
  readonly picture: Picture
  readonly number: number
  /** How much of it has gone, while it is being sent: 0 to 1. */
  readonly share: number | undefined
  readonly handover: Handover
  /** It is not sent by itself any more: the door is closed, or it was taken for an earlier one. It may be the only copy there is. */
  readonly isStuck: boolean
  /** Told when the person has let go of it: the line is gone then, with the focus that was in it. */
  readonly onRemoved: () => void
}

const stateOf = ({ state, isAlreadyThere }: Picture, share: number | undefined): 'waiting' | 'sending' | 'arrived' | 'already there' | 'refused' => {
  if (share !== undefined) return 'sending'
  return isAlreadyThere === true ? 'already there' : state
}

/** One picture: what it shows, where it belongs, what became of it, and what can be done. */
export const PictureLine = ({ picture, number, share, handover, isStuck, onRemoved }: PictureLineProps) => {
  const words = usePhoneWords()
  const { pictures: said, checks } = words
  const { state, warnings } = picture
  const shown = stateOf(picture, share)
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
        {shown === 'already there' && <p>{said.alreadyThere.one}</p>}
        {state === 'refused' && <p className={style.refused}>{sayRefused(words, picture)}</p>}
        {warnings.map((warning) => <p key={warning} className={style.warning}>{warning}</p>)}
      </div>
      {(state === 'refused' || (isStuck && state === 'waiting')) && <PictureActs picture={picture} handover={handover} isStuck={isStuck} onRemoved={onRemoved} />}
      {state === 'arrived' && warnings.length > 0 && !isStuck && (
        <div className={style.acts}><FileButton isCamera onFiles={(files) => void handover.add(files, picture.place)}>{said.takeAgain}</FileButton></div>
      )}
    </li>
  )
}

const PictureActs = ({ picture, handover, isStuck, onRemoved }: Pick<PictureLineProps, 'picture' | 'handover' | 'isStuck' | 'onRemoved'>) => {
  const { pictures: said } = usePhoneWords()
  const [asked, setAsked] = useState<'not yet' | 'asked' | 'kept'>('not yet')
  const { id, fileName, place } = picture
  const ways = waysOn(picture, isStuck)
  const remove = (): void => {
    void handover.remove(id)
    onRemoved()
  }
  if (asked === 'asked')
    return (
      <div className={style.acts}>
        <span role="alert" className={style.sure}>{said.removeSure}</span>
        <Button takesFocus onPress={() => setAsked('kept')}>{said.removeNo}</Button>
        <Button onPress={remove}>{said.removeYes}</Button>
      </div>
    )
  return (
    <div className={style.acts}>
      {ways.has('take again') && <FileButton isCamera onFiles={(files) => void handover.add(files, place)}>{said.takeAgain}</FileButton>}
      {ways.has('send again') && <Button onPress={() => void handover.sendAgain(id)}>{said.sendAgain}</Button>}
      {ways.has('save') && <Button onPress={() => void saveOnPhone(() => handover.file(id), fileName)}>{said.save}</Button>}
      {/* Nothing is lost by letting go of what was never kept. */}
      <Button kind="quiet" takesFocus={asked === 'kept'} onPress={() => (hasFile(picture) ? setAsked('asked') : remove())}>{said.remove}</Button>
    </div>
  )
}
