import type { Pixels } from '../measuring/pixels'
import { linearOfByte } from './linear-light'

/** Linear light by colour, one number a pixel. */
export interface Planes {
  readonly width: number
  readonly height: number
  readonly red: Float32Array
  readonly green: Float32Array
  readonly blue: Float32Array
}

/** Long edge that the sizes of the table are meant for, px. */
const tableEdgePx = 1600

/** A size of the table in px of this picture. */
export const lengthIn = ({ width, height }: Pick<Pixels, 'width' | 'height'>, px: number): number => (px * Math.max(width, height)) / tableEdgePx
export const areaIn = (picture: Pick<Pixels, 'width' | 'height'>, px2: number): number => px2 * (lengthIn(picture, 1) ** 2)

/** Long edge that colours are read at, px: cameras and JPEG keep colour at half the preview's fineness, so more would be slower and no better. */
const readingEdgePx = 800

/** Px of the picture to one px read, along each side. */
export const readingStep = ({ width, height }: Pick<Pixels, 'width' | 'height'>): number => Math.max(1, Math.round(Math.max(width, height) / readingEdgePx))

/** Mean light of each block of `step` × `step` px; what is over at the right and below joins no block of its own but is averaged short. */
export const planesOf = ({ width, height, data }: Pixels, step = 1): Planes => {
  const [across, down] = [Math.ceil(width / step), Math.ceil(height / step)]
  const [red, green, blue] = [new Float32Array(across * down), new Float32Array(across * down), new Float32Array(across * down)]
  for (let block = 0, top = 0; top < height; top += step) {
    for (let left = 0; left < width; left += step, block += 1) {
      let r = 0
      let g = 0
      let b = 0
      let count = 0
      for (let row = top; row < Math.min(height, top + step); row += 1) {
        for (let byte = 4 * (row * width + left), end = 4 * (row * width + Math.min(width, left + step)); byte < end; byte += 4, count += 1) {
          r += linearOfByte[data[byte] ?? 0] ?? 0
          g += linearOfByte[data[byte + 1] ?? 0] ?? 0
          b += linearOfByte[data[byte + 2] ?? 0] ?? 0
        }
      }
      red[block] = r / count
      green[block] = g / count
      blue[block] = b / count
    }
  }
  return { width: across, height: down, red, green, blue }
}
