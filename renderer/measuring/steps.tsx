import { Button } from '../parts/button'
import { ChoiceField } from '../parts/choice-field'
import { useWords } from '../parts/use-words'
import bench from '../picture-board/bench.module.css'
import { KnownLengthField } from '../picture-board/known-length-field'
import { mostStrokes, outlineWays, scaleKinds, withPoints, type Board } from './board'
import style from './panel.module.css'
import { Slider } from './slider'
import type { BrushTip } from './use-stroke'

interface StepProps {
  readonly board: Board
  readonly onPut: (board: Board, gesture?: string) => void
}

const ClearPoints = ({ board, onPut, list }: StepProps & { readonly list: 'length' | 'corners' | 'polygon' | 'face' }) => {
  const said = useWords().screens.measuring
  return board.points[list].length === 0 ? null : <Button kind="quiet" onPress={() => onPut(withPoints(board, list, []))}>{said.clear}</Button>
}

/** The known length, or the known rectangle with its sides. */
export const ScaleStep = ({ board, onPut }: StepProps) => {
  const said = useWords().screens.measuring
  const { scaleBy } = board
  const field = (label: string, key: 'lengthM' | 'widthM' | 'heightM') => (
    <KnownLengthField label={label} value={board[key]} onChange={(value) => onPut({ ...board, [key]: value }, key)} />
  )
  return (
    <>
      <ChoiceField label={said.scale.by} value={scaleBy} options={scaleKinds.map((value) => ({ value, label: said.scale.kinds[value] }))} onChange={(next) => onPut({ ...board, scaleBy: next })} />
      <p className={style.tell}>{said.scale.tell[scaleBy]}</p>
      {scaleBy === 'length' ? field(said.scale.length, 'lengthM') : <>{field(said.scale.width, 'widthM')}{field(said.scale.height, 'heightM')}</>}
      <ClearPoints board={board} onPut={onPut} list={scaleBy === 'length' ? 'length' : 'corners'} />
    </>
  )
}

interface OutlineStepProps extends StepProps {
  readonly tip: BrushTip
  readonly onTip: (tip: BrushTip) => void
  readonly mostRadiusPx: number
}

const does = ['adds', 'erases'] as const

const BrushFields = ({ board, onPut, tip, onTip, mostRadiusPx }: OutlineStepProps) => {
  const said = useWords().screens.measuring.outline
  const on = board.outlineBy === 'finder' ? 'finder' : 'brush'
  const count = board.strokes[on].length
  return (
    <>
      <ChoiceField label={said.stroke} value={tip.does} options={does.map((value) => ({ value, label: said.does[value] }))} onChange={(next) => onTip({ ...tip, does: next })} />
      <Slider label={said.size} value={tip.radiusPx} min={2} max={mostRadiusPx} step={1} says={`${Math.round(tip.radiusPx * 2)} px`} onChange={(radiusPx) => onTip({ ...tip, radiusPx })} />
      {count > 0 && <Button kind="quiet" onPress={() => onPut({ ...board, strokes: { ...board.strokes, [on]: [] } })}>{said.clearStrokes}</Button>}
      {count >= mostStrokes && <p className={bench.refused}>{said.strokesFull}</p>}
    </>
  )
}

/** How the spot is outlined: by points, by brush, or found by colour and corrected. */
export const OutlineStep = (props: OutlineStepProps) => {
  const { board, onPut } = props
  const said = useWords().screens.measuring.outline
  return (
    <>
      <ChoiceField label={said.by} value={board.outlineBy} options={outlineWays.map((value) => ({ value, label: said.ways[value] }))} onChange={(next) => onPut({ ...board, outlineBy: next })} />
      <p className={style.tell}>{said.tell[board.outlineBy]}</p>
      {board.outlineBy === 'polygon' && <ClearPoints board={board} onPut={onPut} list="polygon" />}
      {board.outlineBy === 'finder' && (
        <Slider
          label={said.sensitivity} hint={said.sensitivityHint} value={board.sensitivity} min={0} max={1} step={0.01} says={`${Math.round(board.sensitivity * 100)} %`}
          onChange={(sensitivity) => onPut({ ...board, sensitivity }, 'sensitivity')}
        />
      )}
      {board.outlineBy !== 'polygon' && <BrushFields {...props} />}
    </>
  )
}

/** The face the spot lies on, for its share. */
export const FaceStep = ({ board, onPut }: StepProps) => {
  const said = useWords().screens.measuring
  return (
    <>
      <p className={style.tell}>{said.face.tell}</p>
      {board.points.face.length === 0 && <p className={bench.soft}>{said.face.none}</p>}
      <ClearPoints board={board} onPut={onPut} list="face" />
    </>
  )
}
