import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayCameraPlace, sayCameraTime } from '../../shared-logic/words/say-camera'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'

interface FromCameraProps {
  readonly photograph: Photograph
}

/** What the file says of itself: shown as the camera's word, not ours. */
export const FromCamera = ({ photograph }: FromCameraProps) => {
  const words = useWords()
  const said = words.screens.survey.photographs
  const units = useUnits()
  const { takenAt } = photograph
  const place = sayCameraPlace(words, photograph)
  const facts = [
    takenAt === undefined ? undefined : say(said.takenAt, { time: sayCameraTime(takenAt) }, units),
    place === undefined ? undefined : say(said.takenWhere, { place }, units),
  ].filter((fact) => fact !== undefined)
  return (
    <dl className={style.camera}>
      <dt>{said.fromCamera}</dt>
      <dd>{facts.length === 0 ? said.noCamera : facts.join('. ')}</dd>
      <dd>{photograph.fileName}, {say(said.size, { width: photograph.widthPx, height: photograph.heightPx }, units)}</dd>
    </dl>
  )
}
