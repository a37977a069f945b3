/** Takes one step after the other, never two at once, until none is left for now; what is wanted meanwhile is looked at before it rests. */
export class Steps {
  #isRunning = false
  #isWanted = false
  #timer: ReturnType<typeof setTimeout> | undefined

  /**
   * `take` does the next thing and answers whether there was one; what it throws is told to `meet`, and ends the row.
   * `hasEnded`: no step is taken any more.
   */
  constructor(private readonly take: () => Promise<boolean>, private readonly hasEnded: () => boolean, private readonly meet: (error: unknown) => void) {}

  async run(): Promise<void> {
    this.#isWanted = true
    if (this.#isRunning) return
    this.rest()
    this.#isRunning = true
    try {
      while (!this.hasEnded() && this.#isWanted) {
        this.#isWanted = false
        if (await this.take()) this.#isWanted = true
      }
    } catch (error) {
      this.meet(error)
    } finally {
      this.#isRunning = false
    }
  }

  runIn(afterMs: number): void {
    this.rest()
    this.#timer = setTimeout(() => void this.run(), afterMs)
  }

  /** What was to be run later is not. */
  rest(): void {
    clearTimeout(this.#timer)
  }
}
