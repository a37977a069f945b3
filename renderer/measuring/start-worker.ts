import type { FromWorker, ToWorker } from './messages'

/** The computing beside the window, as the board uses it. */
export interface Computing {
  readonly send: (message: ToWorker, moved?: Transferable[]) => void
  /** Ends it, whatever it is at. */
  readonly end: () => void
}

export type StartComputing = (hear: (message: FromWorker) => void, fail: () => void) => Computing

/** A worker of its own, so that the window never waits for the computing. */
export const startWorker: StartComputing = (hear, fail) => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => hear(data))
  worker.addEventListener('error', fail)
  return { send: (message, moved = []) => worker.postMessage(message, moved), end: () => worker.terminate() }
}
