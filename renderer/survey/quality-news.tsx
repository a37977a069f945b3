import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { sayAlike, sayWarnings } from '../../shared-logic/words/say-photograph'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { PhotographNews } from './photograph-news'
import style from './quality-news.module.css'
import { TakeAgain } from './take-again'
import { useFocusKept } from './use-focus-kept'
import { useFreshConcerns, type Concern, type FreshConcerns } from './use-fresh-concerns'
import type { Photographs } from './use-photographs'

interface ArrivalNewsProps {
  readonly survey: Survey
  readonly photographs: Photographs
  readonly onCamera: (photograph: Photograph) => void
  /** Not where its check is no longer asked. */
  readonly canTakeAgain: (photograph: Photograph) => boolean
}

/** The latest ones are shown, those that may be of no use before those that look like others; a screen full of warnings is read by nobody. */
const mostShown = 2

/** All there is to be told of photographs on their way in and just arrived, in one place. */
export const ArrivalNews = (props: ArrivalNewsProps) => {
  const fresh = useFreshConcerns(props.survey)
  const kept = useFocusKept()
  return (
    <div className={style.arrivals} {...kept}>
      <QualityNews fresh={fresh} {...props} />
      <PhotographNews photographs={props.photographs} />
    </div>
  )
}

/** What may be wrong with photographs just taken in, said while the surveyor still stands there. They are kept either way. */
const QualityNews = ({ fresh: { concerns, understood }, ...props }: ArrivalNewsProps & { readonly fresh: FreshConcerns }) => {
  const said = useWords().screens.photographs
  const left = concerns.length - mostShown
  return (
    <output className={style.news} aria-label={said.heading} data-quiet={concerns.length === 0}>
      {concerns.length > 0 && (
        <>
          <ul className={style.list}>
            {concerns.toSorted((a, b) => Number(a.isWarned) - Number(b.isWarned)).slice(-mostShown).toReversed().map((concern) => <ConcernLine key={concern.photograph.id} concern={concern} {...props} />)}
          </ul>
          <div className={style.foot}>
            <span>{left > 0 && `${say(said.more, { count: left }, 'metric')} `}{said.onlySaid}</span>
            <Button onPress={understood}>{said.understood}</Button>
          </div>
        </>
      )}
    </output>
  )
}

interface ConcernLineProps extends ArrivalNewsProps {
  readonly concern: Concern
}

const ConcernLine = ({ concern: { photograph, isWarned, alike }, survey, photographs, onCamera, canTakeAgain }: ConcernLineProps) => {
  const words = useWords()
  const name = photograph.caption === '' ? photograph.fileName : photograph.caption
  return (
    <li className={style.line}>
      <MarkedPicture photograph={photograph} size="small" alt="" className={style.small} />
      <div className={style.told}>
        <p className={style.name}>{name}</p>
        {[...sayWarnings(words, photograph), ...sayAlike(words, photograph, alike, survey)].map((sentence) => <p key={sentence}>{sentence}</p>)}
      </div>
      {isWarned && canTakeAgain(photograph) && <TakeAgain photograph={photograph} name={name} photographs={photographs} onCamera={onCamera} />}
    </li>
  )
}
