import type { Photograph } from '../../shared-logic/survey/records'
import type { Batch } from './photograph-intake'

/** What has come since it was last shown. `news` is there where something is to be said of the batch, be it that there is none. */
export interface Arrived {
  readonly photographs: readonly Photograph[]
  readonly news: { readonly batch: Batch | undefined } | undefined
}

const everyMs = 200

/**
 * Shows what comes in at once, and then at most five times a second, all of it together: the screen is not drawn anew
 * for each of five hundred photographs.
 */
export class IntakePace {
  #photographs: Photograph[] = []
  #news: Arrived['news']
  #resting: ReturnType<typeof setTimeout> | undefined

  constructor(private readonly show: (arrived: Arrived) => void) {}

  readonly keep = (photograph: Photograph): void => {
    this.#photographs.push(photograph)
    this.#soon()
  }

  readonly tell = (batch: Batch | undefined): void => {
    this.#news = { batch }
    this.#soon()
  }

  #soon(): void {
    if (this.#resting !== undefined) return
    const arrived = { photographs: this.#photographs, news: this.#news }
    this.#photographs = []
    this.#news = undefined
    this.#resting = setTimeout(() => {
      this.#resting = undefined
      if (this.#photographs.length > 0 || this.#news !== undefined) this.#soon()
    }, everyMs)
    this.show(arrived)
  }
}
