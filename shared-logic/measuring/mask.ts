import type { PixelPoint } from './measurement'
import { edgesOf } from './polygon'
import type { PictureSize } from './picture-size'
import type { Mask } from './pixels'

/** A size in working px. */
export interface MaskSize {
  readonly width: number
  readonly height: number
}

export const emptyMask = ({ width, height }: MaskSize): Mask => ({ width, height, data: new Uint8Array(width * height) })

/** Px of the original to one px of the mask, across and down. */
export const stepsOf = ({ widthPx, heightPx }: PictureSize, { width, height }: MaskSize): PixelPoint => [widthPx / width, heightPx / height]

export const toMaskPx = (picture: PictureSize, size: MaskSize, points: readonly PixelPoint[]): PixelPoint[] => {
  const [stepX, stepY] = stepsOf(picture, size)
  return points.map(([x, y]): PixelPoint => [x / stepX, y / stepY])
}

/** The polygon filled, corners in px of the mask: a pixel belongs when its centre lies inside. */
export const polygonMask = (size: MaskSize, points: readonly PixelPoint[]): Mask => {
  const mask = emptyMask(size)
  const edges = edgesOf(points)
  for (let row = 0; row < size.height; row += 1) {
    const middle = row + 0.5
    const crossings = edges.filter(([[, y1], [, y2]]) => y1 > middle !== y2 > middle).map(([[x1, y1], [x2, y2]]) => x1 + ((middle - y1) * (x2 - x1)) / (y2 - y1)).toSorted((a, b) => a - b)
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const [from = 0, to = 0] = [crossings[pair], crossings[pair + 1]].map((x = 0) => Math.min(size.width, Math.max(0, Math.ceil(x - 0.5))))
      mask.data.fill(1, row * size.width + from, row * size.width + to)
    }
  }
  return mask
}

/** What is in both. */
export const overlap = (one: Mask, other: Mask): Mask => {
  const data = one.data.slice()
  for (let index = 0; index < data.length; index += 1) data[index] = (data[index] ?? 0) & (other.data[index] ?? 0)
  return { ...one, data }
}

export const pixelCount = ({ data }: Mask): number => {
  let count = 0
  for (let index = 0; index < data.length; index += 1) count += data[index] ?? 0
  return count
}

/** Row, first column and the column after the last, of every run of pixels side by side; three numbers a run. */
export const runsOf = ({ width, height, data }: Mask): number[] => {
  const runs: number[] = []
  for (let row = 0; row < height; row += 1) {
    const start = row * width
    for (let column = 0; column < width; column += 1) {
      if (data[start + column] !== 1) continue
      const from = column
      while (column < width && data[start + column] === 1) column += 1
      runs.push(row, from, column)
    }
  }
  return runs
}
