import { useState } from 'react'
import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { PhotographViewer } from '../survey/photograph-viewer'
import { Thumbnail } from '../survey/thumbnail'
import style from './review.module.css'

interface SmallPhotographsProps {
  readonly photographs: readonly Photograph[]
  /** IANA zone of their survey. */
  readonly zone: string
}

/** Photographs in a row, to be looked at large and not changed here. */
export const SmallPhotographs = ({ photographs, zone }: SmallPhotographsProps) => {
  const said = useWords().screens.survey.photographs
  const units = useUnits()
  const [viewed, setViewed] = useState<string>()
  return (
    <>
      <ul className={style.small}>
        {photographs.map((photograph, index) => {
          const name = photograph.caption === '' ? say(said.number, { number: index + 1 }, units) : photograph.caption
          return <Thumbnail key={photograph.id} photograph={photograph} name={name} onPress={() => setViewed(photograph.id)} />
        })}
      </ul>
      {viewed !== undefined && <PhotographViewer list={photographs} viewedId={viewed} onView={setViewed} onClose={() => setViewed(undefined)} zone={zone} />}
    </>
  )
}
