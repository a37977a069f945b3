import type { Sums } from '../../sums/sums'
import type { UnitSystem } from '../../units/quantity'
import type { Words } from '../en'
import { sayBalance } from './balance'
import { sayBrakes } from './brakes'
import { sayCoupling } from './coupling'
import { sayLoad } from './load'
import type { SumsSection } from './section'
import { sayTyres } from './tyres'

/** All sums in sentences, part by part: for the command line, the report and screen readers. `today` as for `sayBalance`. */
export const saySums = (words: Words, { load, balance, tyres, coupling, brakes }: Sums, units: UnitSystem, today: string | undefined): SumsSection[] => [
  sayLoad(words, load, units), sayBalance(words, balance, load.items, units, today), sayTyres(words, tyres, units), sayCoupling(words, coupling, units), sayBrakes(words, brakes, units),
]
