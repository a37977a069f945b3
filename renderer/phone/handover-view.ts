import type { ChecksReply } from './door'
import type { Picture } from './picture'

/** How this page stands with the desktop. `sentence`: the door's own, where it gave one. */
export type Link =
  | { readonly state: 'joining' | 'open' | 'silent' | 'no code' }
  | { readonly state: 'not let in'; readonly sentence?: string | undefined }
  | { readonly state: 'closed'; readonly why: 'told' | 'time' | 'elsewhere'; readonly sentence?: string | undefined }

/** Nothing goes through it any more. */
export const hasEnded = ({ state }: Link): boolean => state === 'closed' || state === 'not let in' || state === 'no code'

/** What the page shows of the handing over. */
export interface HandoverView {
  readonly link: Link
  /** Whether there is a connection that pictures can be taken for, even if its door is silent or has closed. */
  readonly isPaired: boolean
  /** By this phone's clock. */
  readonly closesAtMs?: number | undefined
  readonly stations?: ChecksReply['stations'] | undefined
  /** Of this connection, in order. */
  readonly pictures: readonly Picture[]
  /** Not sent when an earlier connection ended: whether they belong to this survey only the person knows. */
  readonly earlier: readonly Picture[]
  readonly sending?: { readonly id: string; readonly share: number } | undefined
  /** Why the desktop takes nothing at present, although it answers. */
  readonly putOff?: string | undefined
  /** Whether what waits outlives this page. */
  readonly isLasting: boolean
}
