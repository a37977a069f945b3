import type { MaskSize } from '../measuring/mask'
import type { Mask } from '../measuring/pixels'

/** Where between two places read a px of the picture lies: the first of them, the second, and the share of the second. */
const between = (count: number, read: number, step: number): { readonly first: Int32Array, readonly second: Int32Array, readonly share: Float32Array } => {
  const place = Float64Array.from({ length: count }, (_, px) => Math.min(read - 1, Math.max(0, (px + 0.5) / step - 0.5)))
  return { first: Int32Array.from(place, Math.floor), second: Int32Array.from(place, (at) => Math.min(read - 1, Math.floor(at) + 1)), share: Float32Array.from(place, (at) => at - Math.floor(at)) }
}

/** The likeness read in blocks of `step` px, 0 to 1, as 0 to 255 for every px of the picture: straight between the blocks' middles, so that a border keeps its place. 0 off the face. */
export const fineLikeness = (likeness: Float32Array, readSize: MaskSize, size: MaskSize, step: number, face: Mask | undefined): Uint8Array => {
  const fine = new Uint8Array(size.width * size.height)
  const [across, down] = [between(size.width, readSize.width, step), between(size.height, readSize.height, step)]
  for (let row = 0, at = 0; row < size.height; row += 1) {
    const [above, below, part] = [(down.first[row] ?? 0) * readSize.width, (down.second[row] ?? 0) * readSize.width, down.share[row] ?? 0]
    for (let column = 0; column < size.width; column += 1, at += 1) {
      if (face && face.data[at] !== 1) continue
      const left = across.first[column] ?? 0
      const right = across.second[column] ?? 0
      const upperLeft = likeness[above + left] ?? 0
      const upperRight = likeness[above + right] ?? 0
      const lowerLeft = likeness[below + left] ?? 0
      const lowerRight = likeness[below + right] ?? 0
      // Most of a picture is no rust at all.
      if (upperLeft + upperRight + lowerLeft + lowerRight === 0) continue
      const share = across.share[column] ?? 0
      const upper = upperLeft + (upperRight - upperLeft) * share
      const lower = lowerLeft + (lowerRight - lowerLeft) * share
      fine[at] = 255 * (upper + (lower - upper) * part) + 0.5
    }
  }
  return fine
}
