import type { PixelPoint, Scale } from '../../../shared-logic/measuring/measurement'
import { type Canvas, lay, ramp } from './canvas'
import { type Chance } from './chance'
import { through, type View } from './view'

/** Width of the dark frame round a card or sheet; the white field inside it is the known rectangle, so that its corners show on any ground. */
const frameMm = 6

/** What a surveyor lays beside a spot, mm: a bank card (ISO/IEC 7810, ID-1), a sheet of A6 or of A5 (ISO 216), as the picture's width asks. */
function sheetFor(acrossMm: number): readonly [number, number] {
  if (acrossMm < 280) return [85.6, 53.98]
  return acrossMm < 480 ? [148, 105] : [210, 148]
}

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

function layCard(canvas: Canvas, view: View, middle: PixelPoint, [widthMm, heightMm]: readonly [number, number]): Scale {
  const laid = { middle, halfX: widthMm / 2, halfY: heightMm / 2 }
  const inside = { x: laid.halfX - frameMm, y: laid.halfY - frameMm }
  const soft = canvas.mmPerPx / 2
  cover(canvas, laid, (at, x, y) => put(canvas, at, 0.03 + 0.67 * ramp(-soft, soft, Math.min(inside.x - Math.abs(x), inside.y - Math.abs(y)))))
  const corner = (i: number, j: number): PixelPoint => through(view.toPixel, middle[0] + i * inside.x, middle[1] + j * inside.y)
  return { kind: 'rectangle', corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], widthM: inside.x / 500, heightM: inside.y / 500 }
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

/** The place, of a dozen, where the whole mark is in the picture and hides the least rust. */
function placeFor(canvas: Canvas, view: View, halfX: number, halfY: number, chance: Chance): PixelPoint {
  let best: PixelPoint = through(view.toPlane, canvas.widthPx / 2, canvas.heightPx / 2)
  let least = Number.POSITIVE_INFINITY
  for (let tries = 0; tries < 40; tries += 1) {
    const middle = through(view.toPlane, canvas.widthPx * chance.between(0.15, 0.85), canvas.heightPx * chance.between(0.15, 0.85))
    let hidden = 0
    for (let i = -1; i <= 1; i += 0.2) {
      for (let j = -1; j <= 1; j += 0.2) {
        const [x, y] = through(view.toPixel, middle[0] + i * halfX, middle[1] + j * halfY)
        const inPicture = x > 8 && y > 8 && x < canvas.widthPx - 8 && y < canvas.heightPx - 8
        hidden += inPicture ? (canvas.rust[Math.floor(y) * canvas.widthPx + Math.floor(x)] ?? 0) : 1e3
      }
    }
    if (hidden < least) { least = hidden; best = middle }
  }
  return best
}

/** Lays the card or the rule on the member's plane. */
export function layScaleMark(canvas: Canvas, view: View, by: 'rule' | 'card', chance: Chance): Scale {
  const acrossMm = canvas.widthPx * canvas.mmPerPx
  if (by === 'card') {
    const sheet = sheetFor(acrossMm)
    return layCard(canvas, view, placeFor(canvas, view, sheet[0] / 2, sheet[1] / 2, chance), sheet)
  }
  const halfLengthMm = Math.max(25, Math.floor((acrossMm * 0.22) / 25) * 25)
  return layRule(canvas, view, placeFor(canvas, view, halfLengthMm + 6, 8, chance), halfLengthMm)
}
