import type { z } from 'zod'
import type { arrivedReplySchema, checksReplySchema, pairReplySchema, photographReplySchema, PhonePhotograph } from '../../shared-logic/phone/phone-door'

/** A reply, with how far the desktop's clock runs ahead of the phone's (ms; nought where it does not tell its time). */
export type Told<Reply> = Reply & { readonly clockAheadMs: number }

export type PairReply = z.infer<typeof pairReplySchema>
export type ChecksReply = z.infer<typeof checksReplySchema>
export type PhotographReply = z.infer<typeof photographReplySchema>
export type ArrivedReply = z.infer<typeof arrivedReplySchema>

/**
 * The desktop's door, as this page reaches it. Each call throws `NoAnswer` when nothing of ours came back, so that what
 * was sent may or may not be there, and `TurnedAway` when the door refused.
 */
export interface Door {
  readonly pair: (secret: string, phoneName: string) => Promise<Told<PairReply>>
  readonly checks: () => Promise<Told<ChecksReply>>
  /** `onProgress` is told the share sent, 0 to 1. */
  readonly send: (about: PhonePhotograph, file: Blob, onProgress: (share: number) => void) => Promise<PhotographReply>
  readonly arrived: () => Promise<ArrivedReply>
}

export class NoAnswer extends Error {
  override readonly name = 'NoAnswer'
}

export class TurnedAway extends Error {
  override readonly name = 'TurnedAway'
  /** `sentence` is the door's own, where it gave one. */
  constructor(readonly status: number, readonly code: string, readonly sentence: string | undefined) {
    super(code)
  }
}
