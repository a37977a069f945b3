import { fromSi, shownUnit, toSi } from '../units/convert'
import type { UnitSystem } from '../units/quantity'
import { shownIn } from '../units/unit-table'
import type { MeasuredLength } from './length-of'

/**
 * A length as it is read out: its uncertainty to two digits, the length to the same place, in the reader's unit.
 * Source: JCGM 100:2008 (GUM), 7.2.6.
 */
export const roundedLength = ({ lengthM, uncertaintyM }: MeasuredLength, units: UnitSystem): MeasuredLength => {
  const unit = shownUnit('smallLength', units)
  const finest = shownIn[units].smallLength.decimals
  const place = Math.min(finest, 1 - Math.floor(Math.log10(fromSi(uncertaintyM, unit))))
  const round = (si: number): number => toSi(Number((Math.round(fromSi(si, unit) * 10 ** place) / 10 ** place).toFixed(finest)), unit)
  return { lengthM: round(lengthM), uncertaintyM: round(uncertaintyM) }
}
