import { useState } from 'react'
import { formatQuantity } from '../../shared-logic/units/convert'
import { measured } from '../../shared-logic/units/quantity'
import { say } from '../../shared-logic/words/say'
import { Button } from '../parts/button'
import { QuantityField } from '../parts/quantity-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'
import style from './spot-sheet.module.css'

interface SpotReadingsProps {
  readonly readings: readonly number[]
  readonly error: string | undefined
  /** Somebody wanted to keep the spot: what is typed and not added is named. */
  readonly isTried: boolean
  readonly onLeft: (isLeft: boolean) => void
  readonly onChange: (readings: number[]) => void
}

const mostReadings = 30

/** Readings of the coating gauge, typed one after the other; mean and least stand there at once. */
export const SpotReadings = ({ readings, error, isTried, onLeft, onChange }: SpotReadingsProps) => {
  const said = useWords().screens.survey.spots
  const units = useUnits()
  const [typed, setTyped] = useState<{ readonly value: number | undefined; readonly round: number }>({ value: undefined, round: 0 })
  const isFull = readings.length >= mostReadings
  const add = (): void => {
    if (typed.value === undefined || isFull) return
    onChange([...readings, typed.value])
    setTyped(({ round }) => ({ value: undefined, round: round + 1 }))
    onLeft(false)
  }
  const leftOver = isTried && typed.value !== undefined ? said.readingLeft : undefined
  const least = measured('thickness', Math.min(...readings))
  const mean = measured('thickness', readings.reduce((sum, each) => sum + each, 0) / readings.length)
  return (
    <div className={style.readings}>
      <div className={style.reading}>
        <QuantityField label={said.readings} quantity="thickness" value={typed.value} hint={said.readingsHint} error={isFull ? say(said.readingsFull, { limit: mostReadings }, units) : (error ?? leftOver)} onChange={(value, problem) => { setTyped(({ round }) => ({ value, round })); onLeft(value !== undefined || problem !== undefined) }} onSubmit={add} />
        <Button onPress={add} isDisabled={typed.value === undefined || isFull}>{said.addReading}</Button>
      </div>
      {readings.length > 0 && (
        <>
          <output className={style.figures}>{say(readings.length === 1 ? said.readingSo : said.readingsSo, { count: readings.length, mean, least }, units)}</output>
          <ol className={style.taken}>
            {readings.map((reading, index) => {
              const value = formatQuantity('thickness', reading, units)
              // Readings may be alike: their place in the row is all that tells them apart.
              // oxlint-disable-next-line react/no-array-index-key
              return <li key={`${index} ${reading}`}><Button onPress={() => onChange(readings.toSpliced(index, 1))} aria-label={say(said.removeReading, { number: index + 1, value }, units)}>{value} ×</Button></li>
            })}
          </ol>
        </>
      )}
    </div>
  )
}
