import { alikeTo } from '../../shared-logic/photographs/alike'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { sayAlike, sayWarnings } from '../../shared-logic/words/say-photograph'
import { useWords } from '../parts/use-words'
import style from './quality-news.module.css'
import { SideBySide } from './side-by-side'
import { TakeAgain } from './take-again'
import type { Photographs } from './use-photographs'

interface PhotographRemarksProps {
  readonly photograph: Photograph
  /** As it is called on the screen. */
  readonly name: string
  /** Absent where others of the survey are not at hand: then it is compared with none. */
  readonly survey?: Pick<Survey, 'rig' | 'photographs'> | undefined
  /** Absent where it is only looked at. */
  readonly photographs?: Photographs | undefined
  readonly onCamera?: ((photograph: Photograph) => void) | undefined
}

/** What may be wrong with a photograph for its check, and which it is like; nothing where nothing is to be said. */
export const PhotographRemarks = ({ photograph, name, survey, photographs, onCamera }: PhotographRemarksProps) => {
  const words = useWords()
  const warnings = sayWarnings(words, photograph)
  const alike = survey === undefined ? [] : alikeTo(photograph, survey.photographs)
  if (warnings.length + alike.length === 0) return null
  return (
    <div className={style.remarks}>
      {[...warnings, ...(survey === undefined ? [] : sayAlike(words, photograph, alike, survey))].map((sentence) => <p key={sentence}>{sentence}</p>)}
      {survey !== undefined && alike.length > 0 && <div><SideBySide photograph={photograph} alike={alike} survey={survey} /></div>}
      {photographs && warnings.length > 0 && <div><TakeAgain photograph={photograph} name={name} photographs={photographs} onCamera={onCamera} /></div>}
    </div>
  )
}
