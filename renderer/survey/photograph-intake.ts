import { Refusal } from '../../shared-logic/contract/refusal'
import { mayGoInLater } from '../../shared-logic/photographs/for-now'

/** One file that was not taken in, and why. */
export interface RefusedFile {
  readonly fileName: string
  readonly problem: unknown
}

/**
 * How far a batch has come. `done` counts taken and refused files, `takenBefore` what went in whole before it and is
 * still being told of: one picture after the other is a batch each, and the news would tell only of the last.
 */
export interface Batch {
  readonly total: number
  readonly done: number
  readonly taken: number
  readonly takenBefore: number
  readonly refused: readonly RefusedFile[]
  readonly state: 'running' | 'finished' | 'cancelled'
}

/** Hands one file over; rejects when it cannot be taken. */
export type SendFile = (file: File, signal: AbortSignal) => Promise<void>

interface Handed {
  readonly file: File
  readonly send: SendFile
  /** Told when the file will not go in any more: kept out by a cancel, or its refusal read and put away. */
  readonly letGo: () => void
}

/**
 * The desk scales two pictures at once; more would only wait there. Where there are but two cores, one of them is left
 * to the window and to what else the desk is asked: both answer a third sooner, and a batch takes a third longer
 * (npm run bench -- intake-window).
 */
export const lanesFor = (coreCount: number): number => (coreCount > 2 ? 2 : 1)

/** Whether it is worth handing over again. */
export const isForNow = (problem: unknown): boolean => problem instanceof Refusal && mayGoInLater(problem.data.code)

const empty: Batch = { total: 0, done: 0, taken: 0, takenBefore: 0, refused: [], state: 'running' }

/**
 * Takes photographs in, as many at a time as there are lanes, in the order given; what comes meanwhile joins the batch under way. A file that
 * cannot be taken is named in `refused`, and stays there until that has been read, while the rest goes in. After a
 * cancel nothing further is handed over and what is in stays in.
 */
export class PhotographIntake {
  #batch: Batch | undefined
  #waiting: Handed[] = []
  readonly #refused = new Map<RefusedFile, Handed>()
  #stop = new AbortController()
  #lanes = 0
  #isStopped = false

  constructor(private readonly report: (batch: Batch | undefined) => void, private readonly mostLanes = lanesFor(navigator.hardwareConcurrency)) {}

  add(files: readonly File[], send: SendFile, letGo: () => void = () => undefined): void {
    this.#take(files.map((file) => ({ file, send, letGo })))
  }

  cancel(): void {
    this.#stop.abort()
    this.#stop = new AbortController()
    this.#isStopped = true
    for (const { letGo } of this.#waiting.splice(0)) letGo()
  }

  /** What was refused for the moment is handed over once more. */
  tryAgain(): void {
    const again = [...this.#refused].filter(([{ problem }]) => isForNow(problem))
    for (const [refused] of again) this.#refused.delete(refused)
    this.#take(again.map(([, handed]) => handed))
  }

  /** The refusals are read: their files are let go. Nothing is put away while files are on their way. */
  dismiss(): void {
    if (this.#batch?.state === 'running') return
    for (const { letGo } of this.#refused.values()) letGo()
    this.#refused.clear()
    this.#batch = undefined
    this.report(undefined)
  }

  /** The same, where no refusal waits to be read. */
  dismissWhole(): void {
    if (this.#batch?.state === 'finished' && this.#refused.size === 0) this.dismiss()
  }

  #take(more: readonly Handed[]): void {
    if (more.length === 0) return
    this.#isStopped = false
    this.#waiting.push(...more)
    const last = this.#batch
    const under = last?.state === 'running' ? last : { ...empty, takenBefore: last?.state === 'finished' ? last.takenBefore + last.taken : 0 }
    this.#tell({ ...under, total: under.total + more.length })
    while (this.#lanes < this.mostLanes && this.#waiting.length > 0) void this.#runLane()
  }

  #tell(change: Partial<Batch>): void {
    this.#batch = { ...(this.#batch ?? empty), ...change, refused: [...this.#refused.keys()] }
    this.report(this.#batch)
  }

  async #runLane(): Promise<void> {
    this.#lanes += 1
    for (let next = this.#waiting.shift(); next !== undefined; next = this.#waiting.shift()) await this.#hand(next)
    this.#lanes -= 1
    if (this.#lanes === 0) this.#tell({ state: this.#isStopped ? 'cancelled' : 'finished' })
  }

  async #hand(handed: Handed): Promise<void> {
    const { signal } = this.#stop
    const problem = await handed.send(handed.file, signal).then(() => undefined, (error: unknown) => ({ error }))
    const { done, taken } = this.#batch ?? empty
    if (problem === undefined) return this.#tell({ done: done + 1, taken: taken + 1 })
    if (signal.aborted) return handed.letGo()
    this.#refused.set({ fileName: handed.file.name, problem: problem.error }, handed)
    return this.#tell({ done: done + 1 })
  }
}
