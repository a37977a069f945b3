import { useEffect, useRef } from 'react'
import { Link } from 'wouter'
import type { CorrosionSurvey } from '../../shared-logic/survey/records'
import { sayGrade } from '../../shared-logic/words/corrosion/grade'
import { sayLife } from '../../shared-logic/words/corrosion/life'
import type { CorrosionSection } from '../../shared-logic/words/corrosion/section'
import { sayTrail } from '../../shared-logic/words/corrosion/trail'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { VerdictMark } from '../parts/verdict-mark'
import type { NumberedTrail } from './numbered-trails'
import { TrailCurves } from './trail-curves'
import style from './trail-panel.module.css'
import { TrailPhotographs } from './trail-photographs'

const Told = ({ title, section: { lines, sources, cautions } }: { readonly title: string; readonly section: CorrosionSection }) => {
  const { spot } = useWords().screens.corrosion
  return (
    <section className={style.told}>
      <h3>{title}</h3>
      <ul>{lines.map(({ text, verdict }) => <li key={text}>{verdict && <VerdictMark verdict={verdict} />}<span>{text}</span></li>)}</ul>
      {cautions.length > 0 && <p className={style.soft}>{spot.cautions}: {cautions.join(' ')}</p>}
      {sources.length > 0 && <details className={style.sources}><summary>{spot.sources}</summary><ul>{sources.map((source) => <li key={source}>{source}</li>)}</ul></details>}
    </section>
  )
}

interface TrailPanelProps {
  readonly spot: NumberedTrail
  readonly surveys: readonly CorrosionSurvey[]
  readonly onClose: () => void
}

/** The surveys that looked at the spot, each a step to where it was noted. */
const Surveys = ({ spot: { trail }, surveys }: Pick<TrailPanelProps, 'spot' | 'surveys'>) => {
  const { spot: said, underWay } = useWords().screens.corrosion
  const looked = surveys.filter(({ surveyId }) => trail.points.some((point) => point.surveyId === surveyId))
  return (
    <ul className={style.surveys}>
      {looked.map(({ surveyId, date, status }) => (
        <li key={surveyId}><Link to={status === 'under way' ? `/surveys/${surveyId}` : `/surveys/${surveyId}/report`}>{say(said.toSurvey, { date: { date } }, 'metric')}</Link>{status === 'under way' && `, ${underWay}`}</li>
      ))}
    </ul>
  )
}

/** One spot over the years: photographs at one scale, curves, and in sentences its course, the life of its zinc and its grade. */
export const TrailPanel = ({ spot, surveys, onClose }: TrailPanelProps) => {
  const words = useWords()
  const { drawing, spot: said } = words.screens.corrosion
  const units = useUnits()
  const heading = useRef<HTMLHeadingElement>(null)
  const { number, trail } = spot
  useEffect(() => {
    heading.current?.focus()
    heading.current?.scrollIntoView({ block: 'start' })
  }, [number])
  return (
    <section className={style.panel} aria-labelledby="spot-open">
      <div className={style.head}>
        <h2 id="spot-open" ref={heading} tabIndex={-1}>{say(drawing.spot, { number, place: trail.last.spot.place }, units)}</h2>
        <Button onPress={onClose}>{said.close}</Button>
      </div>
      <Told title={said.course} section={sayTrail(words, trail, units)} />
      <TrailPhotographs trail={trail} />
      <TrailCurves trail={trail} />
      <div className={style.columns}>
        <Told title={words.corrosion.life.title} section={sayLife(words, trail.life, units)} />
        <Told title={say(said.grade, { date: { date: trail.last.date } }, units)} section={sayGrade(words, trail.last.grading, units)} />
      </div>
      <Surveys spot={spot} surveys={surveys} />
    </section>
  )
}
