/** Addresses remembered at once; who speaks from more is held by the bound on all together. */
const mostRemembered = 500

interface Left {
  count: number
  atMs: number
}

/**
 * So many at once and so many a second, of each address and, where it is said, of all together: a person never meets the
 * bound, and who asks without end costs next to nothing.
 */
export class Allowance {
  readonly #left = new Map<string, Left>()
  readonly #leftOfAll: Left | undefined

  constructor(private readonly atOnce: number, private readonly perSecond: number, private readonly timesForAll?: number) {
    this.#leftOfAll = timesForAll === undefined ? undefined : { count: atOnce * timesForAll, atMs: Number.NEGATIVE_INFINITY }
  }

  /** Whether one more is allowed from there; it is counted then. */
  take(from: string, nowMs: number): boolean {
    if (this.#left.size >= mostRemembered) this.#left.clear()
    const left = this.#left.get(from) ?? { count: this.atOnce, atMs: nowMs }
    this.#left.set(from, left)
    return this.#takeOne(left, 1, nowMs) && (this.#leftOfAll === undefined || this.#takeOne(this.#leftOfAll, this.timesForAll ?? 1, nowMs))
  }

  #takeOne(left: Left, times: number, nowMs: number): boolean {
    const goneSeconds = Math.max(nowMs - left.atMs, 0) / 1_000
    left.count = Math.min(left.count + goneSeconds * this.perSecond * times, this.atOnce * times)
    left.atMs = nowMs
    if (left.count < 1) return false
    left.count -= 1
    return true
  }
}
