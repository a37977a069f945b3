import type { FromWriter, ToWriter } from './jpeg-messages'
import type { Resolution } from './resolutions'

interface Waiting {
  readonly done: (jpeg: Blob) => void
  readonly fail: (why: Error) => void
}

const waiting = new Map<number, Waiting>()
let worker: Worker | undefined
let count = 0

const settle = ({ number, jpeg }: FromWriter): void => {
  const who = waiting.get(number)
  waiting.delete(number)
  if (jpeg === undefined) who?.fail(new Error('the picture could not be written'))
  else who?.done(jpeg)
}

const breakDown = (): void => {
  worker = undefined
  for (const number of waiting.keys()) settle({ number })
}

/** It goes on when the camera view is closed, until every picture taken is written. */
const startWorker = (): Worker => {
  const started = new Worker(new URL('./jpeg-worker.ts', import.meta.url), { type: 'module' })
  started.addEventListener('message', ({ data }: MessageEvent<FromWriter>) => settle(data))
  started.addEventListener('error', breakDown)
  return started
}

/** A frame as JPEG at its full size, written beside the window, which goes on showing the live picture. The frame is used up. */
export const writeJpeg = (frame: VideoFrame | ImageBitmap, { widthPx, heightPx }: Resolution): Promise<Blob> => {
  worker ??= startWorker()
  count += 1
  const message: ToWriter = { number: count, frame, widthPx, heightPx }
  const written = new Promise<Blob>((done, fail) => { waiting.set(message.number, { done, fail }) })
  worker.postMessage(message, [frame])
  return written
}
