import type { Pixels } from '../../shared-logic/measuring/pixels'
import { warmUp } from '../../shared-logic/rust/warm-up'
import type { ToWorker } from './messages'
import { workerDesk } from './worker-desk'

const pixelsOf = (bitmap: ImageBitmap): Pixels => {
  const { width, height } = bitmap
  const drawn = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })
  if (drawn === null) throw new Error('this window cannot draw beside itself')
  drawn.drawImage(bitmap, 0, 0)
  const pixels = drawn.getImageData(0, 0, width, height)
  // While the hand still looks for the scale.
  setTimeout(() => warmUp(pixels))
  return pixels
}

const answer = workerDesk((message) => { self.postMessage(message) }, pixelsOf)

self.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => answer(data))
