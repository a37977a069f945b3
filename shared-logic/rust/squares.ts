import type { MaskSize } from '../measuring/mask'
import { boxMean } from './box-mean'
import { lengthIn } from './planes'
import { sizesPx } from './thresholds'

/** The picture in squares of `side` px: for what changes slowly over it. */
export interface Squares {
  readonly side: number
  readonly width: number
  readonly height: number
  /** Which column of squares each column of pixels lies in. */
  readonly columnOf: Int32Array
}

export const squaresOf = (size: MaskSize): Squares => {
  const side = Math.max(1, Math.round(lengthIn(size, sizesPx.square)))
  return { side, width: Math.ceil(size.width / side), height: Math.ceil(size.height / side), columnOf: Int32Array.from({ length: size.width }, (_, column) => Math.floor(column / side)) }
}

/** One number a square. */
export const squarePlane = ({ width, height }: Squares): Float32Array => new Float32Array(width * height)

/** Where the squares of a row of pixels begin. */
export const squareRowOf = ({ side, width }: Squares, row: number): number => Math.floor(row / side) * width

/** The mean over the squares `reach` around each. */
export const meanAround = ({ width, height }: Squares, plane: Float32Array, reach: number): Float32Array => {
  const mean = plane.slice()
  boxMean(mean, width, height, reach)
  return mean
}

/** Every square's mean a unit of weight, from sums and weights that are means around it already; 0 where there is no weight. */
export const perWeight = (sums: Float32Array, weights: Float32Array): Float32Array => {
  const quotients = new Float32Array(sums.length)
  for (let at = 0; at < sums.length; at += 1) {
    const weight = weights[at] ?? 0
    if (weight > 1e-4) quotients[at] = (sums[at] ?? 0) / weight
  }
  return quotients
}
