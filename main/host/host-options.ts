import type { OpenedDesk } from '../desk/open'

export interface HostOptions {
  readonly opened: OpenedDesk
  /** The built window. */
  readonly rendererFolder: string
  /** 0: the system chooses. */
  readonly port: number
  /** Told of a fault inside, for the terminal; the caller is told nothing of it. */
  readonly onFault: (fault: unknown) => void
  readonly now: () => number
}
