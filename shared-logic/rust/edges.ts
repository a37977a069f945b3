import type { Mask } from '../measuring/pixels'
import type { Planes } from './planes'
import { meanAround, perWeight, squarePlane, squareRowOf, type Squares } from './squares'
import { edgeReading, sizesPx } from './thresholds'

/** Light of the pixels of one kind, and how many they are, a number a square: sums first, means around when they are done. */
interface Side {
  readonly red: Float32Array
  readonly green: Float32Array
  readonly blue: Float32Array
  readonly count: Float32Array
}

const blankSide = (squares: Squares): Side => ({ red: squarePlane(squares), green: squarePlane(squares), blue: squarePlane(squares), count: squarePlane(squares) })

const addPixel = (side: Side, square: number, planes: Planes, at: number): void => {
  side.red[square] = (side.red[square] ?? 0) + (planes.red[at] ?? 0)
  side.green[square] = (side.green[square] ?? 0) + (planes.green[at] ?? 0)
  side.blue[square] = (side.blue[square] ?? 0) + (planes.blue[at] ?? 0)
  side.count[square] = (side.count[square] ?? 0) + 1
}

const meansOf = (squares: Squares, side: Side): Side => {
  const count = meanAround(squares, side.count, sizesPx.squaresAtEdge)
  const mean = (plane: Float32Array): Float32Array => perWeight(meanAround(squares, plane, sizesPx.squaresAtEdge), count)
  return { red: mean(side.red), green: mean(side.green), blue: mean(side.blue), count }
}

const sidesOf = (planes: Planes, squares: Squares, likeness: Float32Array, face: Mask | undefined): { readonly rust: Side, readonly ground: Side } => {
  const [rust, ground] = [blankSide(squares), blankSide(squares)]
  for (let row = 0, at = 0; row < planes.height; row += 1) {
    const start = squareRowOf(squares, row)
    for (let column = 0; column < planes.width; column += 1, at += 1) {
      if (face && face.data[at] !== 1) continue
      const own = likeness[at] ?? 0
      if (own >= edgeReading.rustFrom) addPixel(rust, start + (squares.columnOf[column] ?? 0), planes, at)
      else if (own <= edgeReading.groundTo) addPixel(ground, start + (squares.columnOf[column] ?? 0), planes, at)
    }
  }
  return { rust: meansOf(squares, rust), ground: meansOf(squares, ground) }
}

/**
 * How much of a pixel's light comes from rust when it is taken for a mixture of the rust and the ground beside it, in whatever light falls on it: p = a · rust + b · ground by least squares,
 * each channel weighed by its noise; the share is a / (a + b). `undefined` where the two are too alike or the pixel is no such mixture.
 */
const shareOfRust = (planes: Planes, at: number, rust: Side, ground: Side, square: number): number | undefined => {
  let rr = 0
  let gg = 0
  let rg = 0
  let pr = 0
  let pg = 0
  let pp = 0
  const addChannel = (p: number, r: number, g: number): void => {
    const weight = 1 / (p + r + g + edgeReading.darkLight)
    rr += weight * r * r
    gg += weight * g * g
    rg += weight * r * g
    pr += weight * p * r
    pg += weight * p * g
    pp += weight * p * p
  }
  addChannel(planes.red[at] ?? 0, rust.red[square] ?? 0, ground.red[square] ?? 0)
  addChannel(planes.green[at] ?? 0, rust.green[square] ?? 0, ground.green[square] ?? 0)
  addChannel(planes.blue[at] ?? 0, rust.blue[square] ?? 0, ground.blue[square] ?? 0)
  const apart = rr * gg - rg * rg
  if (apart < edgeReading.leastApart * rr * gg) return undefined
  const a = Math.max(0, (pr * gg - pg * rg) / apart)
  const b = Math.max(0, (pg * rr - pr * rg) / apart)
  const left = pp - 2 * (a * pr + b * pg) + a * a * rr + b * b * gg + 2 * a * b * rg
  return left > edgeReading.mostLeft * pp || a + b === 0 ? undefined : a / (a + b)
}

/** Sets the border of rust where it is half rust, half ground, by the colours on either side; `likeness` is overwritten near borders alone. */
export const readEdges = (planes: Planes, squares: Squares, likeness: Float32Array, face: Mask | undefined): void => {
  const { rust, ground } = sidesOf(planes, squares, likeness, face)
  const least = edgeReading.leastShare * squares.side ** 2
  const isBorder = rust.count.map((count, square) => (count >= least && (ground.count[square] ?? 0) >= least ? 1 : 0))
  for (let row = 0, at = 0; row < planes.height; row += 1) {
    const start = squareRowOf(squares, row)
    for (let column = 0; column < planes.width; column += 1, at += 1) {
      const square = start + (squares.columnOf[column] ?? 0)
      if (isBorder[square] !== 1 || (face && face.data[at] !== 1)) continue
      const share = shareOfRust(planes, at, rust, ground, square)
      if (share !== undefined) likeness[at] = share
    }
  }
}
