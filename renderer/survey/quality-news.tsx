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
import { useFreshConcerns, type Concern } from './use-fresh-concerns'
import { useOverflow } from './use-overflow'
import type { Photographs } from './use-photographs'

interface ArrivalNewsProps {
  readonly survey: Survey
  readonly photographs: Photographs
  readonly onCamera: (photograph: Photograph) => void
  /** Not where its check is no longer asked. */
  readonly canTakeAgain: (photograph: Photograph) => boolean
  /** By id: of these nothing is said here. */
  readonly leftOut?: ReadonlySet<string>
  /** How it is said that one was removed; of its name where this says nothing. */
  readonly removedSays?: string | undefined
}

/** As many stand in the list at once, to be read and put away together; the others come after them. */
const mostShown = 20
const none: ReadonlySet<string> = new Set()

/** All there is to be told of photographs on their way in and just arrived, in one place. It never covers more than a third of the screen. */
export const ArrivalNews = (props: ArrivalNewsProps) => {
  const said = useWords().screens.photographs
  const { survey, photographs, leftOut = none, removedSays } = props
  const fresh = useFreshConcerns(survey, photographs)
  const { ref, ...kept } = useFocusKept()
  const isScrolled = useOverflow(ref)
  return (
    <div ref={ref} className={style.arrivals} {...kept} data-scrolled={isScrolled} {...(isScrolled && { tabIndex: 0, role: 'region', 'aria-label': said.news })}>
      <div>
        <PhotographNews photographs={photographs} removedSays={removedSays} />
        <QualityNews concerns={fresh.filter(({ photograph }) => !leftOut.has(photograph.id))} {...props} />
      </div>
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
 * Where there is little room it is one line, which opens the rest; several are put away only where they were shown.
 */
const QualityNews = ({ concerns, ...props }: ArrivalNewsProps & { readonly concerns: readonly Concern[] }) => {
  const words = useWords()
  const said = words.screens.photographs
  const [isOpen, setOpen] = useState(false)
  const shown = concerns.slice(0, mostShown)
  const left = concerns.length - shown.length
  const note = (): void => {
    setOpen(false)
    props.photographs.note(shown.map(({ photograph }) => photograph))
  }
  return (
    <output className={style.news} aria-label={said.heading} data-quiet={concerns.length === 0} data-open={isOpen}>
      {concerns.length > 0 && (
        <>
          <div className={style.head}>
            <span className={style.brief}><Button kind="quiet" aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>{sayBriefly(words, concerns)}</Button></span>
            <span className={style.kept}>{[...(concerns.length > 1 ? [say(said.several, { count: concerns.length }, 'metric')] : []), said.onlySaid].join(' ')}</span>
            <span className={style.noted} data-several={concerns.length > 1}><Button onPress={note}>{said.understood}</Button></span>
          </div>
          <ul className={style.list}>
            {shown.map((concern) => <ConcernLine key={concern.photograph.id} concern={concern} {...props} />)}
          </ul>
          {left > 0 && <p className={style.left}>{say(said.more, { count: left }, 'metric')}</p>}
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
