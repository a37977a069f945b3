/** Where a picture belongs: a check, with its title and place as they are read. */
export interface CheckChosen {
  readonly checkId: string
  readonly position: string
  readonly title: string
}

/** One picture on this phone, without its file. What is being sent counts as waiting: a reload begins it anew. */
export interface Picture {
  /** The phone's own name for it: sent again under this id, it is kept once. */
  readonly id: string
  /** The connection it was taken for. Another connection may belong to another survey. */
  readonly pairing: string
  /** Place in the queue: pictures go in this order. */
  readonly turn: number
  readonly fileName: string
  readonly place?: CheckChosen | undefined
  readonly state: 'waiting' | 'arrived' | 'refused'
  /** The door's sentence: why it was refused, or why it waits although the door answers. */
  readonly sentence?: string | undefined
  /** The door's code of the refusal. */
  readonly code?: string | undefined
  /** What this page itself found wrong with it. */
  readonly why?: 'broke off' | 'gone' | 'too large' | 'empty' | undefined
  /** It arrived, and the same picture was kept at its check before. */
  readonly isAlreadyThere?: boolean
  /** Of quality, from the door. */
  readonly warnings: readonly string[]
  /** How often it broke off, or was put off, since something of it last succeeded. */
  readonly tries: number
  /** A small copy to show, JPEG. */
  readonly small?: Blob
  /** Kept in the page alone, because the phone's storage would not take it. */
  readonly isOnlyHere?: boolean
}
