import { assertNever } from '../assert-never'
import type { Trailer } from '../rig/trailer'
import { euLamps } from './eu-lamps'
import type { LampRow } from './lamp-row'
import type { RuleBook } from './rule-book'
import { usLamps } from './us-lamps'

export const lampTable = (ruleBook: RuleBook): { readonly lamps: readonly LampRow[]; readonly reflectors: readonly LampRow[] } =>
  ruleBook === 'us' ? usLamps : euLamps

/** The row of one lamp or reflector. */
export const lampRowOf = (position: string, ruleBook: RuleBook): LampRow | undefined => {
  const { lamps, reflectors } = lampTable(ruleBook)
  return [...lamps, ...reflectors].find((row) => row.position === position)
}

/** Within the year a rule came in, the year alone does not tell. */
const builtFrom = (built: number | undefined, year: number): boolean | 'unknown' => (built === undefined || built === year ? 'unknown' : built > year)

/** Whether the rule calls for this lamp on this trailer; 'unknown' while the figure it depends on is not known. */
export const isRequired = (row: LampRow, trailer: Trailer): boolean | 'unknown' => {
  const { when } = row
  switch (when.if) {
    case 'always':
      return true
    case 'width at least':
      return trailer.widthM === undefined ? 'unknown' : trailer.widthM >= when.m - 1e-9
    case 'width over':
      return trailer.widthM === undefined ? 'unknown' : trailer.widthM > when.m + 1e-9
    case 'length at least':
      return trailer.lengthM === undefined ? 'unknown' : trailer.lengthM >= when.m - 1e-9
    case 'built from within':
      return builtFrom(trailer.builtYear, when.year)
    case 'braked and built from within': {
      if (trailer.brakes === 'none') return false
      const built = builtFrom(trailer.builtYear, when.year)
      return built === true && trailer.brakes === undefined ? 'unknown' : built
    }
    default:
      return assertNever(when)
  }
}
