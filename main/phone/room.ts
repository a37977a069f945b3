import type { Desk } from '../../shared-logic/contract/contract'
import type { BodyReader } from '../serving/body'
import type { Allowance } from './allowance'
import type { Arrivals } from './arrivals'
import type { BoundLines } from './lines'
import type { PageFiles } from './page-files'
import type { PairingDesk } from './pairing'

/** What came of one picture: which photograph it is, and what is to be said of it to the person who still stands there. */
export interface Taken {
  readonly photographId: string
  readonly alreadyThere: boolean
  readonly warnings: readonly string[]
  readonly atMs: number
}

/** What one request through a phone's door meets. */
export interface Room {
  readonly desk: Desk
  readonly surveyId: string
  /** 'http://192.168.1.20:41234'; requests name exactly this. */
  readonly origin: string
  readonly closesAtMs: number
  /** Whether it was closed, or its time is up. */
  readonly isClosed: () => boolean
  readonly pairing: PairingDesk
  /** What the paired phone may ask, and what everybody else may: the page is a dozen files, a picture two questions. */
  readonly questions: Allowance
  readonly strangersQuestions: Allowance
  readonly lines: Pick<BoundLines, 'heardPhone'>
  readonly pages: PageFiles
  readonly bodies: BodyReader
  readonly arrivals: Arrivals<Taken>
  readonly now: () => number
  readonly onFault: (fault: unknown) => void
}
