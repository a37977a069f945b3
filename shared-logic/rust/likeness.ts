import type { Mask } from '../measuring/pixels'
import type { LightColour } from './light-colour'
import { logOfLight } from './linear-light'
import type { Planes } from './planes'
import { squarePlane, squareRowOf, squaresOf, type Squares } from './squares'
import { thresholds } from './thresholds'

/** 0 at or below `none`, 1 at or above `sure`; the other way round where `sure` is the lower. */
export const rise = (value: number, none: number, sure: number): number => Math.min(1, Math.max(0, (value - none) / (sure - none)))

/** How much a colour is like rust, 0 to 1, by the worst of its parts. */
export const likenessOf = (redness: number, yellowness: number): number => {
  const { hue, redness: red, yellowness: yellow, tooRed } = thresholds
  if (redness <= red.from) return 0
  const ratio = yellowness / redness
  return Math.min(
    rise(redness, red.from, red.sureFrom), rise(redness, tooRed.to, tooRed.sureTo), rise(yellowness, yellow.to, yellow.sureTo),
    rise(ratio, hue.from, hue.sureFrom), rise(ratio, hue.to, hue.sureTo),
  )
}

/** Sums over the strongly coloured pixels of each square. */
export interface ColouredSums {
  readonly count: Float32Array
  readonly redness: Float32Array
  readonly yellowness: Float32Array
  /** Of redness and half the logarithm of the red light. */
  readonly vividness: Float32Array
}

export interface ColourReading {
  /** Of every pixel by its own colour, 0 to 1; 0 off the face. */
  readonly likeness: Float32Array
  readonly squares: Squares
  readonly coloured: ColouredSums
}

const add = (plane: Float32Array, at: number, value: number): void => { plane[at] = (plane[at] ?? 0) + value }

/** One pass over the picture: what each pixel's colour tells, and what its patch will be judged by. */
export const readColours = (planes: Planes, light: LightColour, face: Mask | undefined): ColourReading => {
  const { redness: red, coloured: strong } = thresholds
  const squares = squaresOf(planes)
  const likeness = new Float32Array(planes.red.length)
  const coloured: ColouredSums = { count: squarePlane(squares), redness: squarePlane(squares), yellowness: squarePlane(squares), vividness: squarePlane(squares) }
  for (let row = 0, at = 0; row < planes.height; row += 1) {
    const start = squareRowOf(squares, row)
    for (let column = 0; column < planes.width; column += 1, at += 1) {
      if (face && face.data[at] !== 1) continue
      const logRed = logOfLight(planes.red[at] ?? 0)
      const logGreen = logOfLight(planes.green[at] ?? 0)
      const redness = logRed - logGreen - light.redness
      if (redness <= red.from) continue
      const yellowness = logGreen - logOfLight(planes.blue[at] ?? 0) - light.yellowness
      likeness[at] = likenessOf(redness, yellowness)
      if (redness <= strong.redness || yellowness <= strong.fromSlope * redness || yellowness >= strong.slope * redness + strong.above) continue
      const square = start + (squares.columnOf[column] ?? 0)
      add(coloured.count, square, 1)
      add(coloured.redness, square, redness)
      add(coloured.yellowness, square, yellowness)
      add(coloured.vividness, square, redness + logRed / 2)
    }
  }
  return { likeness, squares, coloured }
}
