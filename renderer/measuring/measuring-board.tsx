import { useCallback, useRef, useState, type ReactNode } from 'react'
import { photographAddress } from '../../shared-logic/contract/contract'
import type { MeasuredArea, Measurement } from '../../shared-logic/measuring/measurement'
import type { Photograph } from '../../shared-logic/survey/records'
import { measured as quantity } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { callPhotograph } from '../../shared-logic/words/say-photograph'
import { MarkedPicture } from '../marking/marked-picture'
import { Button } from '../parts/button'
import { ConfirmDialog } from '../parts/dialog'
import { Sheet } from '../parts/sheet'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import { pictureFiles } from '../parts/picture-files'
import bench from '../picture-board/bench.module.css'
import { begun, type History } from '../picture-board/history'
import { boardOf, emptyBoard, type Board } from './board'
import layout from './measuring.module.css'
import { browserEngine, type Engine } from './use-computing'
import { Workbench } from './workbench'

interface MeasuringBoardProps {
  /** Those of the check first, then the survey's others. */
  readonly photographs: readonly Photograph[]
  readonly measurement: Measurement | undefined
  readonly onFiles: (files: readonly File[]) => void
  readonly onCamera?: () => void
  /** How the taking in of added photographs goes. */
  readonly news: ReactNode
  readonly gradeOf: (result: MeasuredArea) => ReactNode
  readonly onKeep: (measurement: Measurement) => void
  readonly onClose: () => void
  readonly engine?: Engine
}

const firstBoard = (sha256: string, measurement: Measurement | undefined): History<Board> => begun(measurement?.sha256 === sha256 ? boardOf(measurement) : emptyBoard)

/** A corroded spot measured on one of the survey's photographs. */
export const MeasuringBoard = ({ photographs, measurement, onFiles, onCamera, news, gradeOf, onKeep, onClose, engine = browserEngine }: MeasuringBoardProps) => {
  const { measuring: said, camera } = useWords().screens
  const units = useUnits()
  const picker = useRef<HTMLInputElement>(null)
  const [chosen, setChosen] = useState(measurement?.sha256)
  const [boards, setBoards] = useState<Readonly<Record<string, History<Board>>>>({})
  const [measured, setMeasured] = useState<Measurement>()
  const [isLeaving, setLeaving] = useState(false)
  const photograph = photographs.find(({ sha256 }) => sha256 === chosen) ?? photographs[0]
  const sha256 = photograph?.sha256 ?? ''
  const history = boards[sha256] ?? firstBoard(sha256, measurement)
  const change = useCallback(
    (how: (history: History<Board>) => History<Board>) => setBoards((before) => ({ ...before, [sha256]: how(before[sha256] ?? firstBoard(sha256, measurement)) })),
    [sha256, measurement],
  )
  const leave = (): void => {
    if (Object.values(boards).some(({ past }) => past.length > 0)) setLeaving(true)
    else onClose()
  }
  const strip = (
    <fieldset className={layout.strip} aria-label={said.photographs}>
      {photographs.map((each) => (
        <button key={each.id} type="button" className={layout.choice} aria-pressed={each === photograph} aria-label={say(said.choose, { name: callPhotograph(each) }, units)} onClick={() => setChosen(each.sha256)}>
          <MarkedPicture photograph={each} size="small" alt="" className={layout.small} />
        </button>
      ))}
      <Button onPress={() => picker.current?.click()}>{said.add}</Button>
      {onCamera && <Button onPress={onCamera}>{camera.open}</Button>}
      <input ref={picker} type="file" accept={pictureFiles} multiple hidden onChange={(event) => { onFiles([...(event.currentTarget.files ?? [])]); event.currentTarget.value = '' }} />
      {news}
    </fieldset>
  )
  return (
    <Sheet
      title={said.title} onClose={leave}
      actions={<><p className={bench.foot}>{measured && say(said.result.areaWithin, { area: quantity('area', measured.result.areaM2), uncertainty: quantity('area', measured.result.uncertaintyM2) }, units)}</p><Button onPress={leave}>{said.cancel}</Button><Button kind="primary" isDisabled={measured === undefined} onPress={() => { if (measured) onKeep(measured) }}>{said.keep}</Button></>}
    >
      {photograph === undefined
        ? <div className={bench.left}><p>{said.none}</p>{strip}</div>
        : <Workbench key={sha256} picture={{ ...photograph, src: photographAddress(sha256, 'large') }} history={history} onHistory={change} onMeasured={setMeasured} gradeOf={gradeOf} engine={engine} above={strip} />}
      <ConfirmDialog title={said.discardTitle} isOpen={isLeaving} confirmLabel={said.discard} cancelLabel={said.stay} onConfirm={onClose} onCancel={() => setLeaving(false)}>
        <p>{said.discardText}</p>
      </ConfirmDialog>
    </Sheet>
  )
}
