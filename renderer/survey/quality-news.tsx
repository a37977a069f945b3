import { useState } from 'react'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import type { Words } from '../../shared-logic/words/en'
import { callPhotograph, sayAlike, sayWarnings, shortWarnings } from '../../shared-logic/words/say-photograph'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { useWords } from '../parts/use-words'
import { PhotographNews } from './photograph-news'
import style from './quality-news.module.css'
import { SideBySide } from './side-by-side'
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

/** 'Look again: blurred', or how many there are. */
const sayBriefly = (words: Words, concerns: readonly Concern[]): string => {
  const said = words.screens.photographs
  const [first] = concerns
  if (first === undefined || concerns.length > 1) return say(said.look, { count: concerns.length }, 'metric')
  const short = shortWarnings(words, first.photograph).map((warning) => warning.toLowerCase())
  return say(said.lookOne, { warnings: [...short, ...(first.alike.length > 0 ? [said.lookAlike] : [])].join(', ') }, 'metric')
}

/**
 * What may be wrong with photographs just taken in, said while the surveyor still stands there. They are kept either way.
 * Where there is little room it is one line, which opens the rest.
 */
const QualityNews = ({ fresh: { concerns, understood }, ...props }: ArrivalNewsProps & { readonly fresh: FreshConcerns }) => {
  const words = useWords()
  const said = words.screens.photographs
  const [isOpen, setOpen] = useState(false)
  const left = concerns.length - mostShown
  const note = (): void => {
    setOpen(false)
    understood()
  }
  return (
    <output className={style.news} aria-label={said.heading} data-quiet={concerns.length === 0} data-open={isOpen}>
      {concerns.length > 0 && (
        <>
          <div className={style.head}>
            <span className={style.brief}><Button kind="quiet" aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>{sayBriefly(words, concerns)}</Button></span>
            <span className={style.kept}>{left > 0 && `${say(said.more, { count: left }, 'metric')} `}{said.onlySaid}</span>
            <Button onPress={note}>{said.understood}</Button>
          </div>
          <ul className={style.list}>
            {concerns.toSorted((a, b) => Number(a.isWarned) - Number(b.isWarned)).slice(-mostShown).toReversed().map((concern) => <ConcernLine key={concern.photograph.id} concern={concern} {...props} />)}
          </ul>
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
  const name = callPhotograph(photograph)
  return (
    <li className={style.line}>
      <MarkedPicture photograph={photograph} size="small" alt="" className={style.small} />
      <div className={style.told}>
        <p className={style.name}>{name}</p>
        {[...sayWarnings(words, photograph), ...sayAlike(words, photograph, alike, survey)].map((sentence) => <p key={sentence}>{sentence}</p>)}
      </div>
      <div className={style.acts}>
        {alike.length > 0 && <SideBySide photograph={photograph} alike={alike} survey={survey} />}
        {isWarned && canTakeAgain(photograph) && <TakeAgain photograph={photograph} name={name} photographs={photographs} onCamera={onCamera} />}
      </div>
    </li>
  )
}
