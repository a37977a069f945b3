import type { Picture } from './picture'
import { pauseAfter } from './turned-away'

/** Pictures that broke off or were put off, and until when they rest: the longer, the oftener it was tried. */
export class Resting {
  readonly #until = new Map<string, number>()

  rest(id: string, tries: number): void {
    this.#until.set(id, Date.now() + pauseAfter(tries))
  }

  wake(id: string): void {
    this.#until.delete(id)
  }

  wakeAll(): void {
    this.#until.clear()
  }

  /** The first that waits and does not rest; what broke off before comes after what did not. */
  nextOf(pictures: readonly Picture[]): Picture | undefined {
    const now = Date.now()
    for (const [id, until] of this.#until) if (until <= now) this.#until.delete(id)
    return pictures.filter(({ id, state }) => state === 'waiting' && !this.#until.has(id)).toSorted((a, b) => a.tries - b.tries || a.turn - b.turn)[0]
  }

  /** In how long the first has rested, ms; undefined where none rests. */
  firstWakesInMs(): number | undefined {
    const first = Math.min(...this.#until.values())
    return Number.isFinite(first) ? Math.max(first - Date.now(), 0) : undefined
  }
}
