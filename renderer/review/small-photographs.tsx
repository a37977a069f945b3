import { useState } from 'react'
import type { Photograph } from '../../shared-logic/survey/records'
import { callPhotograph } from '../../shared-logic/words/say-photograph'
import { PhotographViewer } from '../survey/photograph-viewer'
import { Thumbnail } from '../survey/thumbnail'
import style from './review.module.css'

interface SmallPhotographsProps {
  readonly photographs: readonly Photograph[]
  /** IANA zone of their survey. */
  readonly zone: string
  /** By id, their numbers in the report that is issued. */
  readonly numbers?: ReadonlyMap<string, number>
}

/** Photographs in a row, to be looked at large and not changed here. */
export const SmallPhotographs = ({ photographs, zone, numbers }: SmallPhotographsProps) => {
  const [viewed, setViewed] = useState<string>()
  return (
    <>
      <ul className={style.small}>
        {photographs.map((photograph) => <Thumbnail key={photograph.id} photograph={photograph} name={callPhotograph(photograph)} onPress={() => setViewed(photograph.id)} />)}
      </ul>
      {viewed !== undefined && <PhotographViewer list={photographs} viewedId={viewed} onView={setViewed} onClose={() => setViewed(undefined)} zone={zone} {...(numbers && { numbers })} />}
    </>
  )
}
