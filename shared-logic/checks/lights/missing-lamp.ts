import { assertNever } from '../../assert-never'
import type { Trailer } from '../../rig/trailer'
import type { LampCondition } from '../../rules/lamp-row'
import { advisory, failed, notApplicable, unseen } from '../builders'
import type { Outcome } from '../check'

/** How a missing lamp or reflector can come out: by whether it is called for, or by what has to be known first. */
export const missingOutcomes = {
  missing: failed('before it is towed'),
  'missing, lesser': failed('before next trip'),
  'missing, not called for': notApplicable,
  'missing, width not known': unseen,
  'missing, length not known': unseen,
  'missing, year not known': unseen,
  'missing, year does not decide': advisory('before next trip'),
  'missing, brakes not known': unseen,
} as const satisfies Readonly<Record<string, Outcome>>

const byYear = (trailer: Trailer, year: number): keyof typeof missingOutcomes => {
  if (trailer.builtYear === undefined) return 'missing, year not known'
  return trailer.builtYear === year ? 'missing, year does not decide' : 'missing, brakes not known'
}

/** Reflectors: none is grave by itself, and no row of theirs turns on width or brakes. */
export const missingReflectorOutcomes = {
  'missing, lesser': missingOutcomes['missing, lesser'],
  'missing, not called for': missingOutcomes['missing, not called for'],
  'missing, length not known': missingOutcomes['missing, length not known'],
  'missing, year not known': missingOutcomes['missing, year not known'],
  'missing, year does not decide': missingOutcomes['missing, year does not decide'],
} as const

/** What has to be known before a missing lamp can be judged. */
export const waitingFor = (when: LampCondition, trailer: Trailer): keyof typeof missingOutcomes => {
  switch (when.if) {
    case 'always':
      return 'missing'
    case 'width at least':
    case 'width over':
      return 'missing, width not known'
    case 'length at least':
      return 'missing, length not known'
    case 'built from within':
    case 'braked and built from within':
      return byYear(trailer, when.year)
    default:
      return assertNever(when)
  }
}
