import type { Answer } from '../../shared-logic/survey/answer'
import { placeKey } from '../../shared-logic/survey/keys'

export interface CheckPlace {
  readonly checkId: string
  readonly position: string
}

/** What became of the last change at one place. `answer` undefined means it was cleared. */
export interface Change {
  readonly place: CheckPlace
  readonly answer: Answer | undefined
  readonly state: 'saving' | 'saved' | 'failed'
  readonly problem?: unknown
}
export type Changes = ReadonlyMap<string, Change>

/** Hands one change to the desk; resolves once it is kept, rejects with why it was refused. */
export type SendChange = (place: CheckPlace, answer: Answer | undefined) => Promise<void>

/**
 * Changes to answers on their way to the desk: one at a time and in the order they were made, so that rapid answers
 * never overtake each other. A newer change to a place replaces one that still waits. A refused change is kept
 * beside its reason, to be tried again, and does not hold up those behind it.
 */
export class AnswerQueue {
  #changes: Changes = new Map()
  readonly #waiting: string[] = []
  readonly #listeners = new Set<() => void>()
  #running = false

  constructor(private readonly send: SendChange) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** The same map until something changes, a new one after. */
  readonly changes = (): Changes => this.#changes

  put(place: CheckPlace, answer: Answer | undefined): void {
    const key = placeKey(place.checkId, place.position)
    this.#set(key, { place, answer, state: 'saving' })
    if (!this.#waiting.includes(key)) this.#waiting.push(key)
    void this.#run()
  }

  tryAgain(key: string): void {
    const change = this.#changes.get(key)
    if (change?.state === 'failed') this.put(change.place, change.answer)
  }

  /** Lets a refused change go: what the desk has counts again. */
  giveUp(key: string): void {
    if (this.#changes.get(key)?.state === 'failed') this.#set(key, undefined)
  }

  #set(key: string, change: Change | undefined): void {
    const next = new Map(this.#changes)
    if (change === undefined) next.delete(key)
    else next.set(key, change)
    this.#changes = next
    for (const listener of this.#listeners) listener()
  }

  async #run(): Promise<void> {
    if (this.#running) return
    this.#running = true
    for (let key = this.#waiting.shift(); key !== undefined; key = this.#waiting.shift()) await this.#sendOne(key)
    this.#running = false
  }

  async #sendOne(key: string): Promise<void> {
    const change = this.#changes.get(key)
    if (change === undefined) return
    const outcome: Change = await this.send(change.place, change.answer).then(
      () => ({ ...change, state: 'saved' }),
      (problem: unknown) => ({ ...change, state: 'failed', problem }),
    )
    // A newer change to the same place was made meanwhile: it waits its turn and will say how it went.
    if (this.#changes.get(key) === change) this.#set(key, outcome)
  }
}
