import { assertNever } from '../../../shared-logic/assert-never'
import type { PixelPoint } from '../../../shared-logic/measuring/measurement'
import { type Canvas, lay, ramp } from './canvas'
import { type Chance } from './chance'
import { rustColours, stainColour } from './colours'
import { insideFaceMm, type MemberShape } from './member'
import { type Noise, noiseAt, noiseOf } from './noise'
import { decoyKinds, type RustPattern } from './plan'
import { grainNoise, outlineNoise } from './tiles'
import { through, type View } from './view'

interface Blot { readonly x: number, readonly y: number, readonly radiusMm: number, readonly aspect: number }

const clamp = (value: number, limit: number): number => Math.min(limit, Math.max(0, Math.floor(value)))

/** Box in whole pixels round a circle of the plane. */
export function boxOf(canvas: Canvas, view: View, x: number, y: number, radiusMm: number): readonly [number, number, number, number] {
  const corners = [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([i = 0, j = 0]) => through(view.toPixel, x + i * radiusMm, y + j * radiusMm))
  const [columns, rows] = [corners.map(([column]) => column), corners.map(([, row]) => row)]
  return [clamp(Math.min(...columns), canvas.widthPx), clamp(Math.max(...columns) + 1, canvas.widthPx), clamp(Math.min(...rows), canvas.heightPx), clamp(Math.max(...rows) + 1, canvas.heightPx)]
}

/** A place on the face that shows in the picture. */
export function placeOn(canvas: Canvas, view: View, shape: MemberShape, chance: Chance, marginMm: number): PixelPoint {
  let best: PixelPoint = [0, 0]
  for (let tries = 0; tries < 40; tries += 1) {
    best = through(view.toPlane, chance.between(0.08, 0.92) * canvas.widthPx, chance.between(0.08, 0.92) * canvas.heightPx)
    if (insideFaceMm(shape, best[0], best[1]) > marginMm) return best
  }
  return best
}

function blotsOf(pattern: RustPattern, canvas: Canvas, view: View, shape: MemberShape, chance: Chance, bolts: readonly PixelPoint[]): Blot[] {
  const reach = Math.min(canvas.widthPx * canvas.mmPerPx * 0.5, shape.halfHeightMm * 1.6)
  const make = (count: number, low: number, high: number): Blot[] => Array.from({ length: count }, () => {
    const [x, y] = placeOn(canvas, view, shape, chance, 0)
    return { x, y, radiusMm: reach * chance.logBetween(low, high), aspect: chance.logBetween(0.6, 1.7) }
  })
  switch (pattern) {
    case 'spot': return [...make(1 + chance.below(3), 0.2, 0.5), ...make(chance.below(14), 0.01, 0.05)]
    case 'general': return [...make(6 + chance.below(14), 0.05, 0.2), ...make(20 + chance.below(40), 0.012, 0.05)]
    case 'pinpoint': return [...make(40 + chance.below(90), 0.015, 0.045), ...make(1 + chance.below(4), 0.05, 0.12)]
    case 'edge': return [...make(2 + chance.below(4), 0.06, 0.2), ...make(10 + chance.below(20), 0.012, 0.05)]
    case 'bolts': return [...bolts.map(([x, y]) => ({ x, y, radiusMm: reach * chance.between(0.1, 0.28), aspect: chance.between(0.8, 1.2) })), ...make(4 + chance.below(10), 0.012, 0.07)]
    default: return assertNever(pattern)
  }
}

/** Height of the rust over the ground, mm: above 0 is rust. The outline is where noise cuts it: a fractal. */
function heightsOf(canvas: Canvas, view: View, shape: MemberShape, pattern: RustPattern, blots: readonly Blot[], chance: Chance): Float32Array {
  const heights = new Float32Array(canvas.rust.length).fill(-1e3)
  for (const blot of blots) {
    const ragged = noiseOf(chance, blot.radiusMm * 1.3, chance.pick(outlineNoise))
    const strength = chance.between(0.2, 0.38)
    const [fromColumn, toColumn, fromRow, toRow] = boxOf(canvas, view, blot.x, blot.y, blot.radiusMm * 2.4)
    for (let row = fromRow; row < toRow; row += 1) raiseRow(canvas, heights, blot, ragged, strength, row * canvas.widthPx + fromColumn, row * canvas.widthPx + toColumn)
  }
  if (pattern === 'edge') alongEdge(canvas, shape, heights, chance)
  return heights
}

function raiseRow(canvas: Canvas, heights: Float32Array, blot: Blot, ragged: Noise, strength: number, from: number, to: number): void {
  for (let at = from; at < to; at += 1) {
    const x = (canvas.xMm[at] ?? 0) - blot.x
    const y = (canvas.yMm[at] ?? 0) - blot.y
    const far = Math.sqrt((x * blot.aspect) ** 2 + (y / blot.aspect) ** 2) / blot.radiusMm
    if (far > 2.4) continue
    const height = blot.radiusMm * (1 - far + strength * noiseAt(ragged, x, y))
    if (height > (heights[at] ?? 0)) heights[at] = height
  }
}

function alongEdge(canvas: Canvas, shape: MemberShape, heights: Float32Array, chance: Chance): void {
  const visibleMm = canvas.heightPx * canvas.mmPerPx
  const edgeY = Math.min(shape.halfHeightMm, visibleMm * 0.36)
  const widthMm = Math.min(edgeY, visibleMm * 0.3) * chance.between(0.12, 0.3)
  const ragged = noiseOf(chance, widthMm * 2.5)
  for (let at = 0; at < heights.length; at += 1) {
    const x = canvas.xMm[at] ?? 0
    const y = canvas.yMm[at] ?? 0
    const height = widthMm * (0.4 + 0.5 * noiseAt(ragged, x, y)) - Math.max(0, edgeY - y)
    if (height > (heights[at] ?? 0)) heights[at] = height
  }
}

