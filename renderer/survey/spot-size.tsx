import type { Spot } from '../../shared-logic/survey/spot'
import type { Quantity } from '../../shared-logic/units/quantity'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { NumberField } from '../parts/number-field'
import { QuantityField } from '../parts/quantity-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import type { SpotProblems } from './spot-problems'
import { SpotReadings } from './spot-readings'
import style from './spot-sheet.module.css'

type Sized = 'areaM2' | 'faceAreaM2' | 'share' | 'pitDepthM' | 'wallM' | 'remainingM'

interface SpotSizeProps {
  readonly spot: Spot
  readonly problems: SpotProblems
  /** Somebody wanted to keep it. */
  readonly isTried: boolean
  readonly onChange: (spot: Spot) => void
  /** Told which fields hold something that cannot be read. */
  readonly onUnread: (field: string, isUnread: boolean) => void
  /** Told while a reading is typed and not added. */
  readonly onReadingLeft: (isLeft: boolean) => void
  readonly onMeasure: () => void
}

/** The spot without a measure, or with it. */
export const withMeasure = (spot: Spot, field: Sized | 'pitCount', value: number | undefined): Spot => {
  const { [field]: _before, ...rest } = spot
  return value === undefined ? rest : { ...spot, [field]: value }
}

/** The measurement on the photograph and all that came from it. */
export const withoutMeasurement = ({ measurement: _measurement, areaM2: _area, areaUncertaintyM2: _uncertainty, share: _share, ...rest }: Spot): Spot => rest

/** How large and how deep: the area typed or measured on a photograph, the wall, the coating. What was not measured stays empty. */
export const SpotSize = ({ spot, problems, isTried, onChange, onUnread, onReadingLeft, onMeasure }: SpotSizeProps) => {
  const said = useWords().screens.survey.spots
  const units = useUnits()
  const field = (name: Sized, label: string, quantity: Quantity, hint?: string) => (
    <QuantityField
      label={label} quantity={quantity} value={spot[name]} error={problems[name]} hint={hint}
      onChange={(value, problem) => {
        onUnread(name, problem !== undefined)
        onChange(withMeasure(spot, name, value))
      }}
    />
  )
  const { measurement } = spot
  return (
    <>
      <div className={style.measure}>
        {measurement !== undefined && (
          <p className={style.figures}>
            {say(said.measuredAs, { area: measured('area', measurement.result.areaM2), uncertainty: measured('area', measurement.result.uncertaintyM2) }, units)}
            {measurement.result.faceAreaM2 !== undefined && `, ${say(said.measuredFace, { area: measured('area', measurement.result.faceAreaM2) }, units)}`}
          </p>
        )}
        {measurement !== undefined && problems['areaM2'] !== undefined && <p role="alert" className={style.wrong}>{problems['areaM2']}</p>}
        <div className={style.acts}>
          <Button onPress={onMeasure}>{measurement === undefined ? said.measure : said.measureAgain}</Button>
          {measurement !== undefined && <Button kind="quiet" onPress={() => onChange(withoutMeasurement(spot))}>{said.unmeasure}</Button>}
        </div>
      </div>
      <div className={style.pair}>
        {measurement === undefined && field('areaM2', said.area, 'area')}
        {measurement?.result.faceAreaM2 === undefined && field('faceAreaM2', said.faceArea, 'area')}
        {measurement?.result.share === undefined && field('share', said.share, 'ratio', said.shareHint)}
        {field('pitDepthM', said.pitDepth, 'smallLength')}
        {field('wallM', said.wall, 'smallLength')}
        {field('remainingM', said.remaining, 'smallLength', said.remainingHint)}
        <NumberField label={said.pitCount} value={spot.pitCount} min={1} max={10_000} error={problems['pitCount']} onChange={(count) => onChange(withMeasure(spot, 'pitCount', count))} />
      </div>
      <SpotReadings
        readings={spot.coatingReadingsM ?? []} error={problems['coatingReadingsM']} isTried={isTried} onLeft={onReadingLeft}
        onChange={(readings) => { const { coatingReadingsM: _before, ...rest } = spot; onChange(readings.length === 0 ? rest : { ...spot, coatingReadingsM: readings }) }}
      />
    </>
  )
}
