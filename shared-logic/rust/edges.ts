import type { Mask } from '../measuring/pixels'
import { lengthIn, type Planes } from './planes'
import { meansAround, squaresOf, sumsOf, type Squares } from './squares'
import { edgeReading, sizesPx } from './thresholds'

/** Mean light of the pixels of one kind round every square, and how many of a hundred pixels are of it. */
interface Neighbour {
  readonly red: Float32Array
  readonly green: Float32Array
  readonly blue: Float32Array
  readonly share: Float32Array
}

const neighbourOf = (planes: Planes, squares: Squares, reach: number, belongs: (at: number) => boolean): Neighbour => {
  const counts = sumsOf(squares, planes, (at) => (belongs(at) ? 1 : 0))
  const meanOf = (plane: Float32Array): Float32Array => meansAround(squares, sumsOf(squares, planes, (at) => (belongs(at) ? plane[at] ?? 0 : 0)), counts, reach)
  const pixels = sumsOf(squares, planes, () => 1)
  return { red: meanOf(planes.red), green: meanOf(planes.green), blue: meanOf(planes.blue), share: meansAround(squares, counts, pixels, reach) }
}

/**
 * How much of the light comes from rust when a pixel is taken for a mixture of the rust and the ground beside it, in whatever light falls on it: p = a · rust + b · ground by least squares,
 * each channel weighed by its noise; the share is a / (a + b). `undefined` where the two are too alike or the pixel is no such mixture.
 */
const shareOfRust = (p: readonly [number, number, number], rust: readonly [number, number, number], ground: readonly [number, number, number]): number | undefined => {
  let [rr, gg, rg, pr, pg, pp] = [0, 0, 0, 0, 0, 0]
  for (let channel = 0; channel < 3; channel += 1) {
    const [here, r, g] = [p[channel] ?? 0, rust[channel] ?? 0, ground[channel] ?? 0]
    const weight = 1 / (here + r + g + edgeReading.darkLight)
    rr += weight * r * r
    gg += weight * g * g
    rg += weight * r * g
    pr += weight * here * r
    pg += weight * here * g
    pp += weight * here * here
  }
  const apart = rr * gg - rg * rg
  if (apart < edgeReading.leastApart * rr * gg) return undefined
  const a = Math.max(0, (pr * gg - pg * rg) / apart)
  const b = Math.max(0, (pg * rr - pr * rg) / apart)
  const left = pp - 2 * (a * pr + b * pg) + a * a * rr + b * b * gg + 2 * a * b * rg
  return left > edgeReading.mostLeft * pp || a + b === 0 ? undefined : a / (a + b)
}

/** Sets the border of rust where it is half rust, half ground, by the colours on either side; `likeness` is overwritten near borders alone. */
export const readEdges = (planes: Planes, likeness: Float32Array, face: Mask | undefined): void => {
  const squares = squaresOf(planes, Math.max(1, Math.round(lengthIn(planes, sizesPx.square))))
  const [rust, ground] = [
    neighbourOf(planes, squares, sizesPx.squaresAtEdge, (at) => (likeness[at] ?? 0) >= edgeReading.rustFrom),
    neighbourOf(planes, squares, sizesPx.squaresAtEdge, (at) => (likeness[at] ?? 0) <= edgeReading.groundTo && (!face || face.data[at] === 1)),
  ]
  for (let row = 0, at = 0; row < planes.height; row += 1) {
    const start = Math.floor(row / squares.side) * squares.width
    for (let column = 0; column < planes.width; column += 1, at += 1) {
      const square = start + Math.floor(column / squares.side)
      if ((rust.share[square] ?? 0) < edgeReading.leastShare || (ground.share[square] ?? 0) < edgeReading.leastShare || (face && face.data[at] !== 1)) continue
      const share = shareOfRust(
        [planes.red[at] ?? 0, planes.green[at] ?? 0, planes.blue[at] ?? 0],
        [rust.red[square] ?? 0, rust.green[square] ?? 0, rust.blue[square] ?? 0], [ground.red[square] ?? 0, ground.green[square] ?? 0, ground.blue[square] ?? 0],
      )
      if (share !== undefined) likeness[at] = share
    }
  }
}
