import { assertNever } from '../assert-never'
import type { Trailer } from '../rig/trailer'
import type { RuleBook } from './rule-book'
import { euLamps } from './eu-lamps'
import { usLamps } from './us-lamps'
import type { LampRow } from './lamp-row'

export const lampTable = (ruleBook: RuleBook): { readonly lamps: readonly LampRow[]; readonly reflectors: readonly LampRow[] } =>
  ruleBook === 'us' ? usLamps : euLamps

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
    case 'built from':
      return trailer.builtYear === undefined ? 'unknown' : trailer.builtYear >= when.year
    case 'braked and built from':
      if (trailer.brakes === 'none') return false
      if (trailer.brakes === undefined || trailer.builtYear === undefined) return 'unknown'
      return trailer.builtYear >= when.year
    default:
      return assertNever(when)
  }
}
