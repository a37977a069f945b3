import type { TimeTaken } from '../../shared-logic/photographs/time-taken'
import type { Assessed } from '../../shared-logic/survey/assess'
import type { Photograph } from '../../shared-logic/survey/records'
import type { StationId } from '../../shared-logic/survey/station'

/** A photograph as the contact sheet shows it: where it belongs, and what is to be said of it. */
export interface SheetPhotograph {
  readonly id: string
  readonly photograph: Photograph
  /** The check at its place; absent for one of no check, and where the check is no longer asked. */
  readonly owner: Assessed | undefined
  readonly station: StationId | undefined
  /** When, and by whose clock; undefined where nobody knows. */
  readonly taken: TimeTaken | undefined
  /** Caption, or the file's name where there is none. */
  readonly name: string
  /** 'Oil level, left front', or that it belongs to no check. */
  readonly where: string
  /** What is wrong with the picture, in short: 'Blurred'. */
  readonly warnings: readonly string[]
  /** Names of those that look like it. */
  readonly alike: readonly string[]
}

export const isOfFinding = ({ owner }: SheetPhotograph): boolean => owner?.verdict === 'fail' || owner?.verdict === 'advisory'

/** Those of one check at one place, and those of none, are put in order among themselves. */
export const groupOf = ({ photograph: { checkId, position } }: SheetPhotograph): string => `${checkId ?? ''} @ ${position ?? ''}`
