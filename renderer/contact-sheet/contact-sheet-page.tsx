import { useRef, useState } from 'react'
import type { Survey } from '../../shared-logic/survey/records'
import { sayDate, say } from '../../shared-logic/words/say'
import { useQueryOf } from '../client/use-procedure'
import { Button } from '../parts/button'
import { EmptyState } from '../parts/empty-state'
import { LoadProblem } from '../parts/load-problem'
import { Page } from '../parts/page'
import { pictureFiles } from '../parts/picture-files'
import { Waiting } from '../parts/progress'
import { useWords } from '../parts/use-words'
import { PhotographDrop } from '../survey/photograph-drop'
import { PhotographNews } from '../survey/photograph-news'
import { SurveyCamera } from '../survey/survey-camera'
import { usePhotographs, type Photographs } from '../survey/use-photographs'
import { ContactSheet } from './contact-sheet'
import { SheetNews } from './sheet-news'
import { useKeptFocus } from './use-kept-focus'
import { useSheetActs, type Done } from './use-sheet-acts'

interface ContactSheetPageProps {
  readonly surveyId: string
}

/** The contact sheet of a survey. One whose report is issued is looked at only. */
export const ContactSheetPage = ({ surveyId }: ContactSheetPageProps) => {
  const words = useWords()
  const said = words.screens.contactSheet
  const { data: survey, error, refetch } = useQueryOf('surveys.get', { surveyId })
  const intake = usePhotographs(surveyId)
  const picker = useRef<HTMLInputElement>(null)
  const [isCameraOpen, setCameraOpen] = useState(false)
  const isUnderWay = survey?.status === 'under way'
  const crumbs = survey
    ? [{ label: survey.rigName, to: `/rigs/${survey.rigId}` }, isUnderWay ? { label: said.walk, to: `/surveys/${surveyId}` } : { label: said.report, to: `/surveys/${surveyId}/report` }]
    : []
  const add = (files: readonly File[]): void => intake.add(files)
  return (
    <Page
      title={survey ? say(said.title, { rig: survey.rigName }, 'metric') : said.titleAlone} crumbs={crumbs} width={survey ? 'full' : 'reading'}
      subtitle={survey && `${words.purposes[survey.purpose]}, ${sayDate(survey.surveyDate)}`}
      actions={isUnderWay && survey.photographs.length > 0 && <><Button onPress={() => picker.current?.click()}>{said.add}</Button><Button onPress={() => setCameraOpen(true)}>{words.screens.camera.open}</Button></>}
    >
      {error && <LoadProblem error={error} onRetry={() => void refetch()} />}
      {survey === undefined && !error && <Waiting />}
      {isUnderWay && (
        <>
          <input
            ref={picker} type="file" accept={pictureFiles} multiple hidden
            onChange={(event) => { add([...(event.currentTarget.files ?? [])]); event.currentTarget.value = '' }}
          />
          <PhotographDrop onFiles={add} dropNow={said.dropNow}><Sheet survey={survey} intake={intake} onAdd={() => picker.current?.click()} onCamera={() => setCameraOpen(true)} /></PhotographDrop>
          {isCameraOpen && <SurveyCamera survey={survey} name={survey.rigName} photographs={intake} onClose={() => setCameraOpen(false)} />}
        </>
      )}
      {survey?.status === 'issued' && <Sheet survey={survey} intake={intake} />}
    </Page>
  )
}

interface SheetProps {
  readonly survey: Survey
  readonly intake: Photographs
  readonly onAdd?: () => void
  /** Opens the camera, for photographs of no check yet. */
  readonly onCamera?: () => void
}

/** The last ones cannot have been moved to anywhere: they were removed. */
const nowhere = (): string => ''

const Sheet = ({ survey, intake, onAdd, onCamera }: SheetProps) => {
  const { contactSheet: said, camera } = useWords().screens
  const acts = useSheetActs(survey.id)
  const around = useRef<HTMLDivElement>(null)
  const keepFocus = useKeptFocus(around)
  const undo = (done: Done): void => {
    keepFocus(done.photographs[0]?.id)
    done.undo()
  }
  return (
    <div ref={around}>
      {survey.photographs.length > 0 ? <ContactSheet survey={survey} intake={intake} acts={acts} keepFocus={keepFocus} onUndo={undo} /> : (
        <>
          <PhotographNews photographs={intake} />
          <SheetNews done={acts.done?.kind === 'removed' ? acts.done : undefined} whereIs={nowhere} onUndo={undo} onForget={() => { keepFocus(); acts.forget() }} />
          <EmptyState title={said.empty} actions={onAdd && <><Button kind="primary" onPress={onAdd}>{said.add}</Button>{onCamera && <Button onPress={onCamera}>{camera.open}</Button>}</>}><p>{onAdd ? said.emptyHelp : said.emptyIssued}</p></EmptyState>
        </>
      )}
    </div>
  )
}
