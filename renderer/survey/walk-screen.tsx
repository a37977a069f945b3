import { useState } from 'react'
import { placeKey } from '../../shared-logic/survey/keys'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { EmptyState } from '../parts/empty-state'
import { KeysDialog } from '../parts/keys-dialog'
import { LinkButton } from '../parts/link-button'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { PhoneCorner } from '../phone-panel/phone-corner'
import { OpenCheck } from './open-check'
import { ArrivalNews } from './quality-news'
import { RigMap } from './rig-map'
import { SavedState } from './saved-state'
import { StationChecks } from './station-checks'
import { StationList } from './station-list'
import { usePhotographs } from './use-photographs'
import { useSingleKeys } from './use-single-keys'
import { useVerdictNews } from './use-verdict-news'
import { useWalk, type Walk } from './use-walk'
import style from './walk-screen.module.css'

interface WalkScreenProps {
  readonly survey: Survey
  /** The check to open, when the surveyor comes from the review. */
  readonly startAt: string | undefined
}

/** The walk round the rig: the drawing as the way in, the stations, and the one check that is open. */
export const WalkScreen = ({ survey, startAt }: WalkScreenProps) => {
  const { walk: said } = useWords().screens.survey
  const walk = useWalk(survey, startAt)
  const news = useVerdictNews(walk)
  if (walk === undefined)
    return <EmptyState title={said.nothingAsked} actions={<LinkButton to={`/rigs/${survey.rigId}/edit`} kind="primary">{said.editRig}</LinkButton>}><p>{said.nothingAskedHelp}</p></EmptyState>
  return (
    <div className={style.board}>
      <output className="visually-hidden">{news}</output>
      <StationList walk={walk} />
      <div className={style.map}><RigMap walk={walk} /></div>
      <Station walk={walk} />
    </div>
  )
}

const Station = ({ walk }: { readonly walk: Walk }) => {
  const words = useWords()
  const units = useUnits()
  const { walk: said, keys: keyWords } = words.screens.survey
  const photographs = usePhotographs(walk.survey.id)
  const [areKeysOn, turnKeys] = useSingleKeys()
  const [shown, setShown] = useState<'keys' | 'drawing' | 'phone'>()
  const [cameAt] = useState(walk.current.key)
  const [hasMoved, setMoved] = useState(false)
  const [isCameraAsked, askCamera] = useState(false)
  /** To the check it belongs to, with the camera open. */
  const openCameraAt = ({ checkId, position }: Photograph): void => {
    walk.goTo(placeKey(checkId ?? '', position ?? ''))
    askCamera(true)
  }
  const isAsked = ({ checkId, position }: Photograph): boolean => walk.assessed.some(({ key }) => key === placeKey(checkId ?? '', position ?? ''))
  if (!hasMoved && walk.current.key !== cameAt) setMoved(true)
  return (
    <section className={style.station} aria-labelledby="station">
      <header className={style.head}>
        <h2 id="station" className={style.title}>{say(said.stationHeading, { number: walk.stop.number, station: words.stations[walk.stop.station] }, units)}</h2>
        <SavedState walk={walk} />
        <span className={style.sheetLink}><LinkButton to={`/surveys/${walk.survey.id}/photographs`} kind="quiet">{words.screens.contactSheet.link}</LinkButton></span>
        <span className={style.drawingButton}><Button kind="quiet" onPress={() => setShown('drawing')}>{said.showDrawing}</Button></span>
        <span className={style.keysButton}><Button kind="quiet" onPress={() => setShown('keys')} aria-keyshortcuts="?">{keyWords.open}</Button></span>
      </header>
      <PhoneCorner survey={walk.survey} isPanelOpen={shown === 'phone'} onPanel={(isOpen) => setShown(isOpen ? 'phone' : undefined)} />
      <ArrivalNews survey={walk.survey} photographs={photographs} onCamera={openCameraAt} canTakeAgain={isAsked} />
      <StationChecks walk={walk} key={walk.stop.station}>
        <OpenCheck key={walk.current.key} walk={walk} photographs={photographs} areKeysOn={areKeysOn} onHelp={() => setShown('keys')} onPhone={() => setShown('phone')} hasMoved={hasMoved} isCameraAsked={isCameraAsked} onCameraClosed={() => askCamera(false)} />
      </StationChecks>
      <KeysDialog keys={keyWords} isOpen={shown === 'keys'} onClose={() => setShown(undefined)} isOn={areKeysOn} onTurn={turnKeys} />
      <Dialog title={said.drawing} isOpen={shown === 'drawing'} onClose={() => setShown(undefined)} actions={<Button onPress={() => setShown(undefined)}>{keyWords.close}</Button>}>
        <div className={style.floating}><RigMap walk={walk} onGone={() => setShown(undefined)} /></div>
      </Dialog>
    </section>
  )
}
