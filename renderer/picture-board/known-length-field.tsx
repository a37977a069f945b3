import { knownLengthRangeM as range } from '../../shared-logic/measuring/measurement'
import { formatQuantity } from '../../shared-logic/units/convert'
import { lengthSymbols, type LengthSymbol } from '../../shared-logic/units/unit-table'
import { say } from '../../shared-logic/words/say'
import { QuantityField } from '../parts/quantity-field'
import { useUnits } from '../parts/use-settings'
import { useWords } from '../parts/use-words'

interface KnownLengthFieldProps {
  readonly label: string
  /** m. */
  readonly value: number | undefined
  /** `writtenIn` is the symbol of the unit it is written in. */
  readonly onChange: (lengthM: number | undefined, writtenIn: LengthSymbol | undefined) => void
  readonly writtenIn?: LengthSymbol | undefined
  readonly onSubmit?: () => void
  readonly isFocused?: boolean
}

/** A length known of something in the picture, typed with its unit. */
export const KnownLengthField = ({ label, value, onChange, writtenIn, onSubmit, isFocused = false }: KnownLengthFieldProps) => {
  const { lengthRange } = useWords().screens.pictureBoard
  const units = useUnits()
  const isOutside = value !== undefined && (value < range.least || value > range.most)
  return (
    <QuantityField
      label={label} quantity="smallLength" value={value} writtenIn={writtenIn} onChange={(lengthM, _problem, unit) => onChange(lengthM, lengthSymbols.find((symbol) => symbol === unit))} isFocused={isFocused} {...(onSubmit && { onSubmit })}
      error={isOutside ? say(lengthRange, { least: formatQuantity('smallLength', range.least, units), most: formatQuantity('length', range.most, units) }, units) : undefined}
    />
  )
}
