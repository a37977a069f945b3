import { timeTaken } from '../../shared-logic/photographs/time-taken'
import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayCameraPlace, sayCameraTime } from '../../shared-logic/words/say-camera'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './photographs.module.css'

interface FromCameraProps {
  readonly photograph: Photograph
  /** IANA zone the survey is made in. */
  readonly zone: string
}

/** What the file says of itself: shown as the camera's word, not ours. A picture this program took tells the time by its own clock. */
export const FromCamera = ({ photograph, zone }: FromCameraProps) => {
  const words = useWords()
  const said = words.screens.survey.photographs
  const units = useUnits()
  const taken = timeTaken(photograph, zone)
  const place = sayCameraPlace(words, photograph)
  const facts = [
    taken === undefined ? undefined : say(taken.by === 'camera' ? said.takenAt : said.takenHere, { time: sayCameraTime(taken.at) }, units),
    place === undefined ? undefined : say(said.takenWhere, { place }, units),
  ].filter((fact) => fact !== undefined)
  return (
    <dl className={style.camera}>
      <dt>{taken?.by === 'program' ? said.fromOwnCamera : said.fromCamera}</dt>
      <dd>{facts.length === 0 ? said.noCamera : facts.join('. ')}</dd>
      <dd>{photograph.fileName}, {say(said.size, { width: photograph.widthPx, height: photograph.heightPx }, units)}</dd>
    </dl>
  )
}
