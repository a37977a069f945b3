import { type View } from './view'

/** The scene while it is painted: a plane a quantity, one number a pixel. */
export interface Canvas {
  readonly widthPx: number
  readonly heightPx: number
  /** Where on the member's plane a pixel looks, mm. */
  readonly xMm: Float32Array
  readonly yMm: Float32Array
  /** What the surface gives back, linear light. */
  readonly red: Float32Array
  readonly green: Float32Array
  readonly blue: Float32Array
  /** How strongly it mirrors the sky or a lamp, 0 to 1. */
  readonly gloss: Float32Array
  /** Share of the pixel that is rust, 0 to 1. */
  readonly rust: Float32Array
  /** Which decoy the pixel shows, by its place in `decoyKinds` and one more; 0 none. */
  readonly decoy: Uint8Array
  readonly mmPerPx: number
}

export function blankCanvas(widthPx: number, heightPx: number, view: View, mmPerPx: number): Canvas {
  const count = widthPx * heightPx
  const plane = (): Float32Array => new Float32Array(count)
  const canvas: Canvas = {
    widthPx, heightPx, mmPerPx, xMm: plane(), yMm: plane(), red: plane(), green: plane(), blue: plane(), gloss: plane(), rust: plane(), decoy: new Uint8Array(count),
  }
  for (let row = 0; row < heightPx; row += 1) placeRow(canvas, view, row)
  return canvas
}

// One function a row, here and elsewhere: called often, it is compiled and stays so; two loops in one function called once a scene run several times slower.
function placeRow(canvas: Canvas, view: View, row: number): void {
  const [a, b, c, d, e, f, g, h, i] = view.toPlane
  const v = row + 0.5
  const first = row * canvas.widthPx
  for (let column = 0; column < canvas.widthPx; column += 1) {
    const u = column + 0.5
    const w = 1 / (g * u + h * v + i)
    canvas.xMm[first + column] = (a * u + b * v + c) * w
    canvas.yMm[first + column] = (d * u + e * v + f) * w
  }
}

/** Lays a colour over what is there; `cover` 0 to 1. */
export function lay(canvas: Canvas, at: number, cover: number, red: number, green: number, blue: number): void {
  canvas.red[at] = (canvas.red[at] ?? 0) * (1 - cover) + red * cover
  canvas.green[at] = (canvas.green[at] ?? 0) * (1 - cover) + green * cover
  canvas.blue[at] = (canvas.blue[at] ?? 0) * (1 - cover) + blue * cover
}

/** 0 below `low`, 1 above `high`, smooth between. */
export function ramp(low: number, high: number, value: number): number {
  const part = Math.min(1, Math.max(0, (value - low) / (high - low)))
  return part * part * (3 - 2 * part)
}
