import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { type Canvas, lay, ramp } from './canvas'
import { type Chance } from './chance'
import { through, type View } from './view'

/** ISO/IEC 7810, size ID-1: the size of a bank card. */
export const cardWidthM = 0.0856
export const cardHeightM = 0.05398

interface Laid { readonly middle: PixelPoint, readonly halfX: number, readonly halfY: number }

function cover(canvas: Canvas, laid: Laid, paint: (at: number, x: number, y: number) => void): void {
  for (let at = 0; at < canvas.red.length; at += 1) {
    const x = (canvas.xMm[at] ?? 0) - laid.middle[0]
    const y = (canvas.yMm[at] ?? 0) - laid.middle[1]
    const inside = Math.min(laid.halfX - Math.abs(x), laid.halfY - Math.abs(y))
    if (inside < -canvas.mmPerPx) continue
    const whole = ramp(-canvas.mmPerPx / 2, canvas.mmPerPx / 2, inside)
    lay(canvas, at, whole, 0, 0, 0)
    canvas.rust[at] = (canvas.rust[at] ?? 0) * (1 - whole)
    canvas.gloss[at] = (canvas.gloss[at] ?? 0) * (1 - whole) + 0.1 * whole
    if (whole > 0.5) canvas.decoy[at] = 0
    const red = canvas.red[at] ?? 0
    const green = canvas.green[at] ?? 0
    const blue = canvas.blue[at] ?? 0
    paint(at, x, y)
    canvas.red[at] = red + (canvas.red[at] ?? 0) * whole
    canvas.green[at] = green + (canvas.green[at] ?? 0) * whole
    canvas.blue[at] = blue + (canvas.blue[at] ?? 0) * whole
  }
}

function put(canvas: Canvas, at: number, grey: number): void {
  canvas.red[at] = grey
  canvas.green[at] = grey
  canvas.blue[at] = grey
}

/** A white card with a dark border, so that its corners can be pointed at on any ground. */
function layCard(canvas: Canvas, view: View, middle: PixelPoint): Scale {
  const laid = { middle, halfX: cardWidthM * 500, halfY: cardHeightM * 500 }
  cover(canvas, laid, (at, x, y) => put(canvas, at, Math.min(laid.halfX - Math.abs(x), laid.halfY - Math.abs(y)) < 4 ? 0.03 : 0.72))
  const corner = (i: number, j: number): PixelPoint => through(view.toPixel, middle[0] + i * laid.halfX, middle[1] + j * laid.halfY)
  return { kind: 'rectangle', corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], widthM: cardWidthM, heightM: cardHeightM }
}

/** A steel rule with a mark every millimetre (every five when taken from farther off), and the length between its two end marks. */
function layRule(canvas: Canvas, view: View, middle: PixelPoint, halfLengthMm: number): Scale {
  const laid = { middle, halfX: halfLengthMm + 6, halfY: Math.max(8, canvas.mmPerPx * 16) }
  const pitch = canvas.mmPerPx < 0.25 ? 1 : 5
  const wide = Math.max(0.3, canvas.mmPerPx * 0.8)
  cover(canvas, laid, (at, x, y) => {
    const place = x + halfLengthMm
    const nearest = Math.round(place / pitch) * pitch
    const long = nearest % 50 === 0 ? 0.9 : nearest % 10 === 0 ? 0.55 : 0.3
    const marked = nearest >= 0 && nearest <= 2 * halfLengthMm && laid.halfY - Math.abs(y) > 0 && y + laid.halfY < long * 2 * laid.halfY
    put(canvas, at, 0.5 - (marked ? 0.45 * (1 - ramp(wide / 2, wide, Math.abs(place - nearest))) : 0))
  })
  const end = (i: number): PixelPoint => through(view.toPixel, middle[0] + i * halfLengthMm, middle[1])
  return { kind: 'length', from: end(-1), to: end(1), lengthM: (2 * halfLengthMm) / 1000 }
}

/** Lays the card or the rule on the face, in a corner of the picture where it hides little. */
export function layScaleMark(canvas: Canvas, view: View, by: 'rule' | 'card', chance: Chance): Scale {
  const [left, top] = [chance.pick([0.3, 0.7]), chance.pick([0.4, 0.6])]
  const middle = through(view.toPlane, canvas.widthPx * left, canvas.heightPx * top)
  if (by === 'card') return layCard(canvas, view, middle)
  return layRule(canvas, view, middle, Math.max(25, Math.floor((canvas.widthPx * canvas.mmPerPx * 0.22) / 25) * 25))
}
