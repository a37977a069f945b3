import { useCallback, useEffect, useMemo, useState, type ReactNode } from 'react'
import type { MeasuredArea, Measurement } from '../../shared-logic/measuring/measurement'
import type { PictureSize } from '../../shared-logic/measuring/picture-size'
import { isKnownLength } from '../../shared-logic/measuring/scale'
import { useWords } from '../parts/use-words'
import layout from '../picture-board/bench.module.css'
import { HistoryButtons } from '../picture-board/history-buttons'
import { put, type History } from '../picture-board/history'
import { wantedOf, type Board } from './board'
import style from './panel.module.css'
import { Result } from './result'
import { Stage, usualRadiusPx, type Tool } from './stage'
import { FaceStep, OutlineStep, ScaleStep } from './steps'
import { useComputing, type Engine } from './use-computing'
import type { BrushTip } from './use-stroke'

/** A photograph of the survey as the board takes it; px of the oriented original. */
export interface Picture extends PictureSize {
  readonly sha256: string
  readonly src: string
}

interface WorkbenchProps {
  readonly picture: Picture
  readonly history: History<Board>
  readonly onHistory: (change: (history: History<Board>) => History<Board>) => void
  /** Told what can be kept as the board stands; undefined while it cannot. */
  readonly onMeasured: (measurement: Measurement | undefined) => void
  readonly gradeOf: (result: MeasuredArea) => ReactNode
  readonly engine: Engine
  readonly above: ReactNode
}

const steps = ['scale', 'outline', 'face'] as const
type Step = (typeof steps)[number]

const toolFor = (step: Step, board: Board, tip: BrushTip): Tool => {
  if (step === 'scale') return { puts: board.scaleBy === 'length' ? 'length' : 'corners' }
  if (step === 'face') return { puts: 'face' }
  return board.outlineBy === 'polygon' ? { puts: 'polygon' } : { paints: board.outlineBy, tip }
}

const isTyped = (lengthM: number | undefined): boolean => lengthM !== undefined && isKnownLength(lengthM)

const isDone = (step: Step, { scaleBy, outlineBy, points, strokes, lengthM, widthM, heightM }: Board): boolean => {
  if (step === 'face') return points.face.length > 2
  if (step === 'scale') return scaleBy === 'length' ? points.length.length === 2 && isTyped(lengthM) : points.corners.length === 4 && isTyped(widthM) && isTyped(heightM)
  return outlineBy === 'finder' || (outlineBy === 'polygon' ? points.polygon.length > 2 : strokes.brush.length > 0)
}

/** One photograph on the bench: scale, outline, face, each a step; the result alongside. */
export const Workbench = ({ picture, history, onHistory, onMeasured, gradeOf, engine, above }: WorkbenchProps) => {
  const { measuring: said, pictureBoard: { notShown } } = useWords().screens
  const { sha256, widthPx, heightPx } = picture
  const size = useMemo(() => ({ widthPx, heightPx }), [widthPx, heightPx])
  const board = history.now
  const [step, setStep] = useState<Step>('scale')
  const [tip, setTip] = useState<BrushTip>(() => ({ does: 'adds', radiusPx: usualRadiusPx(size) }))
  const [image, setImage] = useState<HTMLImageElement>()
  const [isMissing, setMissing] = useState(false)
  const { wanted, waits } = useMemo(() => wantedOf(board, size), [board, size])
  const computed = useComputing(image, wanted, engine)
  const { result } = computed
  const change = (next: Board, gesture?: string): void => onHistory((before) => put(before, next, gesture))
  const showImage = useCallback((shown: HTMLImageElement) => setImage(shown), [])
  const missImage = useCallback(() => setMissing(true), [])
  useEffect(() => {
    onMeasured(wanted !== undefined && result !== undefined && waits === undefined ? { sha256, ...wanted.given, result } : undefined)
  }, [onMeasured, sha256, wanted, result, waits])
  return (
    <div className={layout.bench}>
      <div className={layout.left}>
        {above}
        {isMissing ? <p role="alert" className={layout.refused}>{notShown}</p> : <Stage src={picture.src} size={size} board={board} outline={computed.outline} tool={toolFor(step, board, tip)} onPut={change} history={<HistoryButtons history={history} onHistory={onHistory} />} onImage={showImage} onNoImage={missImage} />}
      </div>
      <div className={layout.panel}>
        <nav aria-label={said.steps.label} className={style.steps}>
          {steps.map((each) => (
            <button key={each} type="button" className={style.step} aria-current={each === step ? 'step' : undefined} onClick={() => setStep(each)}>
              {said.steps[each]}{isDone(each, board) && <small>{said.done}</small>}
            </button>
          ))}
        </nav>
        <div className={style.fields}>
          {step === 'scale' && <ScaleStep board={board} onPut={change} />}
          {step === 'outline' && <OutlineStep board={board} onPut={change} tip={tip} onTip={setTip} mostRadiusPx={usualRadiusPx(size) * 6} />}
          {step === 'face' && <FaceStep board={board} onPut={change} />}
        </div>
        <Result computed={computed} waits={waits} isByLength={board.scaleBy === 'length'} gradeOf={gradeOf} />
      </div>
    </div>
  )
}
