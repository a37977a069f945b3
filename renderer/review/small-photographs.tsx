import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Photograph } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { MarkedPicture } from '../marking/marked-picture'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { PhotographViewer } from '../survey/photograph-viewer'
import style from './review.module.css'

interface SmallPhotographsProps {
  readonly photographs: readonly Photograph[]
}

/** Photographs in a row, to be looked at large and not changed here. */
export const SmallPhotographs = ({ photographs }: SmallPhotographsProps) => {
  const said = useWords().screens.survey.photographs
  const units = useUnits()
  const [viewed, setViewed] = useState<string>()
  return (
    <>
      <ul className={style.small}>
        {photographs.map((photograph, index) => {
          const name = photograph.caption === '' ? say(said.number, { number: index + 1 }, units) : photograph.caption
          return (
            <li key={photograph.id}>
              <Button className={style.thumb ?? ''} onPress={() => setViewed(photograph.id)} aria-label={say(said.view, { name }, units)}>
                <MarkedPicture photograph={photograph} size="small" alt="" className={style.thumbPicture} />
              </Button>
            </li>
          )
        })}
      </ul>
      {viewed !== undefined && <PhotographViewer list={photographs} viewedId={viewed} onView={setViewed} onClose={() => setViewed(undefined)} />}
    </>
  )
}
