import { Label, Slider, SliderOutput, SliderThumb, SliderTrack } from 'react-aria-components'
import type { Field } from '../../shared-logic/checks/check'
import { dragRanges, instrumentDrawing } from '../../shared-logic/drawings/instruments'
import { formatQuantity } from '../../shared-logic/units/convert'
import { DrawingView } from '../drawing/drawing-view'
import { QuantityField } from '../parts/quantity-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './answer-fields.module.css'

interface AnswerReadingProps {
  readonly field: Extract<Field, { kind: 'reading' }>
  readonly label: string
  readonly hint: string | undefined
  readonly error: string | undefined
  readonly value: number | undefined
  readonly onType: (value: number | undefined, isReadable: boolean) => void
  readonly onEnter: () => void
}

const clamp = (value: number, min: number, max: number): number => Math.min(max, Math.max(min, value))

/** A measured value: typed with its unit, or dragged until the drawn instrument looks like the real one. */
export const AnswerReading = ({ field, label, hint, error, value, onType, onEnter }: AnswerReadingProps) => {
  const range = field.drawing && dragRanges[field.drawing]
  return (
    <div className={field.drawing ? style.reading : undefined}>
      <QuantityField
        label={label} quantity={field.quantity} value={value} hint={hint} error={error} onSubmit={onEnter}
        onChange={(si, problem) => onType(si, problem === undefined)}
      />
      {field.drawing !== undefined && range === undefined && <DrawnInstrument field={field} label={label} value={value} />}
      {field.drawing !== undefined && range !== undefined && (
        <DraggedInstrument field={field} label={label} value={value} onDrag={(si) => onType(si, true)} min={Math.max(range.min, field.min)} max={Math.min(range.max, field.max)} step={range.step} />
      )}
    </div>
  )
}

const DrawnInstrument = ({ field, label, value }: Pick<AnswerReadingProps, 'field' | 'label' | 'value'>) =>
  field.drawing && <div className={style.instrument}><DrawingView drawing={instrumentDrawing(field.drawing, value)} title={label} /></div>

interface DraggedInstrumentProps extends Pick<AnswerReadingProps, 'field' | 'label' | 'value'> {
  readonly onDrag: (si: number) => void
  readonly min: number
  readonly max: number
  readonly step: number
}

/** The thumb stands in the middle until a value is given, and says that none is. */
const DraggedInstrument = ({ field, label, value, onDrag, min, max, step }: DraggedInstrumentProps) => {
  const { check, walk } = useWords().screens.survey
  const units = useUnits()
  const shown = value === undefined ? (min + max) / 2 : clamp(value, min, max)
  return (
    <div className={style.instrument}>
      {field.drawing && <DrawingView drawing={instrumentDrawing(field.drawing, value)} title={label} />}
      <Slider className={style.slider ?? ''} value={shown} minValue={min} maxValue={max} step={step} onChange={(next) => onDrag(Number(next.toFixed(6)))}>
        <Label className="visually-hidden">{`${label}, ${check.pickDrawing.toLowerCase()}`}</Label>
        <SliderTrack className={style.track ?? ''}>
          <SliderThumb className={style.thumb ?? ''} />
        </SliderTrack>
        <SliderOutput className={style.output ?? ''}>{value === undefined ? `${check.pickDrawing} (${walk.open.toLowerCase()})` : formatQuantity(field.quantity, value, units)}</SliderOutput>
      </Slider>
    </div>
  )
}
