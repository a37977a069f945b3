import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'

interface FromCameraProps {
  readonly photograph: Photograph
}

/** What the file says of itself: shown as the camera's word, not ours. */
export const FromCamera = ({ photograph }: FromCameraProps) => {
  const said = useWords().screens.survey.photographs
  const units = useUnits()
  const { takenAt, latitude, longitude } = photograph
  const facts = [
    takenAt === undefined ? undefined : say(said.takenAt, { time: takenAt }, units),
    latitude === undefined || longitude === undefined ? undefined : say(said.takenWhere, { latitude: latitude.toFixed(4), longitude: longitude.toFixed(4) }, units),
  ].filter((fact) => fact !== undefined)
  return (
    <dl className={style.camera}>
      <dt>{said.fromCamera}</dt>
      <dd>{facts.length === 0 ? said.noCamera : facts.join('. ')}</dd>
      <dd>{photograph.fileName}, {say(said.size, { width: photograph.widthPx, height: photograph.heightPx }, units)}</dd>
    </dl>
  )
}
