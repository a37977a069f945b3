import type { MaskSize } from '../measuring/mask'
import { boxMean } from './box-mean'

/** The picture in squares of `side` px: for what changes slowly over it. */
export interface Squares {
  readonly side: number
  readonly width: number
  readonly height: number
}

export const squaresOf = ({ width, height }: MaskSize, side: number): Squares => ({ side, width: Math.ceil(width / side), height: Math.ceil(height / side) })

/** Adds up `value` over the pixels of each square. */
export const sumsOf = ({ side, width, height }: Squares, size: MaskSize, value: (at: number) => number): Float32Array => {
  const sums = new Float32Array(width * height)
  for (let row = 0; row < size.height; row += 1) {
    const start = Math.floor(row / side) * width
    for (let square = 0, at = row * size.width; square < width; square += 1) {
      let sum = 0
      for (const end = row * size.width + Math.min(size.width, (square + 1) * side); at < end; at += 1) sum += value(at)
      sums[start + square] = (sums[start + square] ?? 0) + sum
    }
  }
  return sums
}

/** Every square's mean of `sums` a unit of `weights`, over the squares `reach` around; 0 where there is no weight. */
export const meansAround = ({ width, height }: Squares, sums: Float32Array, weights: Float32Array, reach: number): Float32Array => {
  const [above, below] = [sums.slice(), weights.slice()]
  boxMean(above, width, height, reach)
  boxMean(below, width, height, reach)
  return above.map((sum, at) => ((below[at] ?? 0) > 1e-4 ? sum / (below[at] ?? 1) : 0))
}