/** Turns heights into the share of each pixel that is rust; the edge is `edgePx` wide. */
function coverFrom(canvas: Canvas, heights: Float32Array, shape: MemberShape, edgePx: number): void {
  for (let row = 1; row < canvas.heightPx - 1; row += 1) coverRow(canvas, heights, shape, edgePx, row)
}

function coverRow(canvas: Canvas, heights: Float32Array, shape: MemberShape, edgePx: number, row: number): void {
  const { widthPx, mmPerPx } = canvas
  for (let at = row * widthPx + 1; at < (row + 1) * widthPx - 1; at += 1) {
    const height = heights[at] ?? 0
    if (height <= -900 || insideFaceMm(shape, canvas.xMm[at] ?? 0, canvas.yMm[at] ?? 0) < 0) continue
    const across = (heights[at + 1] ?? 0) - (heights[at - 1] ?? 0)
    const down = (heights[at + widthPx] ?? 0) - (heights[at - widthPx] ?? 0)
    const slope = Math.min(4 * mmPerPx, Math.max(0.3 * mmPerPx, Math.sqrt(across * across + down * down) / 2))
    canvas.rust[at] = Math.min(1, Math.max(0, 0.5 + height / (edgePx * slope)))
  }
}

function paintRust(canvas: Canvas, heights: Float32Array, chance: Chance): void {
  const mottle = noiseOf(chance, chance.between(12, 40) * canvas.mmPerPx)
  const grain = noiseOf(chance, 5 * canvas.mmPerPx, grainNoise)
  const patch = noiseOf(chance, 120 * canvas.mmPerPx)
  const age = chance.between(0.3, 0.85)
  const last = rustColours.length - 1.001
  for (let at = 0; at < heights.length; at += 1) {
    const cover = canvas.rust[at] ?? 0
    if (cover === 0) continue
    const x = canvas.xMm[at] ?? 0
    const y = canvas.yMm[at] ?? 0
    const inside = ramp(0, 25 * canvas.mmPerPx, heights[at] ?? 0)
    const tone = Math.min(1, Math.max(0, age - 0.12 + 0.24 * inside + 0.14 * noiseAt(mottle, x, y) + 0.06 * noiseAt(patch, x, y))) * last
    const first = Math.floor(tone)
    const part = tone - first
    const from = rustColours[first]
    const to = rustColours[first + 1]
    if (from === undefined || to === undefined) continue
    const shade = Math.max(0.4, 1 + 0.13 * noiseAt(grain, x, y))
    lay(canvas, at, cover, (from[0] + (to[0] - from[0]) * part) * shade, (from[1] + (to[1] - from[1]) * part) * shade, (from[2] + (to[2] - from[2]) * part) * shade)
    canvas.gloss[at] = (canvas.gloss[at] ?? 0) * (1 - cover) + 0.03 * cover
  }
}

/** Run-off below the larger blots: a thin brown tint in streaks, no rust (ASTM D610, clause 4). */
function paintStains(canvas: Canvas, view: View, shape: MemberShape, blots: readonly Blot[], chance: Chance): void {
  const label = decoyKinds.indexOf('run-off stain') + 1
  for (const blot of blots.toSorted((one, other) => other.radiusMm - one.radiusMm).slice(0, 6)) {
    const lengthMm = blot.radiusMm * chance.between(1.5, 4)
    const strongest = chance.between(0.12, 0.26)
    const streaks = noiseOf(chance, blot.radiusMm * 0.5)
    const [fromColumn, toColumn, fromRow, toRow] = boxOf(canvas, view, blot.x, blot.y + lengthMm / 2, lengthMm / 2 + blot.radiusMm)
    const stain = { blot, lengthMm, strongest, streaks, label }
    for (let row = fromRow; row < toRow; row += 1) stainRow(canvas, shape, stain, row * canvas.widthPx + fromColumn, row * canvas.widthPx + toColumn)
  }
}

interface Stain { readonly blot: Blot, readonly lengthMm: number, readonly strongest: number, readonly streaks: Noise, readonly label: number }

function stainRow(canvas: Canvas, shape: MemberShape, { blot, lengthMm, strongest, streaks, label }: Stain, from: number, to: number): void {
  for (let at = from; at < to; at += 1) {
    const x = canvas.xMm[at] ?? 0
    const y = canvas.yMm[at] ?? 0
    const down = (y - blot.y) / lengthMm
    if (down < 0 || down > 1 || insideFaceMm(shape, x, y) < 0) continue
    const across = 1 - ramp(0.4, 0.9, Math.abs(x - blot.x) / blot.radiusMm)
    const tint = strongest * across * (1 - down) * Math.min(1.2, Math.max(0, 0.7 + 0.4 * noiseAt(streaks, x, y * 0.12)))
    lay(canvas, at, tint, stainColour[0], stainColour[1], stainColour[2])
    if (tint > 0.05) canvas.decoy[at] = label
  }
}

/** Paints rust of a pattern, over its run-off where there is any. */
export function rustOver(canvas: Canvas, view: View, shape: MemberShape, given: { pattern: RustPattern, stains: boolean, bolts: readonly PixelPoint[] }, chance: Chance): void {
  const blots = blotsOf(given.pattern, canvas, view, shape, chance, given.bolts)
  if (given.stains) paintStains(canvas, view, shape, blots, chance)
  const heights = heightsOf(canvas, view, shape, given.pattern, blots, chance)
  coverFrom(canvas, heights, shape, chance.between(1, 3))
  paintRust(canvas, heights, chance)
}
