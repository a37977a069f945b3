import type { MaskSize } from '../measuring/mask'
import { rise, type ColourReading } from './likeness'
import { lengthIn } from './planes'
import { meansAround, squaresOf, sumsOf } from './squares'
import { sizesPx, thresholds } from './thresholds'

/** Pixels that count as rust-coloured when their scatter is looked at. */
const colouredFrom = 0.6

/** Lowers the likeness where the colour is like rust's but as even as paint, plastic, skin or dye; `likeness` is overwritten. */
export const lowerWhereEven = ({ redness, likeness }: ColourReading, size: MaskSize): void => {
  const squares = squaresOf(size, Math.max(1, Math.round(lengthIn(size, sizesPx.square))))
  const counts = sumsOf(squares, size, (at) => ((likeness[at] ?? 0) >= colouredFrom ? 1 : 0))
  const sums = sumsOf(squares, size, (at) => ((likeness[at] ?? 0) >= colouredFrom ? redness[at] ?? 0 : 0))
  // Squares of the squares' own means: the camera's noise within a square does not count as mottling.
  const squared = sums.map((sum, at) => ((counts[at] ?? 0) > 0 ? sum ** 2 / (counts[at] ?? 1) : 0))
  const mean = meansAround(squares, sums, counts, sizesPx.squaresAround)
  const keeps = meansAround(squares, squared, counts, sizesPx.squaresAround).map((square, at) => {
    const { from, sureFrom, evenKeeps } = thresholds.mottling
    return evenKeeps + (1 - evenKeeps) * rise(Math.sqrt(Math.max(0, square - (mean[at] ?? 0) ** 2)), from, sureFrom)
  })
  for (let row = 0, at = 0; row < size.height; row += 1) {
    const start = Math.floor(row / squares.side) * squares.width
    for (let column = 0; column < size.width; column += 1, at += 1) {
      if ((likeness[at] ?? 0) > 0) likeness[at] = (likeness[at] ?? 0) * (keeps[start + Math.floor(column / squares.side)] ?? 1)
    }
  }
}
