import type { z } from 'zod'
import { canonicalJson, type Json } from './canonical-json'
import { hashBeforeTheFirst, type RecordEnd, type Sha256 } from './entry'

/** An entry as it was found. Its text is undefined where its bytes are none. */
export interface FoundEntry {
  readonly place: number
  readonly text: string | undefined
  readonly sha256: string
}

/** What can be wrong with entries that each carry the hash of the one before. */
export const breakCodes = ['entry-missing', 'entry-twice', 'entry-changed', 'entry-unreadable', 'entry-out-of-turn', 'entry-impossible', 'record-end-missing', 'record-cut-off', 'record-runs-on'] as const
export type BreakCode = (typeof breakCodes)[number]

/** Where a chain breaks first: what it says from entry `from` on cannot be relied on. */
export interface Break {
  readonly code: BreakCode
  readonly from: number
  readonly values: Readonly<Record<string, number>>
}

interface Link {
  readonly what: string
  readonly previous: string
  readonly place: number
}

/** Follows chained entries from first to last. Of all that does not fit the first is kept, since the rest may come of it. */
export class Chain<Entry extends Link> {
  readonly #schema: z.ZodType<Entry>
  readonly #sha256: Sha256
  readonly #hashes = new Map<number, string>()
  #last: RecordEnd | undefined
  #broken: Break | undefined

  constructor(schema: z.ZodType<Entry>, sha256: Sha256) {
    this.#schema = schema
    this.#sha256 = sha256
  }

  /** The next entry, by its place: what it says, though it may be altered; undefined where that cannot be read. */
  take(found: FoundEntry): Entry | undefined {
    const entry = found.text === undefined ? undefined : this.#parsed(found.text)
    const code = this.#faultOf(found, entry)
    if (code !== undefined) this.breakAt(code, code === 'entry-missing' ? this.#due : found.place)
    this.#last = { entryCount: found.place, lastSha256: found.sha256 }
    this.#hashes.set(found.place, found.sha256)
    return entry
  }

  breakAt(code: BreakCode, place: number): void {
    // An entry whose own hash fits may be the right one behind a wrong one.
    const from = code === 'entry-out-of-turn' ? Math.max(place - 1, 1) : place
    this.#broken ??= { code, from, values: code === 'entry-out-of-turn' ? { place, from } : { place } }
  }

  /** `end` as it is kept apart from the entries. */
  finish(end: RecordEnd | undefined): void {
    const kept = this.#last?.entryCount ?? 0
    if (end === undefined) {
      if (this.#last !== undefined) this.#broken ??= { code: 'record-end-missing', from: kept + 1, values: { kept } }
      return
    }
    const count = end.entryCount
    if (kept < count) this.#broken ??= { code: 'record-cut-off', from: kept + 1, values: { kept, count } }
    else if (kept > count || this.#last?.lastSha256 !== end.lastSha256) {
      const from = Math.max(kept > count ? count + 1 : kept, 1)
      this.#broken ??= { code: 'record-runs-on', from, values: { kept, count, from } }
    }
  }

  get broken(): Break | undefined {
    return this.#broken
  }

  get last(): RecordEnd | undefined {
    return this.#last
  }

  hashAt(place: number): string | undefined {
    return this.#hashes.get(place)
  }

  get #due(): number {
    return (this.#last?.entryCount ?? 0) + 1
  }

  #parsed(text: string): Entry | undefined {
    try {
      const value = JSON.parse(text) as Json
      return canonicalJson(value) === text ? this.#schema.safeParse(value).data : undefined
    } catch {
      return undefined
    }
  }

  /** The first thing that is wrong with an entry in itself and towards the one before. */
  #faultOf({ place, text, sha256 }: FoundEntry, entry: Entry | undefined): BreakCode | undefined {
    if (place < this.#due) return 'entry-twice'
    if (place > this.#due) return 'entry-missing'
    if (text === undefined || this.#sha256(text) !== sha256) return 'entry-changed'
    if (entry === undefined) return 'entry-unreadable'
    if (entry.place !== place || entry.previous !== (this.#last?.lastSha256 ?? hashBeforeTheFirst)) return 'entry-out-of-turn'
    if ((entry.what === 'opened') !== (place === 1)) return 'entry-impossible'
    return undefined
  }
}
