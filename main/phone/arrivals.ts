/** More than a survey ever holds; past it the door takes nothing new. */
const mostPictures = 5_000
/** A thousand pictures of 20 MB: a phone that goes wild must not fill the disk the yard lies on. */
const mostBytes = 20_000_000_000

/**
 * Pictures by the phone's own names for them: one that is sent again is answered as before and never kept twice, and one
 * that comes twice at once is worked on once. What was refused is forgotten, so that it can be sent again.
 */
export class Arrivals<Outcome> {
  /** What came through the survey's earlier doors: it is known, and not told as come through this one. */
  readonly #before: ReadonlyMap<string, Outcome>
  readonly #kept = new Map<string, Outcome>()
  readonly #underWay = new Map<string, Promise<Outcome>>()
  #keptBytes = 0

  constructor(earlier?: Arrivals<Outcome>) {
    this.#before = new Map(earlier === undefined ? [] : [...earlier.#before, ...earlier.#kept].slice(-mostPictures))
  }

  /** By the phone's names for them, in the order they came. */
  get kept(): [pictureId: string, outcome: Outcome][] {
    return [...this.#kept]
  }

  /** In the order they came. */
  get outcomes(): Outcome[] {
    return [...this.#kept.values()]
  }

  get isFull(): boolean {
    return this.#kept.size + this.#underWay.size >= mostPictures || this.#keptBytes >= mostBytes
  }

  known(pictureId: string): Outcome | undefined {
    return this.#kept.get(pictureId) ?? this.#before.get(pictureId)
  }

  /** Resolves once nothing is worked on any more. */
  async settled(): Promise<void> {
    await Promise.allSettled(this.#underWay.values())
  }

  /** Rejects as `work` rejects. */
  async take(pictureId: string, byteCount: number, work: () => Promise<Outcome>): Promise<Outcome> {
    const before = this.known(pictureId) ?? this.#underWay.get(pictureId)
    if (before !== undefined) return before
    const working = work()
    this.#underWay.set(pictureId, working)
    try {
      const outcome = await working
      this.#kept.set(pictureId, outcome)
      this.#keptBytes += byteCount
      return outcome
    } finally {
      this.#underWay.delete(pictureId)
    }
  }
}
