import type { Pixels } from '../measuring/pixels'
import { featuresOf, rustMask } from './find-rust'

/** Every so many-th pixel and row: small enough to take a moment, large enough for the engine to compile what it runs. */
const step = 4

const thinned = ({ width, height, data }: Pixels): Pixels => {
  const across = Math.floor(width / step)
  const down = Math.floor(height / step)
  const thin = new Uint8ClampedArray(across * down * 4)
  for (let y = 0; y < down; y += 1)
    for (let x = 0; x < across; x += 1) thin.set(data.subarray((y * step * width + x * step) * 4, (y * step * width + x * step) * 4 + 4), (y * across + x) * 4)
  return { width: across, height: down, data: thin }
}

/** Runs the finder on a thinned picture and throws the result away: the first finding that somebody waits for is then as quick as the others. */
export const warmUp = (pixels: Pixels): void => {
  const small = thinned(pixels)
  if (small.width > 0 && small.height > 0) rustMask(featuresOf(small), 0.5)
}
