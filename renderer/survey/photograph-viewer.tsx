import { useState } from 'react'
import { sayLengthsHold } from '../../shared-logic/marking/say-marks'
import type { Photograph, Survey } from '../../shared-logic/survey/records'
import { say } from '../../shared-logic/words/say'
import { callPhotograph } from '../../shared-logic/words/say-photograph'
import { MarkingBoard } from '../marking/marking-board'
import { useReader } from '../marking/use-reader'
import { Button } from '../parts/button'
import { Dialog } from '../parts/dialog'
import { TextField } from '../parts/text-field'
import { TurnSign } from '../parts/turn-sign'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { FromCamera } from './from-camera'
import { PhotographFrame } from './photograph-frame'
import { PhotographRemarks } from './photograph-remarks'
import style from './photographs.module.css'
import { useBufferedText } from './use-buffered-text'
import type { Photographs } from './use-photographs'
import { useSingleKeys } from './use-single-keys'
import { useViewerKeys } from './use-viewer-keys'

interface PhotographViewerProps {
  readonly list: readonly Photograph[]
  readonly viewedId: string
  readonly onView: (id: string) => void
  readonly onClose: () => void
  /** Absent where the survey is frozen: then it is only looked at. */
  readonly photographs?: Photographs
  /** With it, it is said which others of the survey look alike. */
  readonly survey?: Pick<Survey, 'rig' | 'photographs'>
  /** IANA zone the survey is made in. */
  readonly zone: string
  /** By id, their numbers in the report that is issued. */
  readonly numbers?: ReadonlyMap<string, number>
  /** Opens the camera, to take one again. */
  readonly onCamera?: () => void
}

/** The whole of it at first, however high it is; then so many times that. */
const zooms = [1, 1.5, 2, 3, 4, 6] as const

/** One photograph, large: closer, turned, its caption, what the camera wrote, the way to the next, and away with it. */
export const PhotographViewer = ({ list, viewedId, onView, onClose, photographs, survey, zone, numbers, onCamera }: PhotographViewerProps) => {
  const { survey: { photographs: said }, marking } = useWords().screens
  const units = useUnits()
  const reader = useReader()
  const index = Math.max(0, list.findIndex((each) => each.id === viewedId))
  const photograph = list[index]
  const [zoom, setZoom] = useState(0)
  const [isMarking, setMarking] = useState(false)
  const [areKeysOn] = useSingleKeys()
  const turn = photograph && photographs && ((quarters: 1 | -1): void => photographs.turn(photograph, quarters))
  useViewerKeys(turn, areKeysOn && !isMarking)
  if (photograph === undefined) return null
  const lengthsHold = sayLengthsHold(photograph.marks, reader)
  const name = callPhotograph(photograph)
  const number = numbers?.get(photograph.id)
  const step = (by: number): void => {
    const to = list[index + by]
    if (to) onView(to.id)
  }
  const remove = (): void => {
    photographs?.remove(photograph)
    onClose()
  }
  return (
    <Dialog
      title={name} isOpen isWide hasFoot onClose={onClose}
      actions={<>{photographs && <><Button onPress={remove}>{said.remove}</Button><Button onPress={() => setMarking(true)}>{marking.open}</Button></>}<Button kind="primary" onPress={onClose}>{said.close}</Button></>}
    >
      <div className={style.viewer}>
        <div className={style.picture}>
          <PhotographFrame photograph={photograph} name={name} closer={zooms[zoom] ?? 1} />
          <div className={style.tools}>
            <div className={style.ways}>
              <WayButton isAtEnd={index === 0} onPress={() => step(-1)}>{said.previous}</WayButton>
              <output className={style.position}>{say(said.position, { number: index + 1, total: list.length }, units)}</output>
              <WayButton isAtEnd={index === list.length - 1} onPress={() => step(1)}>{said.next}</WayButton>
            </div>
            <div className={style.ways}>
              {turn && (
                <>
                  <Button kind="quiet" onPress={() => turn(-1)} aria-label={said.turnLeft} aria-keyshortcuts="L"><TurnSign to="left" /></Button>
                  <Button kind="quiet" onPress={() => turn(1)} aria-label={said.turnRight} aria-keyshortcuts="R"><TurnSign to="right" /></Button>
                </>
              )}
              <WayButton isAtEnd={zoom === 0} onPress={() => setZoom(zoom - 1)}>{said.zoomOut}</WayButton>
              <WayButton isAtEnd={zoom === zooms.length - 1} onPress={() => setZoom(zoom + 1)}>{said.zoomIn}</WayButton>
            </div>
          </div>
        </div>
        <div className={style.words}>
          <PhotographRemarks key={photograph.sha256} photograph={photograph} name={name} survey={survey} photographs={photographs} onCamera={onCamera && (() => { onClose(); onCamera() })} />
          {number !== undefined && <p className={style.soft}>{say(said.inReport, { number }, units)}</p>}
          {photographs && <CaptionField key={photograph.id} photograph={photograph} photographs={photographs} />}
          {lengthsHold !== undefined && <p className={style.soft}>{lengthsHold}</p>}
          <FromCamera photograph={photograph} zone={zone} />
        </div>
      </div>
      {photographs && isMarking && <MarkingBoard photograph={photograph} onKeep={(layer) => photographs.mark(photograph, layer)} onClose={() => setMarking(false)} />}
    </Dialog>
  )
}

interface WayButtonProps {
  readonly isAtEnd: boolean
  readonly onPress: () => void
  readonly children: string
}

/** At its end it does nothing, yet keeps the focus: disabled it would lose it to the page, and Escape with it. */
const WayButton = ({ isAtEnd, onPress, children }: WayButtonProps) => (
  <Button kind="quiet" aria-disabled={isAtEnd} onPress={() => { if (!isAtEnd) onPress() }}>{children}</Button>
)

const CaptionField = ({ photograph, photographs }: { readonly photograph: Photograph; readonly photographs: Photographs }) => {
  const said = useWords().screens.survey.photographs
  const { text, write, keep } = useBufferedText(photograph.caption, (caption) => photographs.describe(photograph, caption))
  return <TextField label={said.caption} hint={said.captionHint} value={text} onChange={write} onBlur={keep} maxLength={400} />
}
