import type { MaskSize } from '../measuring/mask'
import { notColoured, rise, type ColourReading } from './likeness'
import { lengthIn } from './planes'
import { meansAround, squaresOf, sumsOf } from './squares'
import { sizesPx, thresholds } from './thresholds'

/**
 * Lowers the likeness by what the strongly coloured pixels around a pixel are together: more vivid than any oxide, as dyed carpet is; or of one even colour, as paint, plastic and skin are.
 * `likeness` is overwritten.
 */
export const judgePatches = ({ vividness, likeness }: ColourReading, size: MaskSize): void => {
  const squares = squaresOf(size, Math.max(1, Math.round(lengthIn(size, sizesPx.square))))
  const counts = sumsOf(squares, size, (at) => (vividness[at] === notColoured ? 0 : 1))
  const sums = sumsOf(squares, size, (at) => (vividness[at] === notColoured ? 0 : vividness[at] ?? 0))
  // Squares of the squares' own means: the camera's noise and the weave within a square do not count as mottling.
  const squared = sums.map((sum, at) => ((counts[at] ?? 0) > 0 ? sum ** 2 / (counts[at] ?? 1) : 0))
  const means = meansAround(squares, sums, counts, sizesPx.squaresAround)
  const { vivid, mottling } = thresholds
  const keeps = meansAround(squares, squared, counts, sizesPx.squaresAround).map((square, at) => {
    const mean = means[at] ?? 0
    const scatter = Math.sqrt(Math.max(0, square - mean ** 2))
    return rise(mean, vivid.to, vivid.sureTo) * (mottling.evenKeeps + (1 - mottling.evenKeeps) * rise(scatter, mottling.from, mottling.sureFrom))
  })
  for (let row = 0, at = 0; row < size.height; row += 1) {
    const start = Math.floor(row / squares.side) * squares.width
    for (let column = 0; column < size.width; column += 1, at += 1) {
      if ((likeness[at] ?? 0) > 0) likeness[at] = (likeness[at] ?? 0) * (keeps[start + Math.floor(column / squares.side)] ?? 1)
    }
  }
}
