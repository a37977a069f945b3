import { useState, type RefObject } from 'react'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Survey } from '../../shared-logic/survey/records'
import { callPhotograph } from '../../shared-logic/words/say-photograph'
import { Button } from '../parts/button'
import { LinkButton } from '../parts/link-button'
import { pictureFiles } from '../parts/picture-files'
import { useWords } from '../parts/use-words'
import { PhotographViewer } from './photograph-viewer'
import style from './photographs.module.css'
import { photographsAt } from './survey-cache'
import { Thumbnail } from './thumbnail'
import type { Photographs } from './use-photographs'
import { placeOf } from './use-walk'

interface CheckPhotographsProps {
  readonly survey: Survey
  readonly assessed: Assessed
  readonly photographs: Photographs
  readonly picker: RefObject<HTMLInputElement | null>
  readonly onFiles: (files: readonly File[]) => void
  readonly onCamera: () => void
  readonly onPhone: () => void
}

/** The photographs of the open check: small pictures to open, and the way to add more. A finding without one says so. */
export const CheckPhotographs = ({ survey, assessed, photographs, picker, onFiles, onCamera, onPhone }: CheckPhotographsProps) => {
  const words = useWords()
  const said = words.screens.survey.photographs
  const here = photographsAt(survey, placeOf(assessed))
  const [viewed, setViewed] = useState<string>()
  const isFinding = assessed.verdict === 'fail' || assessed.verdict === 'advisory'
  return (
    <section aria-label={said.title} className={style.section}>
      {here.length > 0 && (
        <ul className={style.strip}>
          {here.map((photograph) => <Thumbnail key={photograph.id} photograph={photograph} name={callPhotograph(photograph)} onPress={() => setViewed(photograph.id)} />)}
        </ul>
      )}
      <div className={style.add}>
        <Button onPress={() => picker.current?.click()} aria-keyshortcuts="P">{said.add}</Button>
        <Button onPress={onCamera} aria-keyshortcuts="T">{words.screens.camera.open}</Button>
        <Button onPress={onPhone} aria-keyshortcuts="U">{words.screens.phone.panel.open}</Button>
        <input
          ref={picker} type="file" accept={pictureFiles} multiple hidden
          onChange={(event) => { onFiles([...(event.currentTarget.files ?? [])]); event.currentTarget.value = '' }}
        />
        {isFinding && assessed.check.photograph === true && here.length === 0
          ? <span className={style.soft}>{words.screens.survey.check.wantsPhotograph}</span>
          : <span className={style.byPointer}>{said.drop}</span>}
        {survey.photographs.length > 0 && <span className={style.sheetLink}><LinkButton to={`/surveys/${survey.id}/photographs`} kind="quiet">{words.screens.contactSheet.link}</LinkButton></span>}
      </div>
      {viewed !== undefined && here.length > 0 && <PhotographViewer list={here} viewedId={viewed} onView={setViewed} onClose={() => setViewed(undefined)} photographs={photographs} survey={survey} zone={survey.zone} onCamera={onCamera} />}
    </section>
  )
}
