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

const add = (plane: Float32Array, at: number, value: number): void => { plane[at] = (plane[at] ?? 0) + value }

/** Mean light of each block of `step` × `step` px; the last blocks to the right and below may be narrower. */
export const planesOf = ({ width, height, data }: Pixels, step = 1): Planes => {
  const [across, down] = [Math.ceil(width / step), Math.ceil(height / step)]
  const planes: Planes = { width: across, height: down, red: new Float32Array(across * down), green: new Float32Array(across * down), blue: new Float32Array(across * down) }
  const blockOf = Int32Array.from({ length: width }, (_, column) => Math.floor(column / step))
  const shareOf = Float32Array.from({ length: width }, (_, column) => 1 / Math.min(step, width - (blockOf[column] ?? 0) * step))
  for (let row = 0, byte = 0; row < height; row += 1) {
    const first = Math.floor(row / step)
    const shareDown = 1 / Math.min(step, height - first * step)
    for (let column = 0; column < width; column += 1, byte += 4) {
      const block = first * across + (blockOf[column] ?? 0)
      const share = shareDown * (shareOf[column] ?? 0)
      add(planes.red, block, share * (linearOfByte[data[byte] ?? 0] ?? 0))
      add(planes.green, block, share * (linearOfByte[data[byte + 1] ?? 0] ?? 0))
      add(planes.blue, block, share * (linearOfByte[data[byte + 2] ?? 0] ?? 0))
    }
  }
  return planes
}
