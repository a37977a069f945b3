import type { RustFeatures } from '../../shared-logic/rust/find-rust'

/** Pixels of the whole that become one, each way. */
const step = 4

/** A quarter as wide and as high, each pixel the mean of sixteen: an outline that follows the hand, quickly found and quickly drawn. */
export const coarseFeatures = ({ width, height, likeness, ...rest }: RustFeatures): RustFeatures => {
  const [across, down] = [Math.max(Math.floor(width / step), 1), Math.max(Math.floor(height / step), 1)]
  const sums = new Uint16Array(across * down)
  for (let row = 0; row < down * step; row += 1) {
    const to = Math.floor(row / step) * across
    for (let column = 0; column < across * step; column += 1) {
      const at = to + (column >> 2)
      sums[at] = (sums[at] ?? 0) + (likeness[row * width + column] ?? 0)
    }
  }
  return { ...rest, width: across, height: down, likeness: Uint8Array.from(sums, (sum) => sum >> 4) }
}
