import type { MaskSize } from '../measuring/mask'
import { rise, type ColouredSums, type ColourReading } from './likeness'
import { meanAround, perWeight, squareRowOf, type Squares } from './squares'
import { sizesPx, thresholds } from './thresholds'

/** Mean of a quantity over the strongly coloured pixels around each square, and its scatter from square to square (standard deviation). */
interface Spread {
  readonly mean: Float32Array
  readonly scatter: Float32Array
}

const spreadOf = (squares: Squares, count: Float32Array, countAround: Float32Array, sums: Float32Array): Spread => {
  const mean = perWeight(meanAround(squares, sums, sizesPx.squaresAround), countAround)
  // Squares of the squares' own means: the camera's noise and the weave within a square do not count as scatter.
  const squared = sums.map((sum, at) => ((count[at] ?? 0) > 0 ? sum ** 2 / (count[at] ?? 1) : 0))
  const scatter = perWeight(meanAround(squares, squared, sizesPx.squaresAround), countAround).map((square, at) => Math.sqrt(Math.max(0, square - (mean[at] ?? 0) ** 2)))
  return { mean, scatter }
}

/** How much of its likeness a patch keeps, a number a square. */
const keptOf = (squares: Squares, { count, redness, yellowness, vividness }: ColouredSums): Float32Array => {
  const around = meanAround(squares, count, sizesPx.squaresAround)
  const [vivid, red] = [spreadOf(squares, count, around, vividness), spreadOf(squares, count, around, redness)]
  const yellow = perWeight(meanAround(squares, yellowness, sizesPx.squaresAround), around)
  const { patch, mottling } = thresholds
  return around.map((pixels, at) => {
    const mottled = Math.min(rise(vivid.scatter[at] ?? 0, mottling.vividness.from, mottling.vividness.sureFrom), rise(red.scatter[at] ?? 0, mottling.redness.from, mottling.redness.sureFrom))
    const small = rise(pixels / squares.side ** 2, mottling.tellsFrom, 0)
    const undyed = Math.min(
      rise(vivid.mean[at] ?? 0, patch.vivid.to, patch.vivid.sureTo), rise(yellow[at] ?? 0, patch.yellow.to, patch.yellow.sureTo),
      rise((yellow[at] ?? 0) / Math.max(0.1, red.mean[at] ?? 0), patch.hue.to, patch.hue.sureTo),
    )
    return undyed * (mottling.evenKeeps + (1 - mottling.evenKeeps) * Math.max(mottled, small))
  })
}

/**
 * Lowers the likeness by what the strongly coloured pixels around a pixel are together: more vivid or yellower than any oxide, as dyed carpet and lenses are;
 * or of one even colour, as paint, plastic and skin are. `likeness` is overwritten.
 */
export const judgePatches = ({ likeness, squares, coloured }: ColourReading, size: MaskSize): void => {
  const kept = keptOf(squares, coloured)
  for (let row = 0, at = 0; row < size.height; row += 1) {
    const start = squareRowOf(squares, row)
    for (let column = 0; column < size.width; column += 1, at += 1) {
      const own = likeness[at] ?? 0
      if (own > 0) likeness[at] = own * (kept[start + (squares.columnOf[column] ?? 0)] ?? 1)
    }
  }
}
