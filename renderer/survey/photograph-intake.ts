/** One file that was not taken in, and why. */
export interface RefusedFile {
  readonly fileName: string
  readonly problem: unknown
}

/** How far a batch has come. `done` counts taken and refused files; `left` those a cancel kept out. */
export interface Batch {
  readonly total: number
  readonly done: number
  readonly taken: number
  readonly refused: readonly RefusedFile[]
  readonly state: 'running' | 'finished' | 'cancelled'
}

interface Intake {
  readonly files: readonly File[]
  /** Hands one file over; rejects when it cannot be taken. */
  readonly send: (file: File, signal: AbortSignal) => Promise<void>
  readonly signal: AbortSignal
  readonly report: (batch: Batch) => void
}

/** The desk scales two pictures at once; more would only wait there. */
const lanes = 2

/**
 * Takes a batch of photographs in, two at a time, in the order given. A file that cannot be read is named in
 * `refused` and the rest goes in; after a cancel nothing further is handed over and what is in stays in.
 */
export const takeIn = async ({ files, send, signal, report }: Intake): Promise<Batch> => {
  let batch: Batch = { total: files.length, done: 0, taken: 0, refused: [], state: 'running' }
  const tell = (change: Partial<Batch>): void => {
    batch = { ...batch, ...change }
    report(batch)
  }
  tell({})
  const waiting = [...files]
  const lane = async (): Promise<void> => {
    for (let file = waiting.shift(); file !== undefined && !signal.aborted; file = waiting.shift()) {
      const { name } = file
      const problem = await send(file, signal).then(() => undefined, (error: unknown) => ({ error }))
      if (problem === undefined) tell({ done: batch.done + 1, taken: batch.taken + 1 })
      else if (!signal.aborted) tell({ done: batch.done + 1, refused: [...batch.refused, { fileName: name, problem: problem.error }] })
    }
  }
  await Promise.all(Array.from({ length: lanes }, lane))
  tell({ state: signal.aborted ? 'cancelled' : 'finished' })
  return batch
}
