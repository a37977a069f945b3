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

export const planesOf = ({ width, height, data }: Pixels): Planes => {
  const count = width * height
  const [red, green, blue] = [new Float32Array(count), new Float32Array(count), new Float32Array(count)]
  for (let at = 0, byte = 0; at < count; at += 1, byte += 4) {
    red[at] = linearOfByte[data[byte] ?? 0] ?? 0
    green[at] = linearOfByte[data[byte + 1] ?? 0] ?? 0
    blue[at] = linearOfByte[data[byte + 2] ?? 0] ?? 0
  }
  return { width, height, red, green, blue }
}
