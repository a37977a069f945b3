import type { Desk, ProcedureName } from '../../shared-logic/contract/contract'
import type { Shelf } from '../photos/shelf'
import type { writeReport } from '../report/write-report'
import type { PhoneDoor } from './phone'
import type { Yard } from '../store/yard'

/** What the desk works with, handed in: the desk itself knows no clock, no chance and no door. */
export interface Parts {
  readonly yard: Yard
  readonly shelf: Shelf
  readonly writeReport: typeof writeReport
  /** Recorded photographs whose file is gone, found when the yard was opened. */
  readonly missingPhotographs: () => Promise<readonly string[]>
  /** Absent where no door to a local network can be opened. */
  readonly phoneDoor?: PhoneDoor
  readonly clock: () => Date
  /** A new UUIDv7. */
  readonly newId: () => string
  /** IANA zone the surveyor is in. */
  readonly zone: string
  readonly version: string
  /** Fills an empty yard with the example, through the desk like anybody. */
  readonly fillExample: (desk: Desk) => Promise<void>
}

/** The procedures of one noun: `Procedures<'rigs'>` are 'rigs.list', 'rigs.get' and so on. */
export type Procedures<Noun extends string> = Pick<Desk, Extract<ProcedureName, `${Noun}.${string}`>>
